/** One line cut at its commas. A single object is reused for all lines of a file. */
export interface RowFields {
  text: string;
  count: number;
  /** End of field `i` (its comma, or the end of the line) at `ends[i]`. */
  readonly ends: Int32Array;
}

/** Fields whose ends are recorded; more are only counted. */
const ENDS_KEPT = 128;

/** A cutter with no line yet. */
export function rowFields(): RowFields {
  return { text: '', count: 0, ends: new Int32Array(ENDS_KEPT) };
}

/** Cuts a line, in place. Quotes have no meaning in the hourly rows of the layouts read here. */
export function cutRow(row: RowFields, text: string): void {
  const { ends } = row;
  let count = 0;
  for (let at = text.indexOf(','); at >= 0; at = text.indexOf(',', at + 1)) {
    if (count < ENDS_KEPT) ends[count] = at;
    count++;
  }
  if (count < ENDS_KEPT) ends[count] = text.length;
  row.text = text;
  row.count = count + 1;
}

/** Field `i` as text, blanks around it included. */
export function fieldText(row: RowFields, i: number): string {
  return row.text.slice(i === 0 ? 0 : row.ends[i - 1]! + 1, row.ends[i]!);
}

const NUMBER = /^\s*[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?\s*$/;

const POWERS_OF_TEN = Array.from({ length: 16 }, (_, n) => 10 ** n);

const SPACE = 32;
const PLUS = 43;
const MINUS = 45;
const POINT = 46;
const ZERO = 48;

/**
 * Field `i` as a decimal number; NaN when it is empty or anything else. Plain decimals of up to 15 digits, which is all
 * that a sound file holds, are read without making a string; a whole number divided by a power of ten is exact to the
 * last bit there.
 */
export function fieldNumber(row: RowFields, i: number): number {
  const { text, ends } = row;
  const end = ends[i]!;
  let at = i === 0 ? 0 : ends[i - 1]! + 1;
  while (at < end && text.charCodeAt(at) === SPACE) at++;
  const sign = text.charCodeAt(at);
  if (at < end && (sign === MINUS || sign === PLUS)) at++;
  let whole = 0;
  let digits = 0;
  let decimals = -1;
  for (; at < end; at++) {
    const code = text.charCodeAt(at);
    if (code >= ZERO && code <= ZERO + 9) {
      whole = whole * 10 + (code - ZERO);
      digits++;
      if (decimals >= 0) decimals++;
    } else if (code === POINT && decimals < 0) {
      decimals = 0;
    } else {
      break;
    }
  }
  while (at < end && text.charCodeAt(at) === SPACE) at++;
  if (at < end || digits === 0 || digits > 15) {
    const slow = fieldText(row, i);
    return NUMBER.test(slow) ? Number(slow) : Number.NaN;
  }
  const value = decimals > 0 ? whole / POWERS_OF_TEN[decimals]! : whole;
  return sign === MINUS ? -value : value;
}
