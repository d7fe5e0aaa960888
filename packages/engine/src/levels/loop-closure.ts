import { EngineError } from '../numerics/engine-error.ts';
import { requireRange } from '../numerics/require-range.ts';
import { requireReading } from './instrument.ts';

/** One set-up of a level loop: the rod read behind, then ahead. */
export interface LoopSetUp {
  readonly backsightM: number;
  readonly foresightM: number;
  /** Length leveled over in this set-up, m, where it was taken. */
  readonly distanceM?: number;
}

/** A level loop back to its start, its error spread. */
export interface LoopClosure {
  /** ΣBS − ΣFS, m; nothing in a perfect loop. */
  readonly misclosureM: number;
  readonly allowedM: number;
  /** Whether the misclosure is within what is allowed; the limit itself is. */
  readonly accepted: boolean;
  /** What the error was shared out by: distances when every set-up has one, else the count of set-ups. */
  readonly spreadBy: 'distance' | 'set-ups';
  /** Corrected height of the point ahead of each set-up, m; the last is the start again. */
  readonly heightsM: readonly number[];
}

/** 1/8 in, accepted in a crawl space. Common practice, no source. */
const ALLOWED_M = 0.003175;

/**
 * Misclosure of a level loop and its corrected heights.
 * @param setUps in the order of the walk, at least one
 * @param startHeightM height of the point where the loop starts and ends, m
 * @param allowedM misclosure that is accepted, m; 1/8 in by default (common practice), see `thirdOrderAllowedM`
 * @throws EngineError `bad-input` for no set-ups; `not-finite` or `out-of-range` for readings not from 0 to 30 m or
 *   distances not from 0 to 100 km
 */
export function closeLoop(
  setUps: readonly LoopSetUp[],
  startHeightM = 0,
  allowedM: number = ALLOWED_M,
): LoopClosure {
  if (setUps.length === 0) throw new EngineError('bad-input', 'a level loop needs at least one set-up');
  requireRange('start height (m)', startHeightM, -1e4, 1e4);
  requireRange('allowed misclosure (m)', allowedM, 0, 10);
  let misclosureM = 0;
  let distanceM = 0;
  let measured = true;
  setUps.forEach((setUp, i) => {
    const back = requireReading(`backsight of set-up ${i + 1}`, setUp.backsightM);
    misclosureM += back - requireReading(`foresight of set-up ${i + 1}`, setUp.foresightM);
    if (setUp.distanceM === undefined) measured = false;
    else distanceM += requireRange(`distance of set-up ${i + 1} (m)`, setUp.distanceM, 0, 1e5);
  });
  const byDistance = measured && distanceM > 0;
  let height = startHeightM;
  let share = 0;
  const heightsM = setUps.map((setUp) => {
    height += setUp.backsightM - setUp.foresightM;
    share += byDistance ? (setUp.distanceM ?? 0) / distanceM : 1 / setUps.length;
    return height - misclosureM * share;
  });
  return {
    misclosureM,
    allowedM,
    accepted: Math.abs(misclosureM) <= allowedM,
    spreadBy: byDistance ? 'distance' : 'set-ups',
    heightsM,
  };
}

/**
 * Misclosure allowed by third-order leveling, m: 12 mm times the root of the loop's length in kilometers (Federal
 * Geodetic Control Committee 1984, from memory). Far finer than a crawl space needs.
 * @throws EngineError `not-finite` or `out-of-range` for a length not from 0 to 1,000 km
 */
export function thirdOrderAllowedM(loopLengthM: number): number {
  return 0.012 * Math.sqrt(requireRange('loop length (m)', loopLengthM, 0, 1e6) / 1000);
}
