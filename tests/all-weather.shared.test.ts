import { type Assessment, assess, type BudgetResult } from '@undercroft/assessment';
import type { climate } from '@undercroft/engine';
import { beforeAll, describe, expect, test } from 'vitest';
import { demoJobs, notFinite, shared, weatherFiles, weatherYear } from './demo-jobs-in-weather.ts';

if (shared === undefined) {
  // biome-ignore lint/suspicious/noConsole: a suite that does not run must say so
  console.warn(
    'NOT RUN: demo jobs in the weather of every station need UNDERCROFT_SHARED, the path of the data.',
  );
}

/** The years by the hour have a long suite. */
const quick = { season: 'none' } as const;

/** What comes in, less what goes out, with what is not explained: nothing but rounding. */
function leftOver({ paths, unexplainedKgPerDay }: BudgetResult): number {
  return paths.reduce((sum, path) => sum + path.kgPerDay, 0) + unexplainedKgPerDay;
}

const budgetsOf = (a: Assessment): BudgetResult[] =>
  [a.budgets.surveyDay, a.budgets.designMonth].filter((b) => b !== undefined);

describe.skipIf(shared === undefined)(
  'demo jobs in the weather of every station, needs UNDERCROFT_SHARED',
  () => {
    test('there are 22 weather files', () => {
      expect(weatherFiles).toHaveLength(22);
    });

    describe.each(weatherFiles)('%s', (file) => {
      let year: climate.ClimateYear;
      let assessments: Assessment[];

      beforeAll(() => {
        year = weatherYear(file);
        assessments = demoJobs.map((job) => assess(job, year, quick));
      });

      test('every figure is finite', () => {
        for (const a of assessments) expect(notFinite(a), a.job.id).toEqual([]);
      });

      test('the climate is that of the file', () => {
        for (const a of assessments) expect(a.climate.name).toBe(year.place.name);
      });

      test('sizes and criteria do not depend on the weather', () => {
        for (const [i, job] of demoJobs.entries()) {
          const still = assess(job, undefined, quick);
          expect(assessments[i]?.geometry).toEqual(still.geometry);
          expect(assessments[i]?.criteria).toEqual(still.criteria);
          expect(assessments[i]?.readings).toEqual(still.readings);
        }
      });

      test('each budget closes', () => {
        for (const a of assessments) {
          for (const b of budgetsOf(a)) {
            // The steady humidity is solved for; a millionth of the water is far below any figure shown.
            expect(Math.abs(leftOver(b)), b.title).toBeLessThanOrEqual(1e-6 * b.totalInKgPerDay + 1e-9);
            expect(a.budgets.designMonth.unexplainedKgPerDay).toBe(0);
          }
        }
      });

      test('air is possible: humidity from 0 to 1, dew point at most the temperature, ranges around their values', () => {
        for (const a of assessments) {
          for (const b of budgetsOf(a)) {
            for (const air of [b.crawl, b.outdoor]) {
              expect(air.relativeHumidity).toBeGreaterThan(0);
              expect(air.relativeHumidity).toBeLessThanOrEqual(1);
              expect(air.dewPointC).toBeLessThanOrEqual(air.temperatureC + 1e-9);
            }
            for (const path of b.paths) {
              expect(path.low, `${b.title}: ${path.title}`).toBeLessThanOrEqual(path.kgPerDay + 1e-12);
              expect(path.high, `${b.title}: ${path.title}`).toBeGreaterThanOrEqual(path.kgPerDay - 1e-12);
            }
          }
        }
      });

      test('the same job and weather give the same assessment', () => {
        for (const [i, job] of demoJobs.entries()) {
          expect(JSON.stringify(assess(job, weatherYear(file), quick))).toBe(JSON.stringify(assessments[i]));
        }
      });
    });
  },
);
