import type { HourlyYear } from '@undercroft/assessment';
import type { season } from '@undercroft/engine';
import { SERIES_NAMES, type SeriesName, type SeriesSpan, type YearSeries } from './api.ts';

const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Quantities that a day adds up; the others are means. Mold and wood change slowly: their mean is their state. */
const SUMS: ReadonlySet<SeriesName> = new Set(['waterRemovedKg', 'energyKWh']);

function byDay(hours: ArrayLike<number>, sums: boolean): number[] {
  return Array.from({ length: hours.length / 24 }, (_, day) => {
    let sum = 0;
    for (let hour = 24 * day; hour < 24 * day + 24; hour++) sum += hours[hour];
    return sums ? sum : sum / 24;
  });
}

function ofMonth(hours: Float64Array, month: number): number[] {
  const from = 24 * MONTH_DAYS.slice(0, month).reduce((sum, days) => sum + days, 0);
  return [...hours.subarray(from, from + 24 * MONTH_DAYS[month])];
}

function valuesOf(hourly: season.SeasonHourly, span: SeriesSpan): YearSeries['values'] {
  return Object.fromEntries(
    SERIES_NAMES.map((name) => [
      name,
      span.of === 'year' ? byDay(hourly[name], SUMS.has(name)) : ofMonth(hourly[name], span.month),
    ]),
  ) as unknown as YearSeries['values'];
}

/** Years by the day, or one month of them by the hour. */
export function seriesOf(years: readonly HourlyYear[], span: SeriesSpan): YearSeries[] {
  return years.map(({ kind, hourly }) => ({ kind, values: valuesOf(hourly, span) }));
}
