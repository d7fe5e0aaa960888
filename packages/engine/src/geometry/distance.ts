import { type Point, requireFinitePoints } from './point.ts';
import { pointInPolygon } from './point-in-polygon.ts';
import { distanceToSegmentM } from './segment-distance.ts';

/**
 * Distance from a point to the closed line of a polygon, m. Infinity for a polygon without corners.
 * @throws EngineError `not-finite` for a coordinate that is no finite number
 */
export function distanceToBoundaryM(point: Point, ring: readonly Point[]): number {
  requireFinitePoints('point', [point]);
  requireFinitePoints('polygon', ring);
  let nearest = Number.POSITIVE_INFINITY;
  for (let i = 0; i < ring.length; i += 1) {
    nearest = Math.min(nearest, distanceToSegmentM(point, ring[i]!, ring[(i + 1) % ring.length]!));
  }
  return nearest;
}

/**
 * Distance from a point to a polygon with its sign: negative inside (depth to the nearest wall), positive outside,
 * m. Infinity for a polygon without corners.
 * @throws EngineError `not-finite` for a coordinate that is no finite number
 */
export function distanceToPolygonM(point: Point, ring: readonly Point[]): number {
  const distance = distanceToBoundaryM(point, ring);
  return pointInPolygon(point, ring, 0) === 'inside' ? -distance : distance;
}
