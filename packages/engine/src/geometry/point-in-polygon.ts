import { type Point, requireFinitePoints, SAME_PLACE_M } from './point.ts';
import { distanceToSegmentM } from './segment-distance.ts';

/** Where a point stands to a polygon. `edge` means on a wall within the tolerance. */
export type Standing = 'inside' | 'edge' | 'outside';

/**
 * Whether a point is inside a polygon, on its edge, or outside. Where a ring crosses itself, an area that is wound
 * round twice counts as outside (even-odd). A polygon without area has an edge and no inside.
 *
 * Crossings of a ray to the right, counted for half-open edges so that a corner on the ray counts once.
 * @param toleranceM how near to a wall is `edge`, m; 0 for exactly on it
 * @throws EngineError `not-finite` for a coordinate that is no finite number
 */
export function pointInPolygon(
  point: Point,
  ring: readonly Point[],
  toleranceM: number = SAME_PLACE_M,
): Standing {
  requireFinitePoints('point', [point]);
  requireFinitePoints('polygon', ring);
  const { xM: x, yM: y } = point;
  let inside = false;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i, i += 1) {
    const a = ring[j]!;
    const b = ring[i]!;
    if (isNearBox(x, y, a, b, toleranceM) && distanceToSegmentM(point, a, b) <= toleranceM) return 'edge';
    if (a.yM > y !== b.yM > y) {
      const [low, high] = a.yM < b.yM ? [a, b] : [b, a];
      const side = (high.xM - low.xM) * (y - low.yM) - (x - low.xM) * (high.yM - low.yM);
      if (side > 0) inside = !inside;
    }
  }
  return inside ? 'inside' : 'outside';
}

/** A cheap first look: whether a point can be near a segment at all. */
function isNearBox(x: number, y: number, a: Point, b: Point, reachM: number): boolean {
  return (
    x >= Math.min(a.xM, b.xM) - reachM &&
    x <= Math.max(a.xM, b.xM) + reachM &&
    y >= Math.min(a.yM, b.yM) - reachM &&
    y <= Math.max(a.yM, b.yM) + reachM
  );
}
