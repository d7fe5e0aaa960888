import { HOURS_PER_YEAR, hourIndexOf } from './calendar.ts';
import type { QuantityKey } from './quantities.ts';
import { excerpt, type IssueLog, report } from './read-issue.ts';
import { cutRow, type RowFields, rowFields } from './row-fields.ts';
import { type ColumnOf, columnInWork, readField, reportFaults } from './weather-column.ts';

/** Date and hour of a row. */
export interface RowClock {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  /** 1..24 */
  readonly hour: number;
}

/** How the rows of a format are read. */
export interface RowLayout {
  readonly format: string;
  readonly columnCount: number;
  readonly columns: readonly ColumnOf[];
  /** Date and hour of a row, or an issue in the log and nothing. Calendar limits are checked by the caller. */
  readonly clock: (row: RowFields, line: number, log: IssueLog) => RowClock | undefined;
}

/** What the rows of a file gave, before repairs. NaN is missing. */
export interface RawHours extends Readonly<Record<QuantityKey, Float64Array>> {
  /** Line of each hour, first line 1; 0 where the file has no row for the hour. */
  readonly lineOf: Int32Array;
  /** Last line with a row. */
  readonly lastLine: number;
  readonly firstYear: number;
  readonly lastYear: number;
  readonly leapDayHours: number;
  /** How often the hour went back from one row to the next. */
  readonly backwardSteps: number;
  /** Columns that as a whole are in another unit; their values are not there and are not missed. */
  readonly inOtherUnit: ReadonlySet<QuantityKey>;
}

/**
 * Reads the hourly rows of a weather file. Rows may stand in any order; the calendar year of a row is only recorded,
 * because in a typical year it jumps from month to month. Rows of February 29 are counted and left out. Every fault
 * goes to the log.
 * @param lines all lines of the file
 * @param first index of the first row in `lines`
 */
export function readHourlyRows(
  lines: readonly string[],
  first: number,
  layout: RowLayout,
  log: IssueLog,
): RawHours {
  const columns = layout.columns.map(columnInWork);
  const row = rowFields();
  const lineOf = new Int32Array(HOURS_PER_YEAR);
  let lastLine = first;
  let firstYear = Infinity;
  let lastYear = -Infinity;
  let leapDayHours = 0;
  let backwardSteps = 0;
  let previousHour = -1;

  for (let i = first; i < lines.length; i++) {
    const text = lines[i]!;
    if (text.length < 40 && text.trim() === '') continue;
    const line = i + 1;
    lastLine = line;
    cutRow(row, text);
    if (row.count !== layout.columnCount) {
      reportColumnCount(text, row.count, line, i, lines, layout, log);
      continue;
    }
    const clock = layout.clock(row, line, log);
    if (clock === undefined) continue;
    if (clock.month === 2 && clock.day === 29 && clock.hour >= 1 && clock.hour <= 24) {
      leapDayHours++;
      continue;
    }
    const hour = hourIndexOf(clock.month, clock.day, clock.hour);
    if (hour < 0) {
      const found = `month ${clock.month}, day ${clock.day}, hour ${clock.hour}`;
      const expected = 'a date of the calendar and an hour from 1 to 24';
      report(log, { line, found, expected, message: `Line ${line}: there is no ${found}.` });
      continue;
    }
    if (lineOf[hour] !== 0) {
      report(log, {
        line,
        found: excerpt(text.slice(0, row.ends[4]!)),
        expected: 'each hour of the year once',
        message: `Line ${line}: the same hour already stands in line ${lineOf[hour]}. Remove one of them.`,
      });
      continue;
    }
    lineOf[hour] = line;
    if (hour < previousHour) backwardSteps++;
    previousHour = hour;
    if (clock.year < firstYear) firstYear = clock.year;
    if (clock.year > lastYear) lastYear = clock.year;
    for (let c = 0; c < columns.length; c++) readField(row, columns[c]!, hour, line, log);
  }

  const inOtherUnit = new Set<QuantityKey>();
  for (const work of columns) {
    if (reportFaults(work, log) === 'unit') inOtherUnit.add(work.column.key);
  }
  const byKey = Object.fromEntries(columns.map(({ column, values }) => [column.key, values]));
  return {
    ...(byKey as Record<QuantityKey, Float64Array>),
    lineOf,
    lastLine,
    firstYear,
    lastYear,
    leapDayHours,
    backwardSteps,
    inOtherUnit,
  };
}

function reportColumnCount(
  text: string,
  count: number,
  line: number,
  index: number,
  lines: readonly string[],
  layout: RowLayout,
  log: IssueLog,
): void {
  const isLast = lines.slice(index + 1, index + 4).every((rest) => rest.trim() === '');
  const hint =
    count === 1 && text.includes(';')
      ? ' The columns seem to be separated by semicolons; save the file with commas and decimal points.'
      : isLast && count < layout.columnCount
        ? ' It is the last line: the file seems to be cut off.'
        : '';
  report(log, {
    line,
    found: `${count} columns`,
    expected: `${layout.columnCount} columns`,
    message: `Line ${line} has ${count} columns; an hour of this ${layout.format} file has ${layout.columnCount}.${hint}`,
  });
}
