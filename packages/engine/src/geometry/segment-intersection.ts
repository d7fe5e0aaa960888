import { distanceM, type Point, requireFinitePoints, SAME_PLACE_M } from './point.ts';
import { distanceToSegmentM, nearestOnSegment } from './segment-distance.ts';

/**
 * How two segments meet. `cross`: each passes through the other. `touch`: they share one point, an end of at least
 * one of them. `overlap`: they share a stretch.
 */
export type SegmentMeeting =
  | { readonly kind: 'none' }
  | { readonly kind: 'cross' | 'touch'; readonly at: Point }
  | { readonly kind: 'overlap'; readonly from: Point; readonly to: Point };

/**
 * How the segments a–b and c–d meet. Segments without length count as points.
 *
 * Ends are tried first: an end within the tolerance of the other segment touches it, two such places apart make an
 * overlap. Only segments whose ends all stay clear can cross, and then the crossing is well defined.
 * @param toleranceM how near is "on", m
 * @throws EngineError `not-finite` for a coordinate that is no finite number
 */
export function segmentMeeting(
  a: Point,
  b: Point,
  c: Point,
  d: Point,
  toleranceM: number = SAME_PLACE_M,
): SegmentMeeting {
  requireFinitePoints('segments', [a, b, c, d]);
  let first: Point | null = null;
  let farthest: Point | null = null;
  let apart = toleranceM;
  const ends: readonly (readonly [Point, Point, Point])[] = [
    [a, c, d],
    [b, c, d],
    [c, a, b],
    [d, a, b],
  ];
  for (const [end, p, q] of ends) {
    if (distanceToSegmentM(end, p, q) > toleranceM) continue;
    const at = nearestOnSegment(end, p, q);
    if (first === null) first = at;
    else if (distanceM(first, at) > apart) {
      farthest = at;
      apart = distanceM(first, at);
    }
  }
  if (first !== null && farthest !== null) return { kind: 'overlap', from: first, to: farthest };
  if (first !== null) return { kind: 'touch', at: first };

  const rx = b.xM - a.xM;
  const ry = b.yM - a.yM;
  const sx = d.xM - c.xM;
  const sy = d.yM - c.yM;
  const cross = rx * sy - ry * sx;
  if (cross === 0) return { kind: 'none' };
  const t = ((c.xM - a.xM) * sy - (c.yM - a.yM) * sx) / cross;
  const u = ((c.xM - a.xM) * ry - (c.yM - a.yM) * rx) / cross;
  if (t < 0 || t > 1 || u < 0 || u > 1) return { kind: 'none' };
  return { kind: 'cross', at: { xM: a.xM + t * rx, yM: a.yM + t * ry } };
}
