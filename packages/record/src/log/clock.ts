/**
 * Hybrid logical clock. A stamp is text that sorts in time order: milliseconds (base 36, 9 digits), a counter for stamps
 * within one millisecond or while the device's clock lags (base 36, 4 digits), and the device. Two devices never make
 * the same stamp. After Kulkarni et al., "Logical Physical Clocks", OPODIS 2014 (form from memory).
 */
export type ClockStamp = string;

const DEVICE = /^[a-z0-9]{4,16}$/;
/** The form of a stamp. */
export const CLOCK_STAMP = /^[0-9a-z]{9}-[0-9a-z]{4}-[a-z0-9]{4,16}$/;
const MAX_COUNTER = 36 ** 4 - 1;
const MAX_MS = 36 ** 9 - 1;

/** A stamp from a clock that runs further ahead than this does not pull our clock along [ms]. */
export const FOLLOW_LIMIT_MS = 24 * 3600 * 1000;

/** Milliseconds since 1970 that a stamp claims. */
export function stampMs(stamp: ClockStamp): number {
  return Number.parseInt(stamp.slice(0, 9), 36);
}

function write(ms: number, counter: number, device: string): ClockStamp {
  if (ms > MAX_MS) throw new RangeError(`a stamp ends with the year 5188; got ${ms} ms`);
  return `${ms.toString(36).padStart(9, '0')}-${counter.toString(36).padStart(4, '0')}-${device}`;
}

/**
 * The next stamp of a device: later than every stamp it has seen, except those from clocks that are wrong by more than a
 * day, which would carry their error into every later entry.
 * @param newestSeen the greatest stamp seen so far, or null
 * @param nowMs the device's own time
 * @throws RangeError for a device name that is not 4 to 16 lower-case letters or digits, or a time that is not one
 */
export function nextStamp(newestSeen: ClockStamp | null, nowMs: number, device: string): ClockStamp {
  if (!DEVICE.test(device)) throw new RangeError(`device must be 4 to 16 of a-z, 0-9; got "${device}"`);
  if (!Number.isInteger(nowMs) || nowMs < 0)
    throw new RangeError(`nowMs must be whole milliseconds; got ${nowMs}`);
  if (newestSeen === null) return write(nowMs, 0, device);
  const seenMs = stampMs(newestSeen);
  if (seenMs < nowMs || seenMs > nowMs + FOLLOW_LIMIT_MS) return write(nowMs, 0, device);
  const counter = Number.parseInt(newestSeen.slice(10, 14), 36) + 1;
  return counter > MAX_COUNTER ? write(seenMs + 1, 0, device) : write(seenMs, counter, device);
}
