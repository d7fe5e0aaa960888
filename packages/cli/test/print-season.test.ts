import { assess } from '@undercroft/assessment';
import { expect, test } from 'vitest';
import { seasonLines } from '../src/print-season.ts';
import { demoJob } from './written-jobs.ts';

const job = demoJob('neglected-vented');
const few = {
  ...job,
  design: {
    ...job.design,
    repairs: job.design.repairs.filter((r) => ['close-vents', 'dehumidifier'].includes(r.repair)),
  },
};
const { season } = assess(few, undefined, { season: 'full', years: 20 });
if (season === undefined) throw new Error('no year');

test.each([80, 100, 160])('the year keeps to %i columns', (columns) => {
  for (const line of seasonLines(season, columns)) expect(line.length, line).toBeLessThanOrEqual(columns);
});

test('the year shows months, failures, air, machines, ways of the code, effects and chances', () => {
  const text = seasonLines(season, 100).join('\n');
  for (const part of [
    /^Month by month, as found$/m,
    /^Month by month, all repairs$/m,
    /^ {2}RH % +(\d+ +){11}\d+$/m,
    /machine out for a fortnight, from July 8: passes 60 % after \d+ hours/,
    /^Hours in which water condenses: as found: /m,
    /^ {2}December to February +\d+\.\d\d +\d+% +up into the house$/m,
    /^ {2}Middle machine +[\d.]+ pint\/day/m,
    /^ {2}Continuous exhaust, 1 cfm per 50 ft² /m,
    /^ {2}Vents closed, walls air-sealed +\+\d+ /m,
    /^ {2}nothing done +\$0 /m,
    /^How sure \(all repairs, 20 years/m,
    /^What to measure next: /m,
  ]) {
    expect(text).toMatch(part);
  }
});
