import { HOURS_PER_YEAR } from './calendar.ts';
import { guessUnit, QUANTITIES, type QuantityKey } from './quantities.ts';
import { excerpt, type IssueLog, report } from './read-issue.ts';
import { fieldNumber, fieldText, type RowFields } from './row-fields.ts';

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

/** A column while it is read. The spans are kept in typed arrays, which the inner loop writes without allocating. */
export interface ColumnInWork {
  readonly column: ColumnOf;
  readonly values: Float64Array;
  /** Smallest and largest value that was read, in the unit of the file. */
  readonly span: Float64Array;
  /** Values read, and of these outside the limits. */
  readonly counts: Int32Array;
  readonly firstOutside: { readonly line: number; readonly text: string }[];
}

/** A column of which nothing was read yet: all hours missing. */
export function columnInWork(column: ColumnOf): ColumnInWork {
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

/** Reads a field into its column, in the unit of `RawHours`; NaN stays where it is missing or at fault. */
export function readField(
  row: RowFields,
  work: ColumnInWork,
  hour: number,
  line: number,
  log: IssueLog,
): void {
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
export function reportFaults(work: ColumnInWork, log: IssueLog): 'unit' | 'values' {
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
