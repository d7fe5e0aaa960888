import { geometry } from '@undercroft/engine';
import type { Point } from '@undercroft/record';
import { along } from '../../../plan/shape.ts';

/** More piers in one row are a slip of the finger. */
const MOST = 200;

/** Share of a spacing by which the far end may have been tapped too short. */
const SHORT = 0.15;

/**
 * Middles of a row of piers: the first at one end, the others at the spacing toward the far end, as many as reach it. The
 * spacing is what the tape showed, so it counts and not the spot that was tapped. None for a spacing that is not above
 * zero or would make more than two hundred.
 */
export function rowOfPiers(from: Point, to: Point, spacingM: number): Point[] {
  if (!(spacingM > 0)) return [];
  const steps = Math.floor(geometry.distanceM(from, to) / spacingM + SHORT);
  if (steps >= MOST) return [];
  return Array.from({ length: steps + 1 }, (_, i) => along(from, to, i * spacingM));
}
