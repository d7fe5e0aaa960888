import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { type MoldClass, moldParameters } from '../../src/mold/classes.ts';
import { moldIndexOfSeries } from '../../src/mold/series.ts';

const shared = process.env.UNDERCROFT_SHARED;
if (!shared) {
  // biome-ignore lint/suspicious/noConsole: a suite that does not run must say so
  console.warn('mold: the 40 reference runs over measured series did NOT run: set UNDERCROFT_SHARED');
}

const read = (name: string): Buffer => readFileSync(join(shared!, 'data', 'sensors', name));
const lines = (text: string): string[][] =>
  text
    .trim()
    .split(/\r?\n/)
    .slice(1)
    .map((line) => line.split(','));

interface Series {
  readonly temperatureC: number[];
  readonly relativeHumidity: number[];
}

/** Hourly steps: the first house was logged every ten minutes, and every sixth reading was used. */
function seriesOf(name: string): Series {
  const rows = lines(gunzipSync(read(`${name}.csv.gz`)).toString('utf8'));
  const hourly = name.startsWith('house1') ? rows.filter((_, i) => i % 6 === 0) : rows;
  return {
    temperatureC: hourly.map((row) => Number(row[1])),
    relativeHumidity: hourly.map((row) => Number(row[2]) / 100),
  };
}

describe.skipIf(!shared)('mold index of measured series (needs UNDERCROFT_SHARED)', () => {
  // Computed with published research code of the Finnish model: wood factor 0, floor form `never-below-floor`.
  const reference = shared ? lines(read('mould_index_reference.csv').toString('utf8')) : [];
  const cache = new Map<string, Series>();

  test('the reference has its 40 rows', () => {
    expect(reference).toHaveLength(40);
  });

  test.each(reference)(
    '%s, %s steps, %s',
    (name, steps, moldClass, decline, maximum, stepOfMaximum, final) => {
      const series = cache.get(name!) ?? seriesOf(name!);
      cache.set(name!, series);
      expect(series.temperatureC).toHaveLength(Number(steps));
      const parameters = moldParameters(moldClass!.replace('_', '-') as MoldClass, {
        woodFactor: 0,
        declineFactor: Number(decline),
        criticalHumidity: 'never-below-floor',
      });
      // That program reports the index at the start of every hour, so it leaves the last reading unused.
      const temperatureC = series.temperatureC.slice(0, -1);
      const relativeHumidity = series.relativeHumidity.slice(0, -1);
      const result = moldIndexOfSeries(temperatureC, relativeHumidity, { parameters });
      // Half of the last printed digit.
      const tolerance = 0.00005 + 1e-9;
      expect(Math.abs(result.maximumIndex - Number(maximum))).toBeLessThanOrEqual(tolerance);
      expect(Math.abs(result.finalIndex - Number(final))).toBeLessThanOrEqual(tolerance);
      expect(result.hourOfMaximum).toBe(Number(stepOfMaximum));
    },
  );
});
