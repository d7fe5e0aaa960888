import type { Point } from './point.ts';

/** The point of the segment a to b that is nearest to `point`; a itself when the segment has no length. */
export function nearestOnSegment(point: Point, a: Point, b: Point): Point {
  const dx = b.xM - a.xM;
  const dy = b.yM - a.yM;
  const length2 = dx * dx + dy * dy;
  if (length2 === 0) return a;
  const t = ((point.xM - a.xM) * dx + (point.yM - a.yM) * dy) / length2;
  if (t <= 0) return a;
  if (t >= 1) return b;
  return { xM: a.xM + t * dx, yM: a.yM + t * dy };
}

/** Distance from a point to the segment a to b, m; to a itself when the segment has no length. */
export function distanceToSegmentM(point: Point, a: Point, b: Point): number {
  const dx = b.xM - a.xM;
  const dy = b.yM - a.yM;
  const px = point.xM - a.xM;
  const py = point.yM - a.yM;
  const length2 = dx * dx + dy * dy;
  const t = length2 === 0 ? 0 : Math.min(1, Math.max(0, (px * dx + py * dy) / length2));
  return Math.hypot(px - t * dx, py - t * dy);
}
