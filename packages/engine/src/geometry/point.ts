import { EngineError } from '../numerics/engine-error.ts';

/** A place in the plan's own axes, meters: x to the right (east), y up the sheet (north). */
export interface Point {
  readonly xM: number;
  readonly yM: number;
}

/** Two places nearer than this are one place, m. A nanometer: far below any tape, far above rounding in a plan. */
export const SAME_PLACE_M = 1e-9;

/** Distance between two points, m. */
export function distanceM(a: Point, b: Point): number {
  return Math.hypot(b.xM - a.xM, b.yM - a.yM);
}

/**
 * Refuses points with coordinates that are not finite numbers; everything else is geometry, however degenerate.
 * @param name what the points are, as it should read in the message
 * @throws EngineError `not-finite`, naming the first bad point by its index
 */
export function requireFinitePoints(name: string, points: readonly Point[]): void {
  for (let i = 0; i < points.length; i += 1) {
    const p = points[i]!;
    if (!Number.isFinite(p.xM) || !Number.isFinite(p.yM)) {
      throw new EngineError(
        'not-finite',
        `${name}: point ${i} must have finite xM and yM; got ${p.xM}, ${p.yM}`,
      );
    }
  }
}
