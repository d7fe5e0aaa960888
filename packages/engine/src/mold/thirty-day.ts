import type { Notice } from '../numerics/notice.ts';
import { requireSurfaceSeries } from './surface-series.ts';

const WINDOW_HOURS = 30 * 24;
/** Limit of the 30-day mean humidity [fraction]; the mean must stay below it. */
const LIMIT = 0.8;
/** Temperatures of the 30-day mean within which the limit counts [°C]. */
const COUNTS_FROM_C = 5;
const COUNTS_TO_C = 40;
/** Rounding of a running sum over some years of hours. */
const ROUNDING = 1e-9;

/** Outcome of the older criterion. */
export interface ThirtyDayResult {
  /** Null when the series is shorter than 30 days or never warm enough for the criterion to speak. */
  readonly met: boolean | null;
  /** Largest 30-day mean humidity within 5..40 °C [fraction]; null when there was none. */
  readonly largestMeanRelativeHumidity: number | null;
  /** Zero-based hour that ends the window with the largest mean; null when there was none. */
  readonly hourOfLargest: number | null;
  readonly notices: readonly Notice[];
}

/**
 * The criterion that ASHRAE 160-2009 had before the mold index: at the surface, the 30-day running mean of relative
 * humidity stays below 80 % whenever the 30-day running mean temperature is 5 to 40 °C, ends included.
 *
 * Only full windows count. Hourly values without gaps.
 *
 * @param temperatureC hourly surface temperature [°C]
 * @param relativeHumidity hourly humidity at the surface [fraction 0..1]
 * @throws EngineError `bad-input` for series of different or no length; `not-finite`, `out-of-range` naming the hour
 * @source ASHRAE 160-2009 as described in ASTM STP 1599, 2017 (`moldSources.standard160Of2009`)
 */
export function thirtyDayCriterion(
  temperatureC: ArrayLike<number>,
  relativeHumidity: ArrayLike<number>,
): ThirtyDayResult {
  requireSurfaceSeries(temperatureC, relativeHumidity);
  const hours = temperatureC.length;
  let sumC = 0;
  let sumHumidity = 0;
  let largest = Number.NEGATIVE_INFINITY;
  let hourOfLargest = -1;
  for (let i = 0; i < hours; i++) {
    sumC += temperatureC[i]!;
    sumHumidity += relativeHumidity[i]!;
    if (i >= WINDOW_HOURS) {
      sumC -= temperatureC[i - WINDOW_HOURS]!;
      sumHumidity -= relativeHumidity[i - WINDOW_HOURS]!;
    }
    if (i < WINDOW_HOURS - 1) continue;
    const meanC = sumC / WINDOW_HOURS;
    if (meanC < COUNTS_FROM_C - ROUNDING || meanC > COUNTS_TO_C + ROUNDING) continue;
    const mean = sumHumidity / WINDOW_HOURS;
    if (mean > largest) {
      largest = mean;
      hourOfLargest = i;
    }
  }
  if (hourOfLargest >= 0) {
    const met = largest < LIMIT - ROUNDING;
    return { met, largestMeanRelativeHumidity: largest, hourOfLargest, notices: [] };
  }
  const notice =
    hours < WINDOW_HOURS
      ? {
          code: 'series-too-short',
          message: `The 30-day criterion needs ${WINDOW_HOURS} hours; the series has ${hours}.`,
        }
      : {
          code: 'outside-range',
          message: `No 30-day mean temperature lies from ${COUNTS_FROM_C} to ${COUNTS_TO_C} °C; the criterion says nothing.`,
        };
  return { met: null, largestMeanRelativeHumidity: null, hourOfLargest: null, notices: [notice] };
}
