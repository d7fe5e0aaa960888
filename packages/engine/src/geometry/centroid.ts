import { type Point, requireFinitePoints } from './point.ts';

/**
 * Center of gravity of a polygon's area; null when the polygon has no area (fewer than three corners, all on one
 * line), because a line has no such center.
 * @throws EngineError `not-finite` for a coordinate that is no finite number
 */
export function centroid(ring: readonly Point[]): Point | null {
  requireFinitePoints('polygon', ring);
  if (ring.length < 3) return null;
  const { xM: x0, yM: y0 } = ring[0]!;
  let twice = 0;
  let momentX = 0;
  let momentY = 0;
  let reach2 = 0;
  for (let i = 1; i + 1 < ring.length; i += 1) {
    const ax = ring[i]!.xM - x0;
    const ay = ring[i]!.yM - y0;
    const bx = ring[i + 1]!.xM - x0;
    const by = ring[i + 1]!.yM - y0;
    const cross = ax * by - bx * ay;
    twice += cross;
    momentX += cross * (ax + bx);
    momentY += cross * (ay + by);
    reach2 = Math.max(reach2, ax * ax + ay * ay, bx * bx + by * by);
  }
  // Rounding alone leaves about 1e-16 of the reach squared.
  if (Math.abs(twice) <= 1e-14 * reach2) return null;
  return { xM: x0 + momentX / (3 * twice), yM: y0 + momentY / (3 * twice) };
}
