import { HOURS_PER_YEAR, hourIndexOf } from './calendar.ts';
import { guessUnit, QUANTITIES, type QuantityKey } from './quantities.ts';
import { excerpt, type IssueLog, report } from './read-issue.ts';
import { cutRow, fieldNumber, fieldText, type RowFields, rowFields } from './row-fields.ts';

/** Where a quantity stands in the rows of a format. */
export interface ColumnOf {
  readonly key: QuantityKey;
  /** First column 0. */
  readonly index: number;
  /** Unit in the file, as it stands in messages. */
  readonly unit: string;
  /** Value in the unit of `RawHours` per value in the file. */
  readonly factor: number;
  /** Values that mean "missing"; each must lie outside the limits of the quantity. */
  readonly missing: readonly number[];
}

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

/** A column while it is read. The spans are kept in typed arrays, which the inner loop writes without allocating. */
interface ColumnInWork {
  readonly column: ColumnOf;
  readonly values: Float64Array;
  /** Smallest and largest value that was read, in the unit of the file. */
  readonly span: Float64Array;
  /** Values read, and of these outside the limits. */
  readonly counts: Int32Array;
  readonly firstOutside: { readonly line: number; readonly text: string }[];
}

function columnInWork(column: ColumnOf): ColumnInWork {
  return {
    column,
    values: new Float64Array(HOURS_PER_YEAR).fill(Number.NaN),
    span: Float64Array.of(Infinity, -Infinity),
    counts: new Int32Array(2),
    firstOutside: [],
  };
}

/** From this many values outside the limits on, the column as a whole is taken to be in another unit. */
const UNIT_FAULT_COUNT = 24;

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

/** Reads a field into its column, in the unit of `RawHours`; NaN stays where it is missing or at fault. */
function readField(row: RowFields, work: ColumnInWork, hour: number, line: number, log: IssueLog): void {
  const { column, span, counts } = work;
  const quantity = QUANTITIES[column.key];
  const written = fieldNumber(row, column.index);
  const value = written * column.factor;
  const within = value >= quantity.min && value <= quantity.max;
  if (!within) {
    // All marks for "missing" lie outside the limits, so sound values never come here.
    if (Number.isNaN(written)) {
      reportNoNumber(fieldText(row, column.index), column, line, log);
      return;
    }
    if (column.missing.includes(written)) return;
    counts[1]!++;
    if (work.firstOutside.length < UNIT_FAULT_COUNT) {
      work.firstOutside.push({ line, text: fieldText(row, column.index) });
    }
  }
  counts[0]!++;
  if (written < span[0]!) span[0] = written;
  if (written > span[1]!) span[1] = written;
  if (within) work.values[hour] = value;
}

function reportNoNumber(text: string, column: ColumnOf, line: number, log: IssueLog): void {
  if (text.trim() === '') return;
  const { name } = QUANTITIES[column.key];
  report(log, {
    line,
    column: column.index + 1,
    found: excerpt(text),
    expected: `${name}, a number in ${column.unit}`,
    message: `Line ${line}, column ${column.index + 1}: ${name} is "${excerpt(text)}", not a number.`,
  });
}

/** Reports the values outside the limits: one by one, or all at once as a column in another unit. */
function reportFaults(work: ColumnInWork, log: IssueLog): 'unit' | 'values' {
  const { column } = work;
  if (work.counts[1]! >= UNIT_FAULT_COUNT || isMinute(work)) {
    reportUnit(work, log);
    return 'unit';
  }
  const { name } = QUANTITIES[column.key];
  const expected = limits(column);
  for (const { line, text } of work.firstOutside) {
    report(log, {
      line,
      column: column.index + 1,
      found: excerpt(text),
      expected,
      message: `Line ${line}, column ${column.index + 1}: ${name} is ${excerpt(text)}; ${expected} is possible.`,
    });
  }
  return 'values';
}

/** Whether a column is within its limits but far too small throughout: a fraction where percent is expected. */
function isMinute({ column, counts, span }: ColumnInWork): boolean {
  const highest = span[1]!;
  if (counts[0]! < UNIT_FAULT_COUNT || highest <= 0) return false;
  if (column.key === 'relativeHumidityPercent') return highest <= 1.1;
  return column.key === 'globalHorizontalWPerM2' && highest <= 1.5;
}

function reportUnit({ column, span, firstOutside }: ColumnInWork, log: IssueLog): void {
  const guess = guessUnit(column.key, span[0]!, span[1]!);
  const { name } = QUANTITIES[column.key];
  const found = `${span[0]} to ${span[1]}`;
  report(log, {
    line: firstOutside[0]?.line ?? 0,
    column: column.index + 1,
    found: guess === undefined ? found : `${found}, as in ${guess}`,
    expected: limits(column),
    message:
      `Column ${column.index + 1}: ${name} runs from ${found}, which does not fit ${column.unit}` +
      `${guess === undefined ? '' : ` but would fit ${guess}`}. ` +
      `Convert the column to ${column.unit} or choose the right file.`,
  });
}

function limits(column: ColumnOf): string {
  const quantity = QUANTITIES[column.key];
  return `${quantity.min / column.factor} to ${quantity.max / column.factor} ${column.unit}`;
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
