import { normalizePolygon } from './normalize-polygon.ts';
import { distanceM, type Point, SAME_PLACE_M } from './point.ts';

/**
 * How a path bends at `b` coming from `a` and going on to `c`: 1 to the left, −1 to the right, 0 straight on or
 * straight back. Straight means that no point of the three is farther than `toleranceM` from the line of the other
 * two, about.
 */
export function turnSign(a: Point, b: Point, c: Point, toleranceM: number = SAME_PLACE_M): -1 | 0 | 1 {
  const cross = (b.xM - a.xM) * (c.yM - b.yM) - (b.yM - a.yM) * (c.xM - b.xM);
  const longest = Math.max(distanceM(a, b), distanceM(b, c), distanceM(a, c));
  if (Math.abs(cross) <= toleranceM * longest) return 0;
  return cross > 0 ? 1 : -1;
}

/**
 * Whether a polygon has no inward corner. Straight corners are allowed; a polygon without area, or one that winds
 * round more than once, is not convex.
 * @throws EngineError `not-finite` for a coordinate that is no finite number
 */
export function isConvex(ring: readonly Point[]): boolean {
  const { corners, areaM2 } = normalizePolygon(ring);
  if (areaM2 === 0) return false;
  let turned = 0;
  for (let i = 0; i < corners.length; i += 1) {
    const a = corners[i]!;
    const b = corners[(i + 1) % corners.length]!;
    const c = corners[(i + 2) % corners.length]!;
    if (turnSign(a, b, c) < 0) return false;
    const dot = (b.xM - a.xM) * (c.xM - b.xM) + (b.yM - a.yM) * (c.yM - b.yM);
    const cross = (b.xM - a.xM) * (c.yM - b.yM) - (b.yM - a.yM) * (c.xM - b.xM);
    turned += Math.atan2(cross, dot);
  }
  return turned < 3 * Math.PI;
}
