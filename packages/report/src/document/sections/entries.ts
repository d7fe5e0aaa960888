import type { FrozenState, Job } from '@undercroft/record';
import { moment } from '../../words/dates.ts';
import { capital } from '../../words/names.ts';
import { type Cell, cell, figure, heading, paragraph, type Section, soft, words } from '../blocks.ts';
import type { EntriesOfReport } from '../entries-named.ts';

/** Digits of a hash that are printed: enough that no other entry of a job has the same. */
const SHOWN_DIGITS = 16;

interface Evidence {
  readonly kind: string;
  readonly id: string;
  readonly name: string;
  readonly who: string;
  readonly when: string;
}

/** The key of a quantity as words, without its unit: `seamLapWidthM` is `seam lap width`. */
const spelled = (quantity: string) =>
  quantity.replace(/(M[23]?|C|Pa|Kg|KWh|S|L)$/, '').replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/** What people saw, measured and claimed, in the order in which a report shows it. */
function evidenceOf({ findings, readings, media, acceptance }: Job): Evidence[] {
  const { air, surface, wood, observations, levels } = readings;
  const of = <T extends { id: string; who: string; when: string }>(
    kind: string,
    list: readonly T[],
    nameOf: (one: T) => string,
  ) => list.map((one) => ({ kind, id: one.id, name: nameOf(one), who: one.who, when: one.when }));
  const taken = (
    kind: string,
    list: readonly { id: string; who: string; takenAt: string; caption?: string }[],
  ) =>
    list.map(({ id, who, takenAt, caption }) => ({
      kind,
      id,
      name: caption === undefined ? kind : `${kind}: ${caption}`,
      who,
      when: takenAt,
    }));
  return [
    ...of('finding', findings, (f) => `finding: ${f.title}`),
    ...of('air', air, () => 'air reading'),
    ...of('surface', surface, () => 'surface reading'),
    ...of('wood', wood, (w) => `wood reading, ${w.member}`),
    ...of('level', levels, () => 'level reading'),
    ...of('observation', observations, (o) => `observation: ${spelled(o.quantity)}`),
    ...taken('photo', media.photos),
    ...taken('clip', media.clips),
    ...taken('audio', media.audio),
    ...acceptance.map(({ id, title, who = 'not told', when = '' }) => ({
      kind: 'acceptance',
      id,
      name: `claim: ${title}`,
      who,
      when,
    })),
  ];
}

/** The entries of the record behind this report: their sum, and each piece of evidence with its own. */
export function entriesSection(job: Job, entries: EntriesOfReport, frozen: FrozenState | undefined): Section {
  const evidence = evidenceOf(job);
  const by = ({ who, when }: Evidence) => (when === '' ? who : `${who}, ${moment(when)}`);
  const visits = [...new Set(evidence.map(by))];
  const rows = evidence.flatMap((one) =>
    entries.of(one).map(({ number, id: stamp, sha256 }) => ({
      number,
      from: `job/${one.kind}/${one.id}`,
      cells: [
        cell(figure(String(number))),
        [words(capital(one.name)), ...(visits.length > 1 ? [[soft(by(one))]] : [])],
        cell({ text: stamp, look: 'figure' }),
        cell({ text: sha256.slice(0, SHOWN_DIGITS), look: 'figure' }),
      ] satisfies Cell[],
    })),
  );
  rows.sort((a, b) => a.number - b.number);
  const state =
    frozen === undefined
      ? 'No frozen state was asked for: the record may go on after this report, and the sum below tells whether it has.'
      : `This report was made of the state that ${frozen.who} froze on ${moment(frozen.when)}, and of nothing that came later.`;
  return {
    id: 'entries',
    title: 'The entries behind this report',
    from: 'job/header',
    blocks: [
      heading(2, 'The entries behind this report', 'entries'),
      paragraph(
        'Everything that was seen, measured and decided is kept as entries that nobody can change unnoticed: a later entry replaces an earlier one and both stay. Rows of this report name the entries they rest on by number. Whoever holds the archive file of this job can hold every one of them against the sums printed here.',
      ),
      paragraph(`${entries.entryCount} entries. ${state}`),
      {
        kind: 'paragraph',
        text: [{ text: 'SHA-256 of all of them: ' }, figure(entries.entriesSha256)],
      },
      {
        kind: 'table',
        caption: `Entries of the evidence, each with the first ${SHOWN_DIGITS} digits of its SHA-256${visits.length > 1 ? '' : `; all by ${visits.join()}`}`,
        columns: [
          { title: 'No.', weight: 7, align: 'end' },
          { title: 'What, by whom, when', weight: 43 },
          { title: 'Stamp', weight: 29 },
          { title: 'SHA-256', weight: 21 },
        ],
        rows: rows.map((row) => row.cells),
        rowsFrom: rows.map((row) => row.from),
      },
    ],
  };
}
