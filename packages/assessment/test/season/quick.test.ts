import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { assess, assessmentJsonSchema, type HourlyYear } from '../../src/index.ts';
import { demoJob } from './jobs.ts';

const job = demoJob('neglected-vented');
const years: HourlyYear[] = [];
const quick = assess(job, undefined, { season: 'quick', hours: (given) => years.push(...given) }).season!;
const cases = assess(job, undefined, { season: 'cases' }).season!;

describe('a quick year', () => {
  it('is the first and the last state of the cases, and the same machine', () => {
    expect(quick.depth).toBe('quick');
    expect(quick.cases.map((c) => c.kind)).toEqual(['as-found', 'all-repairs']);
    for (const one of quick.cases) expect(cases.cases.find((c) => c.kind === one.kind)).toEqual(one);
    expect(quick.sizing).toEqual(cases.sizing);
    expect(quick.airExchange).toEqual(cases.airExchange);
    // A single repair leaves things as they are that all of them change, so it rests on more.
    expect(cases.assumptions).toEqual(expect.arrayContaining([...quick.assumptions]));
  });

  it('is an assessment by its schema', () => {
    const valid = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(assessmentJsonSchema());
    valid(JSON.parse(JSON.stringify(assess(job, undefined, { season: 'quick' }))));
    expect(valid.errors ?? []).toEqual([]);
  });

  it('gives the hours that its months are means of', () => {
    expect(years.map((y) => y.kind)).toEqual(['as-found', 'all-repairs']);
    years.forEach(({ hourly }, i) => {
      expect(hourly.relativeHumidity).toHaveLength(8760);
      const january = hourly.relativeHumidity.slice(0, 31 * 24);
      const mean = january.reduce((sum, rh) => sum + rh, 0) / january.length;
      expect(mean).toBeCloseTo(quick.cases[i].months[0].relativeHumidity, 9);
      const water = hourly.waterRemovedKg.reduce((sum, kg) => sum + kg, 0);
      expect(water).toBeCloseTo(quick.cases[i].waterRemovedKg, 6);
    });
  });

  it('of a space without repairs is one state', () => {
    const given: HourlyYear[] = [];
    const sound = assess(demoJob('sound-closed'), undefined, {
      season: 'quick',
      hours: (hours) => given.push(...hours),
    }).season!;
    expect(sound.cases.map((c) => c.kind)).toEqual(['as-found']);
    expect(given.map((y) => y.kind)).toEqual(['as-found']);
  });

  it('tells its progress to the end', () => {
    const told: string[] = [];
    assess(job, undefined, { season: 'quick', progress: (done, total) => told.push(`${done}/${total}`) });
    expect(told.at(-1)).toBe('3/3');
  });
});
