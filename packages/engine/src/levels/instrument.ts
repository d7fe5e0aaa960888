import { requireRange } from '../numerics/require-range.ts';

/** How the rod stood: on its foot, or upside down with its foot held up against a joist. */
export type Rod = 'upright' | 'inverted';

/** Longest rod or story pole that makes sense under a house, m. */
const ROD_M = 30;

/**
 * Checks one rod reading.
 * @throws EngineError `not-finite`, or `out-of-range` for a reading that is not from 0 to 30 m
 */
export function requireReading(name: string, readingM: number): number {
  return requireRange(`${name} (m)`, readingM, 0, ROD_M);
}

/**
 * Height of the instrument's level plane: HI = Z + BS, with an upright rod on a point of known height, m.
 * @throws EngineError `not-finite` or `out-of-range` for a reading that is not from 0 to 30 m, or a height that is
 *   none
 */
export function instrumentHeightM(benchmarkHeightM: number, backsightM: number): number {
  requireRange('benchmark height (m)', benchmarkHeightM, -1e4, 1e4);
  return benchmarkHeightM + requireReading('backsight', backsightM);
}

/**
 * Height of a point read from a level plane, m: HI − FS with the rod upright, HI + reading with the rod upside down
 * against something overhead.
 * @throws EngineError `not-finite` or `out-of-range` for a reading that is not from 0 to 30 m, or a height that is
 *   none
 */
export function pointHeightM(instrumentM: number, readingM: number, rod: Rod = 'upright'): number {
  requireRange('instrument height (m)', instrumentM, -1e4, 1e4);
  const reading = requireReading('rod reading', readingM);
  return rod === 'upright' ? instrumentM - reading : instrumentM + reading;
}

/**
 * Heights read from one laser plane without a benchmark, m, relative to the first reading: the lower the ground, the
 * greater the reading. An empty list gives an empty list.
 * @throws EngineError `not-finite` or `out-of-range` for a reading that is not from 0 to 30 m
 */
export function relativeHeightsM(readingsM: readonly number[]): number[] {
  return readingsM.map((reading, i) => readingsM[0]! - requireReading(`reading ${i + 1}`, reading));
}

/**
 * Height of a pipe's invert (the lowest point of its bore) from the height of its top: Z − OD + wall, m. Corrugated
 * drain pipe of 4 in nominal has an outside diameter of about 4.7 in and a bore of about 4.0 in (ASTM F667 and F405,
 * from memory).
 * @throws EngineError `not-finite`, or `out-of-range` for a diameter not from 0 to 2 m or a wall beyond half of it
 */
export function invertFromTopM(topHeightM: number, outsideDiameterM: number, wallM: number): number {
  requireRange('height of the pipe top (m)', topHeightM, -1e4, 1e4);
  requireRange('outside diameter (m)', outsideDiameterM, 0, 2);
  requireRange('pipe wall (m)', wallM, 0, outsideDiameterM / 2);
  return topHeightM - outsideDiameterM + wallM;
}
