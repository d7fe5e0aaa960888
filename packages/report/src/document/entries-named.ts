import { type Assessment, traceOf } from '@undercroft/assessment';
import {
  type EntrySeal,
  entriesBehind,
  type ItemKey,
  type Job,
  type JobLog,
  sealLog,
} from '@undercroft/record';
import { type Block, type Cell, type Section, soft } from './blocks.ts';

/** Things that somebody saw, measured or claimed. The plan's own parts stand under the sum of all entries. */
const EVIDENCE = new Set([
  'air',
  'surface',
  'wood',
  'level',
  'level-setup',
  'observation',
  'answer',
  'photo',
  'clip',
  'audio',
  'finding',
  'acceptance',
  'build-step',
]);

/** Parts of a report whose rows name their entries. */
const NAMING = /^(defects|readings|criteria|coverage\/(pictures|proofs))\//;

/** An entry of the log as a report names it. */
export interface NamedEntry extends EntrySeal {
  /** From 1, in the order of the stamps. */
  readonly number: number;
}

/** Which entries of a log the rows of a report rest on. */
export interface EntriesOfReport {
  /** Of all entries, see `LogVersion`. */
  readonly entriesSha256: string;
  readonly entryCount: number;
  readonly of: (item: ItemKey) => readonly NamedEntry[];
}

/** Numbers the entries of a log. */
export function entriesOfReport(log: JobLog): EntriesOfReport {
  const { entries, entriesSha256, entryCount } = sealLog(log);
  const named = new Map(entries.map((seal, i) => [seal.id, { ...seal, number: i + 1 }]));
  return {
    entriesSha256,
    entryCount,
    of: (item) => entriesBehind(log, item).flatMap((stamp) => named.get(stamp) ?? []),
  };
}

/** Numbers in order, runs of three and more as a range: `3, 5 to 9`. */
export function numbersInWords(numbers: readonly number[]): string {
  const sorted = [...new Set(numbers)].sort((a, b) => a - b);
  const runs: [number, number][] = [];
  for (const n of sorted) {
    const last = runs.at(-1);
    if (last !== undefined && last[1] === n - 1) last[1] = n;
    else runs.push([n, n]);
  }
  return runs
    .flatMap(([from, to]) =>
      to - from > 1 ? `${from} to ${to}` : from === to ? `${from}` : [`${from}`, `${to}`],
    )
    .join(', ');
}

/** Adds to each row of evidence which entries of the log it rests on. */
export function withEntries(
  section: Section,
  job: Job,
  assessment: Assessment,
  entries: EntriesOfReport,
): Section {
  // What mending a defect would do rests on the whole year, and so on every reading; that it is there does not.
  const seen = { ...assessment, defects: assessment.defects.map(({ mended: _, ...defect }) => defect) };
  const line = (from: string | undefined): Cell => {
    if (from === undefined || !NAMING.test(from)) return [];
    const items = traceOf(job, seen, from).items.filter(({ kind }) => EVIDENCE.has(kind));
    const numbers = items.flatMap((item) => entries.of(item).map((e) => e.number));
    return numbers.length === 0
      ? []
      : [[soft(`${numbers.length === 1 ? 'Entry' : 'Entries'} ${numbersInWords(numbers)}`)]];
  };
  const named = (block: Block): Block => {
    if (block.kind === 'gallery') {
      return { ...block, entries: block.entries.map((e) => ({ ...e, text: [...e.text, ...line(e.from)] })) };
    }
    if (block.kind !== 'table' || block.rowsFrom === undefined) return block;
    const { rowsFrom } = block;
    return {
      ...block,
      rows: block.rows.map(([first, ...rest], i) => [[...first, ...line(rowsFrom[i])], ...rest]),
    };
  };
  return { ...section, blocks: section.blocks.map(named) };
}
