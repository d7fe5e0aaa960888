import type { Assessment, ReadingMeaning } from '@undercroft/assessment';
import type { Job } from '@undercroft/record';
import { MARK_WORDS } from '../../drawing/marks.ts';
import { moment } from '../../words/dates.ts';
import { plain } from '../../words/names.ts';
import {
  type Block,
  type Cell,
  cell,
  heading,
  paragraph,
  type Rich,
  type Section,
  soft,
  type Table,
  words,
} from '../blocks.ts';

const KINDS = [
  { kind: 'air', title: 'Air', caption: 'Air readings and what they mean' },
  { kind: 'surface', title: 'Surfaces', caption: 'Surface temperatures and what they mean' },
  { kind: 'wood', title: 'Wood', caption: 'Pin-meter readings of wood and what they mean' },
] as const;

function row(reading: ReadingMeaning, taken: string | undefined, toldAbove: ReadonlySet<string>): Cell[] {
  const notices = reading.notices
    .filter((n) => !toldAbove.has(n.message))
    .map((n): Rich => [soft(plain(n.message))]);
  const by = taken === undefined ? [[soft(`${reading.who}, ${moment(reading.when)}`)]] : [];
  return [
    [words(plain(reading.shown)), [soft(plain(reading.place))], ...by],
    cell({ mark: reading.state }, { text: MARK_WORDS[reading.state] }),
    [words(plain(reading.means)), ...notices],
  ];
}

/** Notices that every one of several readings carries. They are told once. */
function shared(readings: readonly ReadingMeaning[]): string[] {
  if (readings.length < 2) return [];
  const [first, ...rest] = readings.map((r) => r.notices.map((n) => n.message));
  return first.filter((message) => rest.every((others) => others.includes(message)));
}

/** Who took all of them and when, where that is one visit; undefined where each row has to say it. */
function oneVisit(readings: readonly ReadingMeaning[]): string | undefined {
  const visits = new Set(readings.map((r) => `${r.who}, ${moment(r.when)}`));
  return visits.size === 1 ? [...visits][0] : undefined;
}

function table(
  caption: string,
  readings: readonly ReadingMeaning[],
  taken: string | undefined,
  toldAbove: readonly string[],
): Table {
  const told = new Set(toldAbove);
  return {
    kind: 'table',
    caption,
    columns: [
      { title: 'As read, and where', weight: 35 },
      { title: 'State', weight: 13 },
      { title: 'What it means', weight: 52 },
    ],
    rows: readings.map((r) => row(r, taken, told)),
    rowsFrom: readings.map((r) => `readings/${r.id}`),
  };
}

/** Every reading with its place, what it showed, what follows and its state. */
export function readings(_job: Job, assessment: Assessment): Section {
  const all = assessment.readings;
  const taken = oneVisit(all);
  const blocks: Block[] = [heading(2, 'What the readings mean', 'readings')];
  if (all.length === 0)
    blocks.push(
      paragraph(
        'No readings were taken. Without them nothing is known about the air, the surfaces or the wood.',
      ),
    );
  if (taken !== undefined) blocks.push(paragraph(`All readings were taken by ${taken}.`, 'note'));
  for (const { kind, title, caption } of KINDS) {
    const found = all.filter((r) => r.kind === kind);
    if (found.length === 0) continue;
    const told = shared(found);
    blocks.push(
      heading(3, title, `readings-${kind}`),
      ...told.map((message) => paragraph(plain(message), 'note')),
      table(caption, found, taken, told),
    );
  }
  return {
    id: 'readings',
    title: 'What the readings mean',
    from: all.length === 0 ? 'job/header' : 'readings',
    blocks,
  };
}
