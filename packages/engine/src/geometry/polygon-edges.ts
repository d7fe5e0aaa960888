import { bearingDeg, wrapDeg } from './bearing.ts';
import { distanceM, type Point, requireFinitePoints } from './point.ts';
import { signedAreaM2 } from './polygon-area.ts';

/** One side of a polygon. Bearings are clockwise from the plan's +y axis, degrees, 0 to below 360. */
export interface PolygonEdge {
  /** Index of the corner where it starts. */
  readonly index: number;
  readonly from: Point;
  readonly to: Point;
  readonly lengthM: number;
  readonly bearingDeg: number;
  /** The way out of the polygon, at right angles to the side. */
  readonly outwardNormalDeg: number;
}

/**
 * Sides of a polygon in the order of its corners; a repeated corner gives no side of no length. The outward side is
 * found from the winding of the whole ring; a ring without area is taken as counter-clockwise.
 * @throws EngineError `not-finite` for a coordinate that is no finite number
 */
export function polygonEdges(ring: readonly Point[]): PolygonEdge[] {
  requireFinitePoints('polygon', ring);
  const outward = signedAreaM2(ring) < 0 ? -90 : 90;
  const edges: PolygonEdge[] = [];
  for (let index = 0; index < ring.length; index += 1) {
    const from = ring[index]!;
    const to = ring[(index + 1) % ring.length]!;
    const bearing = bearingDeg(from, to);
    if (bearing === null) continue;
    edges.push({
      index,
      from,
      to,
      lengthM: distanceM(from, to),
      bearingDeg: bearing,
      outwardNormalDeg: wrapDeg(bearing + outward),
    });
  }
  return edges;
}
