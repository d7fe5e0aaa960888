import type { season } from '@undercroft/engine';
import type { FailureResult } from './season-assessment.ts';

/** A fortnight from the eighth of July, local standard time: hours of the year. */
const FROM_HOUR = 4344 + 7 * 24;
const DAYS = 14;
const FROM_DAY = 'July 8';
/** The air counts as back when it is within this of what it would have been. */
const BACK_WITHIN = 0.02;

/** The failure that cases are run with. */
export function fortnight(what: season.SeasonFailure['what']): season.SeasonFailure {
  return { what, fromHour: FROM_HOUR, toHour: FROM_HOUR + 24 * DAYS };
}

/**
 * How the space bore the failure, hour by hour against the same year without it.
 * @param failed hourly relative humidity with the failure
 * @param usual the same without
 */
export function failureResult(
  what: season.SeasonFailure['what'],
  failed: ArrayLike<number>,
  usual: ArrayLike<number>,
): FailureResult {
  const end = FROM_HOUR + 24 * DAYS;
  let highest = FROM_HOUR;
  for (let hour = FROM_HOUR; hour < end; hour++) if (failed[hour] > failed[highest]) highest = hour;
  const until = (limit: number): number | undefined => {
    for (let hour = FROM_HOUR; hour < end; hour++) if (failed[hour] > limit) return hour - FROM_HOUR;
    return undefined;
  };
  const [h60, h70, h80] = [until(0.6), until(0.7), until(0.8)];
  let back: number | undefined;
  for (let hour = end; hour < usual.length && back === undefined; hour++) {
    if (failed[hour] - usual[hour] <= BACK_WITHIN) back = hour;
  }
  return {
    what,
    from: FROM_DAY,
    days: DAYS,
    startRelativeHumidity: failed[FROM_HOUR],
    highestRelativeHumidity: failed[highest],
    usualRelativeHumidity: usual[highest],
    ...(h60 === undefined ? {} : { hoursUntilAbove60: h60 }),
    ...(h70 === undefined ? {} : { hoursUntilAbove70: h70 }),
    ...(h80 === undefined ? {} : { hoursUntilAbove80: h80 }),
    ...(back === undefined ? {} : { daysToRecover: (back - end) / 24 }),
  };
}
