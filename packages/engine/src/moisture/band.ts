import { EngineError } from '../numerics/engine-error.ts';

/** A quantity that was measured or guessed, with the range that it may have. */
export interface Band {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** True where nobody measured it. */
  readonly assumed: boolean;
}

/** A band of no width: a figure that is taken as known. */
export function known(value: number): Band {
  return { value, low: value, high: value, assumed: false };
}

/**
 * Returns the band when its three figures are finite, in order, and within the closed range.
 * @param name what it is, with its unit, as it should read in the message
 * @throws EngineError `not-finite`, `out-of-range`, or `bad-input` when low, value and high are not in order
 */
export function requireBand(name: string, band: Band, min: number, max: number): Band {
  for (const figure of [band.low, band.value, band.high]) {
    if (!Number.isFinite(figure)) {
      throw new EngineError('not-finite', `${name} must be a number; got ${figure}`);
    }
    if (figure < min || figure > max) {
      throw new EngineError('out-of-range', `${name} must be from ${min} to ${max}; got ${figure}`);
    }
  }
  if (band.low > band.value || band.value > band.high) {
    throw new EngineError(
      'bad-input',
      `${name} must have its value between low and high; got ${band.low}, ${band.value}, ${band.high}`,
    );
  }
  return band;
}

/** A figure with two ranges: everything at its worst, and what independent guesses are likely to add up to. */
export interface Spread {
  readonly value: number;
  /** All guesses at the end that lowers the figure, all at once. */
  readonly low: number;
  readonly high: number;
  /** Root of the summed squares of the single guesses, each alone at its end. */
  readonly likelyLow: number;
  readonly likelyHigh: number;
}

/**
 * Lowest and highest of a function over the corners of its bands. Exact where the function rises or falls steadily in
 * each input by itself, as every flow of this subject does. Inputs without width do not add corners.
 */
export function overCorners(
  bands: readonly Band[],
  f: (values: readonly number[]) => number,
): { readonly low: number; readonly high: number } {
  const values = bands.map((band) => band.value);
  const loose = bands.flatMap((band, i) => (band.low < band.high ? [i] : []));
  let low = f(values);
  let high = low;
  for (let corner = 0; corner < 2 ** loose.length; corner++) {
    for (let k = 0; k < loose.length; k++) {
      const band = bands[loose[k]!]!;
      values[loose[k]!] = (corner >> k) & 1 ? band.high : band.low;
    }
    const y = f(values);
    if (y < low) low = y;
    if (y > high) high = y;
  }
  return { low, high };
}
