import type { Ending } from '../../numerics/solution.ts';
import { HOURS_PER_YEAR, MONTH_START_HOUR } from '../calendar.ts';
import { type ClimateMonth, meanDailyRanges, monthExtremes, monthMeans } from '../monthly.ts';
import { DAILY_SHAPE } from './daily-shape.ts';
import { spreadOverYear } from './month-curve.ts';

/** A month's temperatures as the generator must meet them. */
export interface TemperatureTarget {
  readonly meanC: number;
  readonly dailyRangeK: number;
  readonly minC: number;
  readonly maxC: number;
}

/** Monthly means must be met to this, K. Ten times finer than the 0.05 K that is promised. */
const MEAN_TOLERANCE_K = 0.005;

const PASSES_MAX = 60;

/** The daily course keeps at least this share of the daily range; fronts give way. */
const DAILY_SHARE_MIN = 0.35;

/** How near to a stated extreme the hours are steered, K: so that a pass that overshoots a little stays within. */
const EXTREME_MARGIN_K = 0.3;

/** Largest front in a month without strong ones, as a share of the way from the mean to the extreme. */
const FRONT_SIZE_MAX = 1.2;

/**
 * Extremes where the month gives none: mean + 3.0 K + 0.69 of the daily range + 0.27 of how much colder the month is
 * than the warmest one, and mean − (2.7 K + 0.67 ... + 0.25 ...). Least squares over the 264 months of the built-in
 * stations, standard error 2.6 K both (computed).
 */
export function temperatureTargets(months: readonly ClimateMonth[]): {
  targets: TemperatureTarget[];
  assumedExtremes: number;
} {
  const warmest = Math.max(...months.map((month) => month.temperatureMeanC));
  let assumedExtremes = 0;
  const targets = months.map((month): TemperatureTarget => {
    const colder = warmest - month.temperatureMeanC;
    if (month.temperatureMinC === undefined || month.temperatureMaxC === undefined) assumedExtremes++;
    return {
      meanC: month.temperatureMeanC,
      dailyRangeK: month.dailyRangeK,
      minC:
        month.temperatureMinC ?? month.temperatureMeanC - (2.7 + 0.67 * month.dailyRangeK + 0.25 * colder),
      maxC:
        month.temperatureMaxC ?? month.temperatureMeanC + (3.0 + 0.69 * month.dailyRangeK + 0.27 * colder),
    };
  });
  return { targets, assumedExtremes };
}

/**
 * Hourly dry bulb, °C: a smooth yearly course, a daily course and fronts, whose sizes are corrected pass by pass until
 * monthly means, mean daily ranges and extremes agree with the targets. The means come first: they are met exactly;
 * fronts shrink where they would widen the daily range, so an extreme may not be reached.
 * @param fronts passing weather in −1..1, one value per hour
 * @param dayStrength strength of the daily course, one value per hour, mean about 1 (weak under cloud)
 */
export function synthesizeTemperature(
  targets: readonly TemperatureTarget[],
  fronts: Float64Array,
  dayStrength: Float64Array,
): { temperatureC: Float64Array; ending: Ending; dailyRangeResidualK: number } {
  const base = targets.map((target) => target.meanC);
  const daily = targets.map((target) => 0.8 * target.dailyRangeK);
  const warm = targets.map((target) => 0.6 * (target.maxC - target.meanC));
  const cold = targets.map((target) => 0.6 * (target.meanC - target.minC));
  const curves = { base: curve(), daily: curve(), warm: curve(), cold: curve() };
  const temperatureC = curve();

  const build = (): number[] => {
    spreadOverYear(base, curves.base);
    spreadOverYear(daily, curves.daily);
    spreadOverYear(warm, curves.warm);
    spreadOverYear(cold, curves.cold);
    for (let m = 0; m < 12; m++) {
      const { minC, maxC } = targets[m]!;
      for (let hour = MONTH_START_HOUR[m]!; hour < MONTH_START_HOUR[m + 1]!; hour++) {
        const front = fronts[hour]!;
        const free =
          curves.base[hour]! +
          curves.daily[hour]! * dayStrength[hour]! * DAILY_SHAPE[hour % 24]! +
          (front > 0 ? curves.warm[hour]! : curves.cold[hour]!) * front;
        temperatureC[hour] = Math.min(maxC, Math.max(minC, free));
      }
    }
    return monthMeans(temperatureC);
  };

  for (let pass = 0; pass < PASSES_MAX; pass++) {
    const means = build();
    const ranges = meanDailyRanges(temperatureC);
    const extremes = monthExtremes(temperatureC);
    targets.forEach((target, m) => {
      base[m]! += target.meanC - means[m]!;
      steerRange(target, m, ranges[m]!, daily, warm, cold);
      const above = target.maxC - target.meanC;
      const below = target.meanC - target.minC;
      warm[m]! *= steer(above - EXTREME_MARGIN_K, extremes[m]!.max - means[m]!);
      cold[m]! *= steer(below - EXTREME_MARGIN_K, means[m]! - extremes[m]!.min);
      warm[m] = Math.min(warm[m]!, FRONT_SIZE_MAX * above);
      cold[m] = Math.min(cold[m]!, FRONT_SIZE_MAX * below);
    });
  }

  // The sizes now stand; what is left is to meet the means, which is linear and converges by itself.
  let residual = Infinity;
  let iterations = PASSES_MAX;
  while (iterations < 2 * PASSES_MAX) {
    const means = build();
    iterations++;
    residual = Math.max(...targets.map((target, m) => Math.abs(target.meanC - means[m]!)));
    if (residual <= MEAN_TOLERANCE_K) break;
    targets.forEach((target, m) => {
      base[m]! += target.meanC - means[m]!;
    });
  }
  const converged = residual <= MEAN_TOLERANCE_K;
  const reason = converged ? 'tolerance-met' : 'iteration-limit';
  const ranges = meanDailyRanges(temperatureC);
  const dailyRangeResidualK = Math.max(
    ...targets.map((target, m) => Math.abs(target.dailyRangeK - ranges[m]!)),
  );
  return { temperatureC, ending: { converged, reason, residual, iterations }, dailyRangeResidualK };
}

function steerRange(
  target: TemperatureTarget,
  m: number,
  range: number,
  daily: number[],
  warm: number[],
  cold: number[],
): void {
  const least = DAILY_SHARE_MIN * target.dailyRangeK;
  daily[m] = Math.max(least, daily[m]! + 0.7 * (target.dailyRangeK - range));
  if (daily[m]! > least || range <= target.dailyRangeK) return;
  const shrink = Math.max(0.85, target.dailyRangeK / range);
  warm[m]! *= shrink;
  cold[m]! *= shrink;
}

/** Factor for a front's size: shrink at once when an extreme is passed, grow slowly when it is not reached. */
function steer(wanted: number, actual: number): number {
  if (actual <= 0) return 1;
  const ratio = Math.max(0, wanted) / actual;
  return ratio < 1 ? Math.max(0.7, ratio) : Math.min(1.04, ratio);
}

function curve(): Float64Array {
  return new Float64Array(HOURS_PER_YEAR);
}
