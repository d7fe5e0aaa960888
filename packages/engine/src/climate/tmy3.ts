import { assembleYear } from './assemble-year.ts';
import { type RowClock, readHourlyRows } from './hourly-rows.ts';
import { readPlace } from './place.ts';
import { QUANTITIES, type QuantityKey } from './quantities.ts';
import { excerpt, failed, type IssueLog, issueLog, type ReadResult, report } from './read-issue.ts';
import { fieldText, type RowFields } from './row-fields.ts';
import { linesOf, quotedFields } from './text-lines.ts';
import type { ColumnOf } from './weather-column.ts';

interface NamedColumn {
  readonly key: QuantityKey;
  /** Name in line 2, without the unit. */
  readonly name: string;
  readonly unit: string;
  readonly factor: number;
  readonly missing: readonly number[];
}

const MISSING = [-9900, -9999];

/**
 * Columns by the names of line 2, with the marks for "missing": −9900 throughout, and the nines of older releases where
 * they cannot be a value (a pressure of 999 mbar and a direction of 99° are weather).
 */
const NAMED: readonly NamedColumn[] = [
  { key: 'temperatureC', name: 'Dry-bulb', unit: 'C', factor: 1, missing: [...MISSING, 99, 99.9, 999, 9999] },
  { key: 'dewPointC', name: 'Dew-point', unit: 'C', factor: 1, missing: [...MISSING, 99, 99.9, 999, 9999] },
  { key: 'relativeHumidityPercent', name: 'RHum', unit: '%', factor: 1, missing: [...MISSING, 999] },
  { key: 'pressurePa', name: 'Pressure', unit: 'mbar', factor: 100, missing: [...MISSING, 9999] },
  { key: 'globalHorizontalWPerM2', name: 'GHI', unit: 'W/m^2', factor: 1, missing: [...MISSING, 9999] },
  { key: 'windFromDeg', name: 'Wdir', unit: 'degrees', factor: 1, missing: [...MISSING, 999] },
  { key: 'windSpeedMPerS', name: 'Wspd', unit: 'm/s', factor: 1, missing: [...MISSING, 99, 99.9, 999] },
];

const FIRST_ROW = 2;

/**
 * Reads an hourly typical-year file in the TMY3 layout: a line with station and place, a line of column names with
 * units, then one line per hour with date (MM/DD/YYYY) and time (01:00 to 24:00, local standard time, hour ending).
 *
 * Treats humidity, gaps, February 29, the calendar year and faults as `readEpw` does. Rain is not read: its source
 * flags mark most values as missing or doubtful. Never throws, whatever the text.
 * Source: Wilcox and Marion, Users Manual for TMY3 Data Sets, NREL/TP-581-43156 (2008), from memory; layout confirmed
 * on files.
 * @param text the whole file, already decompressed and decoded
 */
export function readTmy3(text: string): ReadResult {
  const log = issueLog();
  const lines = linesOf(text);
  const station = quotedFields(lines[0] ?? '');
  const layout = { utcOffset: 3, latitude: 4, longitude: 5, elevation: 6 };
  const name = [station[1], station[2]].filter((part) => part !== undefined && part !== '').join(', ');
  if (station.length !== 7) {
    report(log, {
      line: 1,
      found: excerpt(lines[0] ?? ''),
      expected: 'station,"name",state,time zone,latitude,longitude,elevation',
      message: `Line 1 has ${station.length} fields; it needs 7, from the station number to the elevation.`,
    });
  }
  const place = station.length !== 7 ? undefined : readPlace(excerpt(name), station, layout, 1, log);
  const header = quotedFields(lines[1] ?? '');
  const columns = columnsOf(header, log);
  if (columns === undefined) return failed(log);
  const dayFirst = dayFirstLine(lines);
  if (dayFirst !== undefined) {
    report(log, dayFirst);
    return failed(log);
  }
  const raw = readHourlyRows(
    lines,
    FIRST_ROW,
    { format: 'TMY3', columnCount: header.length, columns, clock: clockOf },
    log,
  );
  return assembleYear(
    raw,
    place,
    `Hourly typical year in TMY3 layout, station ${excerpt(station[0] ?? '')}, TMY3`,
    log,
  );
}

/** Finds the columns by name; a column that is not there or is in another unit is reported. */
function columnsOf(header: readonly string[], log: IssueLog): ColumnOf[] | undefined {
  const before = log.count;
  const columns = NAMED.flatMap((named): ColumnOf[] => {
    const index = header.findIndex((title) => title.startsWith(`${named.name} (`));
    const title = `${named.name} (${named.unit})`;
    const { name } = QUANTITIES[named.key];
    if (index < 0) {
      report(log, {
        line: 2,
        found: excerpt(header.join(',')),
        expected: title,
        message: `Line 2 names no column "${title}" for the ${name}.`,
      });
      return [];
    }
    if (header[index] !== title) {
      report(log, {
        line: 2,
        column: index + 1,
        found: excerpt(header[index]!),
        expected: title,
        message: `Line 2, column ${index + 1}: the ${name} is headed "${excerpt(header[index]!)}"; it must be in ${named.unit}. Convert the column.`,
      });
      return [];
    }
    return [{ key: named.key, index, unit: named.unit, factor: named.factor, missing: named.missing }];
  });
  return log.count > before ? undefined : columns;
}

const DATE = /^\s*(\d{1,2})\/(\d{1,2})\/(\d{4})\s*$/;

/** A month above 12 with a day that could be a month, in many rows, means that the dates are day first. */
function dayFirstLine(lines: readonly string[]): Parameters<typeof report>[1] | undefined {
  let swapped = 0;
  let line = 0;
  for (let i = FIRST_ROW; i < lines.length && swapped < 24; i++) {
    const text = lines[i]!;
    const date = DATE.exec(text.slice(0, Math.max(0, text.indexOf(','))));
    if (date === null || Number(date[1]) <= 12 || Number(date[2]) > 12) continue;
    if (swapped === 0) line = i + 1;
    swapped++;
  }
  if (swapped < 24) return undefined;
  const found = excerpt(lines[line - 1]!.slice(0, 16));
  return {
    line,
    column: 1,
    found,
    expected: 'dates as MM/DD/YYYY',
    message: `Line ${line}: the date ${found.split(',')[0]} is written day first. Dates must be month first, MM/DD/YYYY.`,
  };
}

const TIME = /^\s*(\d{1,2}):(\d{2})\s*$/;

function clockOf(row: RowFields, line: number, log: IssueLog): RowClock | undefined {
  const dateText = fieldText(row, 0);
  const timeText = fieldText(row, 1);
  const date = DATE.exec(dateText);
  const time = TIME.exec(timeText);
  if (date === null) {
    report(log, {
      line,
      column: 1,
      found: excerpt(dateText),
      expected: 'a date as MM/DD/YYYY',
      message: `Line ${line}: "${excerpt(dateText)}" is not a date as MM/DD/YYYY.`,
    });
    return undefined;
  }
  if (time === null || time[2] !== '00' || time[1] === '00' || Number(time[1]) > 24) {
    report(log, {
      line,
      column: 2,
      found: excerpt(timeText),
      expected: 'a full hour from 01:00 to 24:00',
      message: `Line ${line}: "${excerpt(timeText)}" is not a full hour from 01:00 to 24:00 (hours are named by their end).`,
    });
    return undefined;
  }
  const year = Number(date[3]);
  return {
    year: year >= 1900 && year <= 2100 ? year : Number.NaN,
    month: Number(date[1]),
    day: Number(date[2]),
    hour: Number(time[1]),
  };
}
