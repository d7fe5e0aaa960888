import { requireRange } from '../numerics/require-range.ts';

/** Slopes as ratios: inches per foot over twelve. */
export const QUARTER_INCH_PER_FOOT = 1 / 48;
/** 1/8 in per foot. */
export const EIGHTH_INCH_PER_FOOT = 1 / 96;
/** 1/16 in per foot. */
export const SIXTEENTH_INCH_PER_FOOT = 1 / 192;

/** Slope below which a footing drain counts as laid level. Common practice, no source. */
export const LEVEL_SLOPE = 0.001;

const INCH_M = 0.0254;

/**
 * Least slope of a drain pipe by its nominal size, a ratio: 1/4 in per foot up to 2½ in, 1/8 in per foot for 3 to
 * 6 in, 1/16 in per foot from 8 in on. Between the sizes of the table the steeper slope is given.
 * Source: City of Chicago plumbing code Table 18-29-704.1, the same figures as International Plumbing Code 704.1.
 * @param nominalSizeM nominal diameter, m, 0.001 to 2
 * @throws EngineError `not-finite` or `out-of-range`
 */
export function leastDrainSlope(nominalSizeM: number): number {
  requireRange('nominal pipe size (m)', nominalSizeM, 0.001, 2);
  // A hair under the size in inches, so that 3 in given as 0.0762 m is not cut off by rounding.
  const inches = nominalSizeM / INCH_M + 1e-6;
  if (inches < 3) return QUARTER_INCH_PER_FOOT;
  return inches < 8 ? EIGHTH_INCH_PER_FOOT : SIXTEENTH_INCH_PER_FOOT;
}

/**
 * Fall that a run of pipe needs, m: length times slope.
 * @throws EngineError `not-finite` or `out-of-range` for a negative length or a slope not from 0 to 1
 */
export function requiredFallM(lengthM: number, slope: number): number {
  return requireRange('length of the line (m)', lengthM, 0, 1e5) * requireRange('slope', slope, 0, 1);
}
