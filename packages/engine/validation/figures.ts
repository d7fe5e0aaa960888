import { MONTH_START_HOUR } from '../src/climate/calendar.ts';
import type { SeasonMonth } from '../src/season/season-result.ts';
import type { Outcome } from './study.ts';

/** First month and month after the last, January 0. */
export type Months = readonly [first: number, end: number];
export const SUMMER: Months = [5, 8];
export const YEAR: Months = [0, 12];

/** Mean of monthly values over some months, each month alike. */
export function meanOfMonths(
  { result }: Outcome,
  months: Months,
  pick: (month: SeasonMonth) => number,
): number {
  const some = result.months.slice(...months);
  return some.reduce((sum, month) => sum + pick(month), 0) / some.length;
}

/** Mean of an hourly series over some months. */
export function meanOfHours(series: ArrayLike<number>, [first, end]: Months): number {
  let sum = 0;
  const from = MONTH_START_HOUR[first]!;
  const to = MONTH_START_HOUR[end]!;
  for (let hour = from; hour < to; hour++) sum += series[hour]!;
  return sum / (to - from);
}

/** Share of the hours of some months for which something holds. */
export function shareOfHours([first, end]: Months, holds: (hour: number) => boolean): number {
  let count = 0;
  const from = MONTH_START_HOUR[first]!;
  const to = MONTH_START_HOUR[end]!;
  for (let hour = from; hour < to; hour++) if (holds(hour)) count++;
  return count / (to - from);
}

export function summerHumidity(outcome: Outcome): number {
  return meanOfMonths(outcome, SUMMER, (month) => month.relativeHumidity);
}

/** Share of the summer's hours above 80 % relative humidity. */
export function summerAbove80(outcome: Outcome): number {
  const series = outcome.result.hourly!.relativeHumidity;
  return shareOfHours(SUMMER, (hour) => series[hour]! > 0.8);
}

/** Moisture content of the joists at their surface, mean of June to August. */
export function summerJoists(outcome: Outcome): number {
  return meanOfMonths(outcome, SUMMER, (month) => month.woodMoistureSurface);
}

export function percent(share: number, digits = 1): string {
  return `${fixed(100 * share, digits)} %`;
}

/** A number with a true minus sign; never a negative zero. */
export function fixed(value: number, digits: number): string {
  const text = Math.abs(value).toFixed(digits);
  return value < 0 && Number(text) !== 0 ? `−${text}` : text;
}

/** With its sign, for changes. */
export function change(value: number, digits: number): string {
  const text = fixed(value, digits);
  return text.startsWith('−') || Number(text) === 0 ? text : `+${text}`;
}

export function rises(values: readonly number[]): boolean {
  return values.every((value, i) => i === 0 || value > values[i - 1]!);
}
