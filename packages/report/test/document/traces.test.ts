import { crawlPlanOf, type Trace, traceOf } from '@undercroft/assessment';
import { entriesBehind, entriesOfJob, JobLog } from '@undercroft/record';
import { describe, expect, test } from 'vitest';
import { type Block, type Cell, type Rich, textOf } from '../../src/document/blocks.ts';
import type { ReportExtras } from '../../src/document/extras.ts';
import { reportDocument } from '../../src/document/report.ts';
import { type Assessed, assessed, bareJob, DEMO_NAMES, demo } from '../jobs.ts';

/** A place in the report where a figure stands, with what it says and where it says that it comes from. */
interface Told {
  readonly where: string;
  readonly text: string;
  readonly from: string;
}

const cellText = (cell: Cell) => cell.map(textOf).join(' ');
const richText = (rich: Rich) => textOf(rich);

/** Every text of a block, row by row of a table, with what it comes from where it says so itself. */
function textsOf(block: Block): { text: string; from?: string | undefined }[] {
  switch (block.kind) {
    case 'heading':
      return [{ text: block.text }];
    case 'paragraph':
      return [{ text: richText(block.text), from: block.from }];
    case 'list':
      return block.items.map((item) => ({ text: richText(item) }));
    case 'table':
      return [
        { text: block.caption },
        ...block.rows.map((row, i) => ({ text: row.map(cellText).join(' | '), from: block.rowsFrom?.[i] })),
      ];
    case 'figure': {
      const drawing = block.onPaper({ width: 690, height: 500, textSize: 7.2 });
      return [{ text: `${block.caption} ${drawing.description}`, from: block.from }];
    }
    case 'tally':
      return block.entries.map((e) => ({ text: `${e.count} ${e.words}`, from: block.from }));
    case 'gallery':
      return block.entries.map((e) => ({ text: cellText(e.text), from: e.from }));
  }
}

/** Everything in a report that holds a figure. */
function toldBy({ job, assessment }: Assessed, more: ReportExtras = {}): Told[] {
  return reportDocument(job, assessment, more).sections.flatMap((section) =>
    section.blocks.flatMap((block) =>
      textsOf(block)
        .filter(({ text }) => /\d/.test(text))
        .map(({ text, from }) => ({
          where: `${section.id}, ${block.kind}`,
          text,
          from: from ?? section.from,
        })),
    ),
  );
}

describe.each(DEMO_NAMES)('every figure in the report of %s', (name) => {
  const whole = demo(name);
  const { job, assessment } = whole;
  const log = new JobLog(
    job.id,
    entriesOfJob(job, {
      who: 'Ada',
      device: 'office',
      nowMs: 1.9e12,
      deviceTime: '2030-03-17T17:46:40+00:00',
    }),
  );
  const told = toldBy(whole, { crawl: crawlPlanOf(job, assessment), record: { log } });
  const traced = new Map<string, Trace>();
  const trace = (from: string): Trace => {
    const known = traced.get(from) ?? traceOf(job, assessment, from);
    traced.set(from, known);
    return known;
  };

  test('says where it comes from, and that leads somewhere', () => {
    expect(told.length).toBeGreaterThan(150);
    for (const { where, text, from } of told) {
      const { sources, items, assumptions } = trace(from);
      const about = `${where}: ${text.slice(0, 80)} (${from})`;
      expect(sources.length + items.length + assumptions.length, about).toBeGreaterThan(0);
      for (const s of sources) expect(s.citation.length, `${about}: ${s.id}`).toBeGreaterThan(5);
    }
  });

  test('leads to entries of the log: each thing that went in was entered by somebody', () => {
    for (const [from, { items }] of traced) {
      for (const item of items) {
        const stamps = entriesBehind(log, item);
        expect(stamps.length, `${from}: ${item.kind} ${item.id}`).toBeGreaterThan(0);
        for (const stamp of stamps) expect(log.entries().some((e) => e.id === stamp)).toBe(true);
      }
    }
  });

  test('of a reading, a picture or a finding names the entries it rests on, and each of these stands in the list', () => {
    const number = new Map(log.entries().map((e, i) => [e.id, i + 1]));
    const listed = told.filter((t) => t.where === 'entries, table');
    const evidence = [
      ...job.findings.map(({ id }) => ({ kind: 'finding', id })),
      ...[...job.media.photos, ...job.media.clips].map(({ id }) => ({ kind: 'photo', id })),
      ...assessment.readings.map(({ kind, id }) => ({ kind, id })),
    ];
    expect(evidence.length).toBeGreaterThan(10);
    for (const item of evidence) {
      const stamps = entriesBehind(log, item);
      const rows = listed.filter((t) => t.from === `job/${item.kind}/${item.id}`);
      expect(rows.map((r) => r.text.split(' | ')[2])).toEqual(stamps);
    }
    for (const { id, kind } of assessment.readings) {
      const row = told.find((t) => t.from === `readings/${id}`);
      for (const stamp of entriesBehind(log, { kind, id }))
        expect(row?.text).toMatch(new RegExp(`Entr(?:y|ies).*\\b${number.get(stamp)}\\b|Entries .* to `));
    }
    for (const { id } of assessment.coverage?.pictures ?? []) {
      const [stamp = ''] = entriesBehind(log, { kind: 'photo', id });
      const row = told.find((t) => t.from === `coverage/pictures/${id}`);
      expect(row?.text).toMatch(new RegExp(`Entry ${number.get(stamp)}$`));
    }
  });

  test('that is computed has a source, and entries unless nobody measured anything', () => {
    for (const [from, { sources, items }] of traced) {
      const [part, id] = from.split('/');
      if (part === 'job' || part === 'assumptions') continue;
      expect(sources.length, from).toBeGreaterThan(0);
      const criterion = part === 'criteria' ? assessment.criteria.find((c) => c.id === id) : undefined;
      const unmeasured = criterion !== undefined && criterion.evidence.length === 0;
      const allAssumed = criterion?.evidence.every((e) => e.origin.kind === 'assumption') === true;
      if (unmeasured || allAssumed || part === 'cautions' || part === 'sources') continue;
      expect(items.length, from).toBeGreaterThan(0);
    }
  });

  test('of a reading, a criterion, a path of water, a finding or a picture leads to that one and no other', () => {
    const rows = told.filter((t) => t.from.includes('/'));
    const of = (part: string) => rows.filter((t) => t.from.startsWith(`${part}/`));
    expect(new Set(of('readings').map((t) => t.from)).size).toBe(assessment.readings.length);
    for (const { text, from } of of('readings')) {
      const reading = assessment.readings.find((r) => `readings/${r.id}` === from);
      expect(text).toContain(reading?.shown.replace(/(\d) %/g, '$1%'));
      expect(trace(from).items).toContainEqual({ kind: reading?.kind, id: reading?.id });
    }
    expect(new Set(of('criteria').map((t) => t.from)).size).toBe(assessment.criteria.length);
    for (const { text, from } of of('criteria')) {
      const criterion = assessment.criteria.find((c) => `criteria/${c.id}` === from);
      expect(text).toContain(criterion?.title);
      for (const { origin } of criterion?.evidence ?? []) {
        if (origin.kind !== 'observation') continue;
        expect(trace(from).items).toContainEqual({ kind: 'observation', id: origin.id });
      }
    }
    for (const { from } of of('coverage/pictures')) {
      const id = from.split('/')[2];
      expect(trace(from).items).toEqual([{ kind: 'photo', id }]);
    }
    expect(of('coverage/pictures')).toHaveLength(assessment.coverage?.pictures.length ?? 0);
    for (const finding of job.findings) {
      expect(traceOf(job, assessment, `job/finding/${finding.id}`).items).toEqual([
        { kind: 'finding', id: finding.id },
      ]);
    }
  });
});

test('every figure of a job of which hardly anything is known says where it comes from', () => {
  const bare = assessed(bareJob);
  for (const { from, text } of toldBy(bare))
    expect(() => traceOf(bare.job, bare.assessment, from), text).not.toThrow();
});

test('a pointer to nothing is refused', () => {
  const { job, assessment } = demo('doubted-liner');
  for (const pointer of [
    '',
    'nonsense',
    'criteria/XXX-99',
    'readings/none',
    'budgets',
    'job/finding/none',
    'assumptions/none',
  ])
    expect(() => traceOf(job, assessment, pointer), pointer).toThrow(/leads to nothing/);
});
