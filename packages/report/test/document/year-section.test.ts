import { assess } from '@undercroft/assessment';
import { DEMO_JOBS, readJob } from '@undercroft/record';
import { describe, expect, it } from 'vitest';
import { textOf } from '../../src/document/blocks.ts';
import { reportDocument } from '../../src/document/report.ts';

const read = readJob(DEMO_JOBS.find((d) => d.name === 'neglected-vented')?.job);
if (!read.ok) throw new Error('the demo job breaks the schema');
const { job } = read;

describe('the year in the report', () => {
  it('is left out where it was not run', () => {
    const document = reportDocument(job, assess(job, undefined, { season: 'none' }));
    expect(document.sections.map((s) => s.id)).not.toContain('year');
  });

  it('shows twelve months as found and repaired, every state, and the thresholds', () => {
    const assessment = assess(job, undefined, { season: 'cases' });
    const section = reportDocument(job, assessment).sections.find((s) => s.id === 'year');
    const tables = (section?.blocks ?? []).filter((b) => b.kind === 'table');
    const months = tables.filter((t) => t.rows.length === 12 && textOf(t.rows[0][0][0]) === 'January');
    expect(months).toHaveLength(2);
    const states = tables.find((t) => t.columns[0].title === 'State');
    expect(states?.rows.map((r) => textOf(r[0][0]))).toEqual(assessment.season?.cases.map((c) => c.name));
    expect(states?.rows.map((r) => textOf(r[1][0]))).toEqual(
      assessment.season?.cases.map((c) => String(c.daysAbove80)),
    );
    const chart = section?.blocks.find((b) => b.kind === 'figure');
    const drawing = chart?.onPaper({ width: 500, height: 300, textSize: 9 });
    const texts = JSON.stringify(drawing?.items);
    for (const threshold of ['60 %', '70 %', '80 %']) expect(texts).toContain(threshold);
    expect(JSON.stringify(section) + texts).not.toMatch(/NaN|Infinity|undefined/);
  });
});
