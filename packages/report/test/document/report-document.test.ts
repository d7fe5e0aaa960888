import { describe, expect, test } from 'vitest';
import { type Block, type Inline, type Section, type Table, textOf } from '../../src/document/blocks.ts';
import { reportDocument } from '../../src/document/report.ts';
import { KIND_WORDS, PROVENANCE_TAGS, shortSource } from '../../src/words/names.ts';
import { assessed, bareJob, DEMO_NAMES, demo } from '../jobs.ts';

const tablesOf = (blocks: readonly Block[]) => blocks.filter((b): b is Table => b.kind === 'table');
const rowText = (row: Table['rows'][number]) => row.map((cell) => cell.map(textOf).join(' ')).join(' | ');
const inlines = (table: Table): Inline[] => table.rows.flatMap((row) => row.flatMap((cell) => cell.flat()));

/** Rows of the tables in which criteria are told; defects name some of them again. */
const criterionRows = (sections: readonly Section[]) =>
  ['met', 'not-met', 'not-shown'].flatMap((id) =>
    tablesOf(section(sections, id).blocks).flatMap((t) => t.rows),
  );

function section(sections: readonly Section[], id: string): Section {
  const found = sections.find((s) => s.id === id);
  if (found === undefined) throw new Error(`no section ${id}`);
  return found;
}

describe.each(DEMO_NAMES)('the report of %s', (name) => {
  const { job, assessment } = demo(name);
  const { sections } = reportDocument(job, assessment);

  test.each(['met', 'not-met', 'not-shown'] as const)(
    'has every criterion that is %s once, in its section, with its mark',
    (verdict) => {
      const rows = tablesOf(section(sections, verdict).blocks).flatMap((t) => t.rows);
      const expected = assessment.criteria.filter((c) => c.verdict === verdict);
      expect(rows.length).toBe(expected.length);
      for (const c of expected) {
        const own = rows.filter(
          (r) => ` ${rowText(r)} `.includes(` ${c.id} `) && rowText(r).includes(c.title),
        );
        expect(own.length, c.id).toBe(1);
        expect(own[0][0].flat()).toContainEqual({ mark: verdict });
      }
    },
  );

  test('names the kind of each criterion, and never calls practice code', () => {
    for (const id of ['met', 'not-met', 'not-shown'])
      for (const table of tablesOf(section(sections, id).blocks)) {
        const kind = assessment.criteria.find((c) =>
          table.rows.some((r) => rowText(r).includes(` ${c.id} `)),
        );
        const last = table.rows.map((r) => textOf(r[r.length - 1][0]));
        for (const text of last)
          expect(text.startsWith(KIND_WORDS[(kind as { kind: 'code' }).kind].name)).toBe(true);
      }
    const practice = assessment.criteria.filter((c) => c.kind === 'practice');
    const rows = criterionRows(sections);
    for (const c of practice) {
      const row = rows.find((r) => rowText(r).includes(` ${c.id} `)) as Table['rows'][number];
      const kindCell = row[row.length - 1].map(textOf).join(' ');
      expect(kindCell).toMatch(/^Practice/);
      expect(kindCell).not.toMatch(/\bcode\b/i);
    }
  });

  test('says where a source is second hand or from memory', () => {
    const rows = criterionRows(sections);
    for (const c of assessment.criteria) {
      const row = rows.find((r) => rowText(r).includes(` ${c.id} `) && rowText(r).includes(c.title));
      expect(rowText(row as never), c.id).toContain(PROVENANCE_TAGS[c.sourceKnown]);
      if (c.kind !== 'practice') expect(rowText(row as never)).toContain(shortSource(c.source).short);
    }
  });

  test('gives limit in both systems, evidence, and who and when of what is not met', () => {
    const rows = tablesOf(section(sections, 'not-met').blocks).flatMap((t) => t.rows);
    for (const c of assessment.criteria.filter((c) => c.verdict === 'not-met')) {
      const text = rowText(rows.find((r) => rowText(r).includes(` ${c.id} `)) as never);
      expect(text).toContain(c.limit.replace(' %', '%'));
      expect(text).toContain(c.limitSi.replace(' %', '%'));
      for (const { origin } of c.evidence) {
        if (origin.who !== undefined) expect(text).toContain(origin.who);
        if (origin.note !== undefined) expect(text).toContain(origin.note.replace(' %', '%'));
      }
    }
  });

  test('has every assumption, marked, with its range and reason', () => {
    const [table] = tablesOf(section(sections, 'assumptions').blocks);
    expect(table.rows.length).toBe(assessment.assumptions.length);
    for (const [i, a] of assessment.assumptions.entries()) {
      const [title, taken] = table.rows[i];
      expect(textOf(title[0])).toBe(a.title);
      const value = taken.flat().find((part) => 'assumed' in part && part.assumed);
      expect(value, a.key).toBeDefined();
      const figures = rowText(table.rows[i].slice(1, 3));
      expect(figures).not.toMatch(/NaN|undefined/);
      for (const [number] of figures.matchAll(/\d[\d.]*/g))
        expect(number.replace('.', '').replace(/^0+/, '').length, figures).toBeLessThanOrEqual(4);
    }
  });

  test('marks figures of the water balance that have guesses in them, and no others', () => {
    const tables = tablesOf(section(sections, 'water').blocks);
    const budgets = [assessment.budgets.surveyDay, assessment.budgets.designMonth].filter(
      (b) => b !== undefined,
    );
    for (const [i, budget] of budgets.entries())
      for (const [j, path] of budget.paths.entries()) {
        const figures = tables[i].rows[j].slice(1).flat(2);
        for (const f of figures) expect('assumed' in f && f.assumed === true, path.title).toBe(path.assumed);
      }
  });

  test('has every reading with its state in a mark and a word', () => {
    const tables = tablesOf(section(sections, 'readings').blocks);
    const rows = tables.flatMap((t) => t.rows);
    expect(rows.length).toBe(assessment.readings.length);
    for (const reading of assessment.readings) {
      const row = rows.find((r) => rowText(r).includes(reading.means.replace(/(\d) %/g, '$1%')));
      const state = (row as Table['rows'][number])[1].flat();
      expect(state[0]).toEqual({ mark: reading.state });
      expect(textOf(state).toLowerCase()).toBe(reading.state);
    }
  });

  test('puts what is not met before what is not shown, and that before what is met', () => {
    const order = sections.map((s) => s.id);
    expect(order.indexOf('not-met')).toBeLessThan(order.indexOf('not-shown'));
    expect(order.indexOf('not-shown')).toBeLessThan(order.indexOf('met'));
  });

  test('has headings in order and ids that differ', () => {
    const blocks = sections.flatMap((s) => s.blocks);
    const headings = blocks.flatMap((b) => (b.kind === 'heading' ? [b] : []));
    expect(headings[0].level).toBe(2);
    const ids = blocks.flatMap((b) => (b.kind === 'heading' || b.kind === 'figure' ? [b.id] : []));
    expect(new Set(ids).size).toBe(ids.length);
    for (const s of sections) {
      expect(s.blocks[0]).toMatchObject({ kind: 'heading', level: 2, id: s.id });
    }
  });

  test('ends by deferring to the local code and licensed trades', () => {
    const last = sections[sections.length - 1].blocks
      .map((b) => (b.kind === 'paragraph' ? textOf(b.text) : ''))
      .join(' ');
    expect(last).toContain('defers to the local code');
    expect(last).toContain('authority having jurisdiction');
    expect(last).toContain('licensed');
  });

  test('says each caution', () => {
    const rows = tablesOf(section(sections, 'cautions').blocks).flatMap((t) => t.rows);
    for (const [i, c] of assessment.cautions.entries())
      expect(textOf(rows[i][0][0])).toBe(c.text.replace(/(\d) %/g, '$1%'));
  });
});

test('a job of which hardly anything is known makes a report that says so', () => {
  const { job, assessment } = assessed(bareJob);
  const report = reportDocument(job, assessment);
  const text = report.sections
    .flatMap((s) => s.blocks)
    .map((b) => (b.kind === 'paragraph' ? textOf(b.text) : ''))
    .join(' ');
  expect(text).toContain('No readings were taken.');
  expect(text).toContain('No findings were entered.');
  expect(text).toContain('cannot be balanced');
  expect(report.running.date).toBe('Survey not dated');
  expect(report.datedOn).toBe('2000-01-01');
  const sizes = report.sections
    .flatMap((s) => tablesOf(s.blocks))
    .find((t) => t.caption === 'Sizes of the space');
  expect(inlines(sizes as Table).some((p) => 'assumed' in p && p.assumed)).toBe(true);
});
