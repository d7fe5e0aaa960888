import { HOURS_PER_YEAR, hourInWords } from './calendar.ts';
import type { RawHours } from './hourly-rows.ts';
import { QUANTITIES, type QuantityKey } from './quantities.ts';
import { type IssueLog, report } from './read-issue.ts';
import type { FilledGap } from './year.ts';

/** The longest run of missing hours that a straight line may bridge. Common practice, no source. */
const LONGEST_GAP_H = 6;

/** Share of a quantity's hours that may be filled in before the file no longer is a record of weather (5 %). */
const FILLED_HOURS_MAX = 438;

const NEEDED: readonly QuantityKey[] = [
  'temperatureC',
  'dewPointC',
  'pressurePa',
  'windSpeedMPerS',
  'windFromDeg',
  'globalHorizontalWPerM2',
];

/**
 * Fills runs of up to six missing hours on a straight line between their neighbors (the wind direction the shorter way
 * round), in place. The year is a ring: December 31 is the neighbor of January 1. Longer runs, and quantities with
 * more than 438 hours missing, go to the log with their first and last hour and the lines around them.
 * @returns what was filled
 */
export function fillGaps(raw: RawHours, log: IssueLog): FilledGap[] {
  const filled: FilledGap[] = [];
  forEachRun(
    (hour) => raw.lineOf[hour] === 0,
    (first, length) => {
      if (length > LONGEST_GAP_H) reportMissingRows(raw, first, length, log);
      else filled.push({ quantity: 'whole hours', firstHour: first, hours: length });
    },
  );
  keepDirectionInCalm(raw);
  for (const key of NEEDED) {
    if (raw.inOtherUnit.has(key)) continue;
    const series = raw[key];
    const { name } = QUANTITIES[key];
    let count = 0;
    forEachRun(
      (hour) => Number.isNaN(series[hour]!),
      (first, length) => {
        const rows = rowsWithin(raw, first, length);
        count += length;
        if (length > LONGEST_GAP_H) {
          if (rows > 0) reportMissingValues(raw, name, first, length, log);
          return;
        }
        bridge(series, first, length, key === 'windFromDeg');
        if (rows > 0) filled.push({ quantity: name, firstHour: first, hours: length });
      },
    );
    if (count > FILLED_HOURS_MAX && log.count === 0) {
      report(log, {
        line: 0,
        found: `${count} hours without ${name}`,
        expected: `at most ${FILLED_HOURS_MAX} of ${HOURS_PER_YEAR} hours`,
        message:
          `${name} is missing in ${count} hours, in many short gaps. That is more than 5 % of the year; ` +
          'use a file with complete hours.',
      });
    }
  }
  return filled;
}

/** Visits every run of hours for which `isMissing` holds, on the ring of the year. */
function forEachRun(
  isMissing: (hour: number) => boolean,
  visit: (first: number, length: number) => void,
): void {
  let start = 0;
  while (start < HOURS_PER_YEAR && isMissing(start)) start++;
  if (start === HOURS_PER_YEAR) {
    visit(0, HOURS_PER_YEAR);
    return;
  }
  let runFirst = -1;
  for (let step = 1; step <= HOURS_PER_YEAR; step++) {
    const hour = (start + step) % HOURS_PER_YEAR;
    if (isMissing(hour)) {
      if (runFirst < 0) runFirst = hour;
    } else if (runFirst >= 0) {
      visit(runFirst, (hour - runFirst + HOURS_PER_YEAR) % HOURS_PER_YEAR);
      runFirst = -1;
    }
  }
}

/** A calm hour has no direction and some files mark it missing; the vane stays where it was. */
function keepDirectionInCalm(raw: RawHours): void {
  let last = 0;
  for (let hour = HOURS_PER_YEAR - 1; hour >= 0; hour--) {
    if (!Number.isNaN(raw.windFromDeg[hour]!)) {
      last = raw.windFromDeg[hour]!;
      break;
    }
  }
  for (let hour = 0; hour < HOURS_PER_YEAR; hour++) {
    if (!Number.isNaN(raw.windFromDeg[hour]!)) last = raw.windFromDeg[hour]!;
    else if (raw.windSpeedMPerS[hour] === 0) raw.windFromDeg[hour] = last;
  }
}

function bridge(series: Float64Array, first: number, length: number, circular: boolean): void {
  const before = series[(first - 1 + HOURS_PER_YEAR) % HOURS_PER_YEAR]!;
  const after = series[(first + length) % HOURS_PER_YEAR]!;
  let change = after - before;
  if (circular) change = ((((change + 180) % 360) + 360) % 360) - 180;
  for (let k = 0; k < length; k++) {
    const value = before + (change * (k + 1)) / (length + 1);
    series[(first + k) % HOURS_PER_YEAR] = circular ? (value + 360) % 360 : value;
  }
}

function rowsWithin(raw: RawHours, first: number, length: number): number {
  let rows = 0;
  for (let k = 0; k < length; k++) if (raw.lineOf[(first + k) % HOURS_PER_YEAR] !== 0) rows++;
  return rows;
}

function lastHourOf(first: number, length: number): number {
  return (first + length - 1) % HOURS_PER_YEAR;
}

function spanInWords(first: number, length: number): string {
  return `${hourInWords(first)} to ${hourInWords(lastHourOf(first, length))}`;
}

function reportMissingRows(raw: RawHours, first: number, length: number, log: IssueLog): void {
  const expected = 'all 8760 hours of a year, January 1 hour 1 to December 31 hour 24';
  const span = spanInWords(first, length);
  if (length === HOURS_PER_YEAR) {
    report(log, {
      line: raw.lastLine,
      found: 'no hour of weather',
      expected,
      message: 'The file holds no readable hour of weather.',
    });
    return;
  }
  const before = raw.lineOf[(first - 1 + HOURS_PER_YEAR) % HOURS_PER_YEAR]!;
  const after = raw.lineOf[(first + length) % HOURS_PER_YEAR]!;
  const where =
    before === raw.lastLine
      ? `The file ends at line ${before}`
      : `Between line ${before} and line ${after} hours are missing`;
  report(log, {
    line: before,
    found: `${length} hours missing: ${span}`,
    expected,
    message:
      `${where}: ${length} hours, ${span}, are not there. ` +
      `Gaps of up to ${LONGEST_GAP_H} hours are filled; this one is longer. Get the complete file.`,
  });
}

function reportMissingValues(
  raw: RawHours,
  name: string,
  first: number,
  length: number,
  log: IssueLog,
): void {
  let firstLine = 0;
  let lastLine = 0;
  for (let k = 0; k < length; k++) {
    const line = raw.lineOf[(first + k) % HOURS_PER_YEAR]!;
    if (line === 0) continue;
    if (firstLine === 0) firstLine = line;
    lastLine = line;
  }
  report(log, {
    line: firstLine,
    found: `${length} hours without ${name}`,
    expected: `${name} in every hour, or gaps of at most ${LONGEST_GAP_H} hours`,
    message:
      `Lines ${firstLine} to ${lastLine}: ${name} is missing for ${length} hours, ` +
      `${spanInWords(first, length)}. Gaps of up to ${LONGEST_GAP_H} hours are filled; this one is longer.`,
  });
}
