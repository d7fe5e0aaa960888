import { assembleYear } from './assemble-year.ts';
import { type RowClock, readHourlyRows } from './hourly-rows.ts';
import { readPlace } from './place.ts';
import { excerpt, failed, type IssueLog, issueLog, type ReadResult, report } from './read-issue.ts';
import { fieldNumber, type RowFields } from './row-fields.ts';
import { linesOf, quotedFields } from './text-lines.ts';
import type { ColumnOf } from './weather-column.ts';
import type { Place } from './year.ts';

/** Columns of an hourly row in the full format, and in files that end before the rain columns. */
const COLUMNS_FULL = 35;
const COLUMNS_WITHOUT_RAIN = 32;

/** Lines before the first hour. */
const HEAD_LINES = 8;

const OLD_MISSING = [-9999];

/** Positions and marks for "missing" as the format's data dictionary gives them, and −9999, which occurs too. */
const COLUMNS: readonly ColumnOf[] = [
  { key: 'temperatureC', index: 6, unit: '°C', factor: 1, missing: [99.9, ...OLD_MISSING] },
  { key: 'dewPointC', index: 7, unit: '°C', factor: 1, missing: [99.9, ...OLD_MISSING] },
  { key: 'relativeHumidityPercent', index: 8, unit: '%', factor: 1, missing: [999, ...OLD_MISSING] },
  { key: 'pressurePa', index: 9, unit: 'Pa', factor: 1, missing: [999_999, ...OLD_MISSING] },
  { key: 'globalHorizontalWPerM2', index: 13, unit: 'Wh/m²', factor: 1, missing: [9999, ...OLD_MISSING] },
  { key: 'windFromDeg', index: 20, unit: 'degrees', factor: 1, missing: [999, ...OLD_MISSING] },
  { key: 'windSpeedMPerS', index: 21, unit: 'm/s', factor: 1, missing: [999, 99.9, ...OLD_MISSING] },
];

/**
 * Reads an hourly weather file in the EPW layout: eight head lines, then one line per hour with date, dry bulb (°C),
 * dew point (°C), relative humidity (%), pressure (Pa), radiation (Wh/m²), wind.
 *
 * The dew point is taken as the truth about humidity (see `dewPointFromRelativeHumidity`). Hours are local standard
 * time, 1 to 24. The year column is not used to sort. Rain is not read: typical-year files carry no usable rain.
 * February 29 is left out with a notice. Gaps of up to six hours are bridged and reported; anything else that is wrong
 * is an issue with its line, and there is no year. Never throws, whatever the text.
 * Source: weather file (EPW) data dictionary of the US Department of Energy, from memory; layout confirmed on the
 * files of the NREL typical years.
 * @param text the whole file, already decompressed and decoded
 */
export function readEpw(text: string): ReadResult {
  const log = issueLog();
  const lines = linesOf(text);
  const first = firstRow(lines);
  const head = lines.slice(0, first);
  const { place, station } = readLocation(head, log);
  checkDataPeriods(head, log);
  if (log.count > 0 && first === lines.length) return failed(log);
  const layout = {
    format: 'EPW',
    columnCount: columnCountOf(lines, first),
    columns: COLUMNS,
    clock: clockOf(),
  };
  const raw = readHourlyRows(lines, first, layout, log);
  return assembleYear(raw, place, `Hourly weather file in EPW layout, station ${station}`, log);
}

/** Index of the first line that starts with a digit, at most one past the head; head lines start with a keyword. */
function firstRow(lines: readonly string[]): number {
  let i = 0;
  while (i < lines.length && i < HEAD_LINES && !/^\s*\d/.test(lines[i]!)) i++;
  return i;
}

/** 35, or 32 where the file as a whole ends before the rain columns. */
function columnCountOf(lines: readonly string[], first: number): number {
  let short = 0;
  const sample = lines.slice(first, first + 25);
  for (const line of sample) if (line.split(',').length === COLUMNS_WITHOUT_RAIN) short++;
  return short > sample.length / 2 ? COLUMNS_WITHOUT_RAIN : COLUMNS_FULL;
}

function readLocation(head: readonly string[], log: IssueLog): { place: Place | undefined; station: string } {
  const index = head.findIndex((line) => /^\s*LOCATION\b/i.test(line));
  const expected = 'LOCATION,city,state,country,source,station,latitude,longitude,time zone,elevation';
  if (index < 0) {
    report(log, {
      line: 1,
      found: excerpt(head[0] ?? ''),
      expected,
      message:
        'The head line that begins with LOCATION is missing, so the place is unknown. Get the complete file.',
    });
    return { place: undefined, station: '' };
  }
  const fields = quotedFields(head[index]!);
  const line = index + 1;
  if (fields.length < 10) {
    report(log, {
      line,
      found: `${fields.length} fields`,
      expected,
      message: `Line ${line}: LOCATION has ${fields.length} fields; it needs 10, up to the elevation.`,
    });
    return { place: undefined, station: '' };
  }
  const name = [fields[1], fields[2]].filter((part) => part !== '' && part !== '-').join(', ');
  const layout = { latitude: 6, longitude: 7, utcOffset: 8, elevation: 9 };
  const place = readPlace(excerpt(name), fields, layout, line, log);
  return { place, station: excerpt(`${fields[5]}, ${fields[4]}`) };
}

/** The DATA PERIODS line must stand before the first hour and promise one record per hour. */
function checkDataPeriods(head: readonly string[], log: IssueLog): void {
  const index = head.findIndex((line) => /^\s*DATA PERIODS\b/i.test(line));
  const expected = 'DATA PERIODS,1,1,... : one period, one record per hour';
  if (index < 0) {
    report(log, {
      line: Math.max(1, head.length),
      found: excerpt(head[head.length - 1] ?? ''),
      expected,
      message: `The head line DATA PERIODS, which says how many records an hour has, is not among the first ${HEAD_LINES} lines.`,
    });
    return;
  }
  const fields = quotedFields(head[index]!);
  if (Number(fields[2]) === 1) return;
  report(log, {
    line: index + 1,
    column: 3,
    found: excerpt(fields[2] ?? ''),
    expected,
    message: `Line ${index + 1}: the file has "${excerpt(fields[2] ?? '')}" records per hour; only hourly files can be read.`,
  });
}

/** Reads date and hour of a row, and tells once when the file counts its hours from 0. */
function clockOf(): (row: RowFields, line: number, log: IssueLog) => RowClock | undefined {
  let zeroHourTold = false;
  return (row, line, log) => {
    const year = fieldNumber(row, 0);
    const month = fieldNumber(row, 1);
    const day = fieldNumber(row, 2);
    const hour = fieldNumber(row, 3);
    if (!Number.isInteger(month) || !Number.isInteger(day) || !Number.isInteger(hour)) {
      const found = excerpt(row.text.slice(0, row.ends[3]!));
      const expected = 'year,month,day,hour in whole numbers';
      report(log, { line, found, expected, message: `Line ${line}: "${found}" is not a date and hour.` });
      return undefined;
    }
    if (hour !== 0) return { year: year >= 1900 && year <= 2100 ? year : Number.NaN, month, day, hour };
    if (zeroHourTold) {
      log.count++;
      return undefined;
    }
    zeroHourTold = true;
    report(log, {
      line,
      column: 4,
      found: 'hour 0',
      expected: 'hours 1 to 24, named by their end',
      message: `Line ${line}: hour 0. The file counts hours from 0 to 23; it must count from 1 (ending at 01:00) to 24.`,
    });
    return undefined;
  };
}
