import type { Ending } from '../../numerics/solution.ts';
import { humidityRatioFromVaporPressure } from '../../psychrometrics/humidity-ratio.ts';
import { logSaturationPressureSlope } from '../../psychrometrics/saturation-pressure.ts';
import { HOURS_PER_YEAR } from '../calendar.ts';
import { type ClimateMonth, monthMeans } from '../monthly.ts';
import { liquidSaturationPressurePa } from '../station-dew-point.ts';
import { spreadOverYear } from './month-curve.ts';

/** Monthly mean humidity ratios must be met to this, kg/kg: twenty times finer than the 0.1 g/kg that is promised. */
const TOLERANCE_KG_PER_KG = 5e-6;

const PASSES_MAX = 90;

/** Passes in which the swing is steered; then it stands and only the means are met. */
const SWING_PASSES = 30;

/** Limits of the swing of the dew point with the weather, K either way. */
const SWING_MIN_K = 0.2;
const SWING_MAX_K = 20;

/**
 * Width of the bend near saturation, K. Chosen so that the hours above 80 % and above 95 % relative humidity come near to
 * those of the hourly files at the built-in stations (above 80 % within 15 % at the humid ones; dry places get too few).
 */
const BEND_K = 2.2;

/** Highest mean dew point above the mean dry bulb that is tried, K; with the cap at saturation more changes nothing. */
const CENTER_ABOVE_MEAN_K = 15;

/**
 * Hourly station dew point (over liquid water), °C, never above the dry bulb: a yearly course and a swing with the
 * weather. The course is corrected until the monthly mean humidity ratios are met; the swing until the mean dew points
 * agree as well, because mean humidity ratio and mean dew point together say how much the dew point varies. The
 * humidity ratio comes first; mean dew points are met to 0.1 K in most months and to 2 K in the coldest.
 * @param moist passing humidity without a unit, about −1..1, one value per hour
 */
export function synthesizeDewPoint(
  months: readonly ClimateMonth[],
  temperatureC: Float64Array,
  pressurePa: Float64Array,
  moist: Float64Array,
): { dewPointC: Float64Array; ending: Ending } {
  const center = months.map((month) => month.dewPointMeanC);
  const swing = months.map(() => 6);
  const centerCurve = new Float64Array(HOURS_PER_YEAR);
  const swingCurve = new Float64Array(HOURS_PER_YEAR);
  const dewPointC = new Float64Array(HOURS_PER_YEAR);
  const humidityRatio = new Float64Array(HOURS_PER_YEAR);

  let residual = Infinity;
  let iterations = 0;
  while (iterations < PASSES_MAX) {
    spreadOverYear(center, centerCurve);
    spreadOverYear(swing, swingCurve);
    for (let hour = 0; hour < HOURS_PER_YEAR; hour++) {
      const free = centerCurve[hour]! + swingCurve[hour]! * moist[hour]!;
      const dewPoint = temperatureC[hour]! - depression(temperatureC[hour]! - free);
      dewPointC[hour] = dewPoint;
      humidityRatio[hour] = humidityRatioFromVaporPressure(
        liquidSaturationPressurePa(dewPoint),
        pressurePa[hour]!,
      );
    }
    iterations++;
    const ratios = monthMeans(humidityRatio);
    const dewPoints = monthMeans(dewPointC);
    residual = Math.max(...months.map((month, m) => Math.abs(month.humidityRatioMean - ratios[m]!)));
    if (residual <= TOLERANCE_KG_PER_KG && iterations >= SWING_PASSES) break;
    months.forEach((month, m) => {
      if (iterations < SWING_PASSES) {
        const wanted = spreadOf(month, month.dewPointMeanC, month.humidityRatioMean);
        swing[m] = steeredSwing(swing[m]!, wanted, spreadOf(month, dewPoints[m]!, ratios[m]!));
      }
      const slope = logSaturationPressureSlope(dewPoints[m]!, false) * ratios[m]!;
      const step = (month.humidityRatioMean - ratios[m]!) / slope;
      center[m] = Math.min(center[m]! + clamp(step, -4, 4), month.temperatureMeanC + CENTER_ABOVE_MEAN_K);
    });
  }
  const converged = residual <= TOLERANCE_KG_PER_KG;
  const reason = converged ? 'tolerance-met' : 'iteration-limit';
  return { dewPointC, ending: { converged, reason, residual, iterations } };
}

/** How far a mean humidity ratio lies above that of the mean dew point, as a logarithm; grows with the square of the swing. */
function spreadOf(month: ClimateMonth, dewPointMeanC: number, humidityRatioMean: number): number {
  const atMean = humidityRatioFromVaporPressure(liquidSaturationPressurePa(dewPointMeanC), month.pressurePa);
  return Math.log(humidityRatioMean / atMean);
}

function steeredSwing(swing: number, wanted: number, actual: number): number {
  const ratio = Math.sqrt(Math.max(wanted, 1e-5) / Math.max(actual, 1e-5));
  return clamp(swing * clamp(ratio, 0.85, 1.18), SWING_MIN_K, SWING_MAX_K);
}

/**
 * Dry bulb minus dew point, K, never below zero: what the weather would make it where that is a few kelvin, and bending
 * toward zero instead of below it, as the dew point does on a clear night.
 */
function depression(free: number): number {
  const x = free / BEND_K;
  return x > 15 ? free : BEND_K * Math.log1p(Math.exp(x));
}

function clamp(value: number, min: number, max: number): number {
  return Math.min(max, Math.max(min, value));
}
