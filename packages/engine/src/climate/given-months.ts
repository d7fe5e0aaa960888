import type { Notice } from '../numerics/notice.ts';
import {
  humidityRatioFromVaporPressure,
  vaporPressureFromHumidityRatioPa,
} from '../psychrometrics/humidity-ratio.ts';
import { MONTH_NAMES } from './calendar.ts';
import type { ClimateMonth, MonthlyClimate } from './monthly.ts';
import { liquidSaturationPressurePa, stationDewPointC } from './station-dew-point.ts';

/** A month as a person gives it. Humidity in one of three ways; where several are given the first listed here counts. */
export interface GivenMonth {
  readonly temperatureMeanC: number;
  readonly dailyRangeK: number;
  /** Mean humidity ratio, kg/kg. */
  readonly humidityRatioMean?: number;
  /** Mean dew point over liquid water, °C. */
  readonly dewPointMeanC?: number;
  /** Mean relative humidity of all hours, fraction 0..1. */
  readonly relativeHumidityMean?: number;
  readonly pressurePa: number;
  readonly windSpeedMPerS: number;
  readonly temperatureMinC?: number;
  readonly temperatureMaxC?: number;
  readonly globalHorizontalMeanWPerM2?: number;
}

/** One fault of monthly values. */
export interface MonthlyIssue {
  /** Where, e.g. `months[6].dewPointMeanC` for July. */
  readonly path: string;
  readonly found: string;
  readonly expected: string;
  readonly message: string;
}

/** Checked monthly values, or everything that is wrong with them. */
export type MonthlyResult =
  | { readonly ok: true; readonly monthly: MonthlyClimate; readonly notices: readonly Notice[] }
  | { readonly ok: false; readonly issues: readonly MonthlyIssue[] };

const LIMITS: readonly (readonly [keyof GivenMonth, number, number, string, boolean])[] = [
  ['temperatureMeanC', -60, 50, '°C', true],
  ['dailyRangeK', 0.5, 30, 'K', true],
  ['pressurePa', 45_000, 110_000, 'Pa', true],
  ['windSpeedMPerS', 0, 30, 'm/s', true],
  ['humidityRatioMean', 0.00001, 0.035, 'kg/kg', false],
  ['dewPointMeanC', -70, 35, '°C', false],
  ['relativeHumidityMean', 0.01, 1, 'as a fraction', false],
  ['temperatureMinC', -90, 57, '°C', false],
  ['temperatureMaxC', -90, 57, '°C', false],
  ['globalHorizontalMeanWPerM2', 0, 500, 'W/m²', false],
];

/**
 * Logarithm of (mean humidity ratio / humidity ratio at the mean dew point) as a line over the mean dew point:
 * 0.083 at 0 °C, falling by 0.0035 per K. Least squares over the 264 station months of `STATIONS`, typical error 3.5 %
 * (computed). Used where only a mean dew point is given.
 */
const SPREAD_AT_ZERO = 0.083;
const SPREAD_PER_K = -0.0035;

/**
 * Checks monthly values that a person gave (SI) and works out the missing one of dew point and humidity ratio.
 *
 * Every fault is collected. Where the humidity ratio had to be estimated from a mean dew point (typical error 3.5 %) or
 * from a mean relative humidity at the mean temperature (typical error 6 % over the same station months; up to 13 %
 * too high in dry and 25 % too low in very cold places), a notice says so.
 * @param months twelve, January first
 * @param source where the values come from, for print
 */
export function checkMonthly(months: readonly GivenMonth[], source: string): MonthlyResult {
  const issues: MonthlyIssue[] = [];
  if (months.length !== 12) {
    issues.push({
      path: 'months',
      found: `${months.length} months`,
      expected: '12 months, January first',
      message: `There are ${months.length} months; give all 12, January first.`,
    });
  }
  months.forEach((month, m) => {
    checkMonth(month, m, issues);
  });
  if (issues.length > 0) return { ok: false, issues };
  return {
    ok: true,
    monthly: { months: months.map((month) => completed(month)), source },
    notices: estimateNotices(months),
  };
}

function checkMonth(month: GivenMonth, m: number, issues: MonthlyIssue[]): void {
  const name = MONTH_NAMES[m] ?? `month ${m + 1}`;
  const before = issues.length;
  const add = (field: string, found: string, expected: string, message: string): void => {
    issues.push({ path: `months[${m}].${field}`, found, expected, message: `${name}: ${message}` });
  };
  for (const [field, min, max, unit, required] of LIMITS) {
    const value: unknown = month[field];
    if (value === undefined && !required) continue;
    if (typeof value === 'number' && value >= min && value <= max) continue;
    const expected = `${min} to ${max} ${unit}`;
    add(field, String(value), expected, `${field} is ${String(value)}; it must be ${expected}.`);
  }
  if (
    month.humidityRatioMean === undefined &&
    month.dewPointMeanC === undefined &&
    month.relativeHumidityMean === undefined
  ) {
    const expected = 'humidityRatioMean, dewPointMeanC or relativeHumidityMean';
    add('dewPointMeanC', 'no humidity', expected, `no humidity is given; give one of ${expected}.`);
  }
  if (issues.length > before) return;
  const mean = month.temperatureMeanC;
  if (month.dewPointMeanC !== undefined && month.dewPointMeanC > mean) {
    add(
      'dewPointMeanC',
      `${month.dewPointMeanC} °C`,
      `at most the mean dry bulb of ${mean} °C`,
      `the dew point of ${month.dewPointMeanC} °C is above the dry bulb of ${mean} °C.`,
    );
  }
  // The mean of saturation over a swinging temperature is a little above saturation at the mean: hence 10 %.
  const most = 1.1 * saturationRatio(mean, month.pressurePa);
  if (month.humidityRatioMean !== undefined && month.humidityRatioMean > most) {
    add(
      'humidityRatioMean',
      `${month.humidityRatioMean} kg/kg`,
      `at most ${most.toFixed(4)} kg/kg, saturation at ${mean} °C`,
      `a humidity ratio of ${month.humidityRatioMean} kg/kg is more than air of ${mean} °C can hold.`,
    );
  }
  const { temperatureMinC, temperatureMaxC } = month;
  if (temperatureMinC !== undefined && temperatureMinC >= mean) {
    const expected = `below the mean of ${mean} °C`;
    add('temperatureMinC', `${temperatureMinC} °C`, expected, `the lowest hour is not ${expected}.`);
  }
  if (temperatureMaxC !== undefined && temperatureMaxC <= mean) {
    const expected = `above the mean of ${mean} °C`;
    add('temperatureMaxC', `${temperatureMaxC} °C`, expected, `the highest hour is not ${expected}.`);
  }
}

function saturationRatio(dewPointC: number, pressurePa: number): number {
  return humidityRatioFromVaporPressure(liquidSaturationPressurePa(dewPointC), pressurePa);
}

function completed(month: GivenMonth): ClimateMonth {
  const { relativeHumidityMean, ...rest } = month;
  const humidityRatioMean = humidityRatioOf(month);
  const dewPointMeanC = month.dewPointMeanC ?? dewPointOf(humidityRatioMean, month.pressurePa);
  return { ...rest, humidityRatioMean, dewPointMeanC };
}

function humidityRatioOf(month: GivenMonth): number {
  const { temperatureMeanC, pressurePa } = month;
  if (month.humidityRatioMean !== undefined) return month.humidityRatioMean;
  if (month.dewPointMeanC !== undefined) {
    return saturationRatio(month.dewPointMeanC, pressurePa) * spreadFactor(month.dewPointMeanC);
  }
  const vaporPressure = month.relativeHumidityMean! * liquidSaturationPressurePa(temperatureMeanC);
  return humidityRatioFromVaporPressure(vaporPressure, pressurePa);
}

/** Mean dew point that goes with a mean humidity ratio: the inverse of the estimate above, by fixed point. */
function dewPointOf(humidityRatioMean: number, pressurePa: number): number {
  let dewPoint = 0;
  for (let step = 0; step < 30; step++) {
    const atMean = humidityRatioMean / spreadFactor(dewPoint);
    dewPoint = stationDewPointC(vaporPressureFromHumidityRatioPa(atMean, pressurePa));
  }
  return dewPoint;
}

function spreadFactor(dewPointC: number): number {
  return Math.max(1, Math.exp(SPREAD_AT_ZERO + SPREAD_PER_K * dewPointC));
}

function estimateNotices(months: readonly GivenMonth[]): Notice[] {
  const without = months.filter((month) => month.humidityRatioMean === undefined);
  const fromDewPoint = without.filter((month) => month.dewPointMeanC !== undefined).length;
  const fromRelativeHumidity = without.length - fromDewPoint;
  const notices: Notice[] = [];
  if (fromDewPoint > 0) {
    notices.push({
      code: 'humidity-ratio-from-mean-dew-point',
      message: `The mean humidity ratio of ${fromDewPoint} months was estimated from the mean dew point (typical error 3.5 %).`,
    });
  }
  if (fromRelativeHumidity > 0) {
    notices.push({
      code: 'humidity-ratio-from-mean-relative-humidity',
      message:
        `The mean humidity ratio of ${fromRelativeHumidity} months was estimated from the mean relative humidity at the ` +
        'mean temperature (typical error 6 %, more in dry and in very cold places).',
    });
  }
  return notices;
}
