import type { Notice } from '../numerics/notice.ts';
import { HOURS_PER_YEAR, hourInWords } from './calendar.ts';
import type { RawHours } from './hourly-rows.ts';
import { type IssueLog, report } from './read-issue.ts';
import { liquidSaturationPressurePa, stationDewPointC } from './station-dew-point.ts';

/** By how much, in percentage points, the two humidity columns may differ in an hour before it is worth a notice. */
const GAP_WORTH_TELLING = 10;

/** Dew point above dry bulb by up to this much is rounding or smoothing, K; more is a fault. No source. */
const DEW_ABOVE_DRY_MAX_K = 1;

/** From this many hours on, dew points above the dry bulb are one fault of the column. */
const COLUMN_FAULT_COUNT = 24;

/**
 * Takes the dew point as the truth about humidity and fills it from the relative humidity (over liquid water, as
 * stations report it) where the line has that only, in place.
 *
 * Why the dew point: where typical months were joined, the makers smoothed each column alone, and then the two
 * disagree in a few hours; the dew point varies slowly, so smoothing hurts it least.
 * @returns the number of hours filled
 */
export function dewPointFromRelativeHumidity(raw: RawHours): number {
  let count = 0;
  for (let hour = 0; hour < HOURS_PER_YEAR; hour++) {
    const percent = raw.relativeHumidityPercent[hour]!;
    const dryBulb = raw.temperatureC[hour]!;
    if (!Number.isNaN(raw.dewPointC[hour]!) || !(percent > 0) || Number.isNaN(dryBulb)) continue;
    const fraction = Math.min(percent, 100) / 100;
    raw.dewPointC[hour] = stationDewPointC(fraction * liquidSaturationPressurePa(dryBulb));
    count++;
  }
  return count;
}

/** Tells in how many hours relative humidity and dew point of the file contradict each other. */
export function humidityDisagreement(raw: RawHours): Notice | undefined {
  let hours = 0;
  let worst = 0;
  let worstHour = 0;
  for (let hour = 0; hour < HOURS_PER_YEAR; hour++) {
    const percent = raw.relativeHumidityPercent[hour]!;
    const fromDewPoint =
      (100 * liquidSaturationPressurePa(raw.dewPointC[hour]!)) /
      liquidSaturationPressurePa(raw.temperatureC[hour]!);
    const gap = Math.abs(percent - fromDewPoint);
    if (!(gap > GAP_WORTH_TELLING)) continue;
    hours++;
    if (gap > worst) {
      worst = gap;
      worstHour = hour;
    }
  }
  if (hours === 0) return undefined;
  return {
    code: 'humidity-columns-disagree',
    message:
      `In ${hours} hours the relative humidity of the file differs from its dew point by more than ` +
      `${GAP_WORTH_TELLING} percentage points (most on ${hourInWords(worstHour)}: ${worst.toFixed(0)} points). ` +
      'The dew point was used throughout.',
  };
}

/**
 * Lowers dew points that stand above the dry bulb by no more than 1 K to the dry bulb, in place; greater excess goes
 * to the log.
 * @returns the number of hours lowered
 */
export function lowerDewPointToDryBulb(raw: RawHours, log: IssueLog): number {
  let lowered = 0;
  const wrong: number[] = [];
  for (let hour = 0; hour < HOURS_PER_YEAR; hour++) {
    const excess = raw.dewPointC[hour]! - raw.temperatureC[hour]!;
    if (!(excess > 0)) continue;
    if (excess > DEW_ABOVE_DRY_MAX_K) {
      wrong.push(hour);
    } else {
      raw.dewPointC[hour] = raw.temperatureC[hour]!;
      lowered++;
    }
  }
  const expected = 'a dew point not above the dry bulb';
  if (wrong.length >= COLUMN_FAULT_COUNT) {
    const line = raw.lineOf[wrong[0]!]!;
    report(log, {
      line,
      found: `dew point above dry bulb in ${wrong.length} hours`,
      expected,
      message:
        `From line ${line} on the dew point is above the dry bulb in ${wrong.length} hours. ` +
        'The columns may be swapped or in different units.',
    });
    return lowered;
  }
  for (const hour of wrong) {
    const line = raw.lineOf[hour]!;
    const pair = `dew point ${raw.dewPointC[hour]!.toFixed(1)} °C, dry bulb ${raw.temperatureC[hour]!.toFixed(1)} °C`;
    report(log, {
      line,
      found: pair,
      expected,
      message: `${line > 0 ? `Line ${line}` : hourInWords(hour)}: ${pair}. Air cannot hold more vapor than at saturation.`,
    });
  }
  return lowered;
}
