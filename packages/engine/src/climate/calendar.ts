/** Hours in a climate year: 365 days, no leap day. */
export const HOURS_PER_YEAR = 8760;

/** Days of each month of a year without a leap day, January first. */
export const DAYS_PER_MONTH: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/**
 * Index of the first hour of each month in a climate year, January first, with 8760 as a thirteenth entry, so that
 * month `m` (0..11) covers the hours from `MONTH_START_HOUR[m]` up to, not including, `MONTH_START_HOUR[m + 1]`.
 */
export const MONTH_START_HOUR: readonly number[] = [
  0, 744, 1416, 2160, 2880, 3624, 4344, 5088, 5832, 6552, 7296, 8016, 8760,
];

/** English month names, January first. */
export const MONTH_NAMES: readonly string[] = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** Month 0..11 of an hour index 0..8759. Outside that range the nearest month is given. */
export function monthOfHour(hourIndex: number): number {
  let month = 0;
  while (month < 11 && hourIndex >= MONTH_START_HOUR[month + 1]!) month++;
  return month;
}

/**
 * Index in a climate year of an hour that is named by date and by the clock at its end.
 * @param month 1..12
 * @param day day of the month, 1 to its last day (29 February has no index)
 * @param hourEnding 1..24, the hour that ends then, local standard time
 * @returns 0..8759, or −1 when there is no such hour
 */
export function hourIndexOf(month: number, day: number, hourEnding: number): number {
  if (!Number.isInteger(month) || !Number.isInteger(day) || !Number.isInteger(hourEnding)) return -1;
  if (month < 1 || month > 12 || day < 1 || hourEnding < 1 || hourEnding > 24) return -1;
  if (day > DAYS_PER_MONTH[month - 1]!) return -1;
  return MONTH_START_HOUR[month - 1]! + (day - 1) * 24 + hourEnding - 1;
}

/** The hour as a reader would say it, e.g. `March 3, hour 5` for the hour that ends at 05:00. */
export function hourInWords(hourIndex: number): string {
  const month = monthOfHour(hourIndex);
  const inMonth = hourIndex - MONTH_START_HOUR[month]!;
  return `${MONTH_NAMES[month]} ${Math.floor(inMonth / 24) + 1}, hour ${(inMonth % 24) + 1}`;
}
