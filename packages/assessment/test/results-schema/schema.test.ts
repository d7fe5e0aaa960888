import { DEMO_JOBS } from '@undercroft/record';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { assess, assessmentJsonSchema } from '../../src/index.ts';
import { demoJob, plainJob } from '../season/jobs.ts';

const valid = new Ajv2020({ strict: true, allowUnionTypes: true, allErrors: true }).compile(
  assessmentJsonSchema(),
);

function faults(data: unknown): string[] {
  valid(JSON.parse(JSON.stringify(data)));
  return (valid.errors ?? [])
    .slice(0, 5)
    .map((e) => `${e.instancePath} ${e.message} ${JSON.stringify(e.params)}`);
}

describe('the JSON Schema of an assessment', () => {
  it.each(DEMO_JOBS.map((d) => d.name))('holds for the demo job %s', (name) => {
    expect(faults(assess(demoJob(name)))).toEqual([]);
  });

  it('holds without a year and for a job that says little', () => {
    const job = plainJob({ cover: 'bare-earth' });
    job.plan.walls = [];
    job.plan.heights = [];
    job.house = { amendments: [] };
    expect(faults(assess(job, undefined, { season: 'none' }))).toEqual([]);
    expect(faults(assess(job))).toEqual([]);
  });

  it('refuses what it does not name', () => {
    const result = assess(demoJob('sound-closed'));
    expect(faults({ ...result, more: 1 })).toEqual([expect.stringContaining('additional properties')]);
    const [first, ...rest] = result.season!.cases;
    const cases = [{ ...first, months: first.months.slice(1) }, ...rest];
    expect(faults({ ...result, season: { ...result.season, cases } })).toEqual([
      expect.stringContaining('/season/cases/0/months'),
    ]);
  });

  it('refuses an assessment that lacks a part', () => {
    const { sources: _, ...less } = assess(demoJob('sound-closed'), undefined, { season: 'none' });
    expect(faults(less)).toEqual([expect.stringContaining('sources')]);
  });
});
