import { assess } from '@undercroft/assessment';
import { describe, expect, test } from 'vitest';
import { demoJobs, notFinite, shared, weatherFiles, weatherYear } from './demo-jobs-in-weather.ts';

if (shared === undefined) {
  // biome-ignore lint/suspicious/noConsole: a suite that does not run must say so
  console.warn('NOT RUN: years of the demo jobs in the weather of every station need UNDERCROFT_SHARED.');
}

describe.skipIf(shared === undefined)('years of the demo jobs, needs UNDERCROFT_SHARED', () => {
  test.each(weatherFiles)('%s: finite, settled, books closed, the same each time', (file) => {
    const year = weatherYear(file);
    for (const job of demoJobs) {
      const assessment = assess(job, year);
      expect(notFinite(assessment), job.id).toEqual([]);
      const cases = assessment.season?.cases ?? [];
      expect(cases.length).toBeGreaterThan(1);
      for (const { name, closure, settled, highestDayRelativeHumidity, peakWoodMoisture } of cases) {
        // Wood above fiber saturation under air that never dries it takes up water for decades: no year repeats, and it says so.
        if (peakWoodMoisture > 0.3 && !settled) {
          expect(assessment.season?.notices.map((n) => n.code)).toContain('year-not-settled');
        } else expect(settled, `${job.id}, ${name}`).toBe(true);
        // A millionth of what moved is far below any figure shown.
        expect(Math.abs(closure.water), `${job.id}, ${name}`).toBeLessThan(1e-6);
        expect(Math.abs(closure.energy), `${job.id}, ${name}`).toBeLessThan(1e-6);
        expect(highestDayRelativeHumidity).toBeLessThanOrEqual(1);
      }
      expect(JSON.stringify(assess(job, weatherYear(file))), job.id).toBe(JSON.stringify(assessment));
    }
  });
});
