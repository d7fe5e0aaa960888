import { expect, it } from 'vitest';
import { SERIES_NAMES, type SeriesName } from '../../src/worker/api.ts';
import { seriesOf } from '../../src/worker/year-series.ts';

/** Hours that say which hour they are. */
const hourly = Object.fromEntries(
  SERIES_NAMES.map((name) => [name, Float64Array.from({ length: 8760 }, (_, hour) => hour)]),
) as Record<SeriesName, Float64Array>;
const years = [{ name: 'as found', kind: 'as-found', hourly }] as unknown as Parameters<typeof seriesOf>[0];

it('gives days as means, and water and energy as sums', () => {
  const [{ values, kind }] = seriesOf(years, { of: 'year' });
  expect(kind).toBe('as-found');
  expect(values.relativeHumidity).toHaveLength(365);
  expect(values.relativeHumidity[0]).toBe(11.5);
  expect(values.relativeHumidity[364]).toBe(364 * 24 + 11.5);
  expect(values.waterRemovedKg[1]).toBe(24 * (24 + 11.5));
});

it('gives the hours of a month, the first and the last included', () => {
  const hours = (month: number) => seriesOf(years, { of: 'month', month })[0].values.dewPointC;
  expect(hours(0)).toHaveLength(31 * 24);
  expect(hours(1)[0]).toBe(31 * 24);
  expect(hours(1)).toHaveLength(28 * 24);
  expect(hours(11).at(-1)).toBe(8759);
});
