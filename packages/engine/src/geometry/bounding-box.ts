import { type Point, requireFinitePoints } from './point.ts';

/** The upright rectangle that just holds some points, m. */
export interface BoundingBox {
  readonly minXM: number;
  readonly minYM: number;
  readonly maxXM: number;
  readonly maxYM: number;
}

/**
 * Bounding box of points; null when there are none.
 * @throws EngineError `not-finite` for a coordinate that is no finite number
 */
export function boundingBox(points: readonly Point[]): BoundingBox | null {
  requireFinitePoints('bounding box', points);
  if (points.length === 0) return null;
  let minXM = Number.POSITIVE_INFINITY;
  let minYM = Number.POSITIVE_INFINITY;
  let maxXM = Number.NEGATIVE_INFINITY;
  let maxYM = Number.NEGATIVE_INFINITY;
  for (const p of points) {
    minXM = Math.min(minXM, p.xM);
    minYM = Math.min(minYM, p.yM);
    maxXM = Math.max(maxXM, p.xM);
    maxYM = Math.max(maxYM, p.yM);
  }
  return { minXM, minYM, maxXM, maxYM };
}
