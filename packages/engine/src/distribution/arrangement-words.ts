import type { Point } from '../geometry/point.ts';

/** A place as text, in meters of the plan. */
export function placeText({ xM, yM }: Point): string {
  return `(${xM.toFixed(1)}, ${yM.toFixed(1)})`;
}
