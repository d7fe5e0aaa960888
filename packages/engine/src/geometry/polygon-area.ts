import { type Point, requireFinitePoints } from './point.ts';

/**
 * Signed area of a polygon, m²: positive when its corners run counter-clockwise. The closing corner may be repeated
 * or left out. Fewer than three corners and straight rows of corners give 0; a ring that crosses itself gives the
 * winding sum, not the area covered (see `polygonContacts`).
 *
 * Cross products about the first corner, so that a plan far from its origin loses no digits.
 * @throws EngineError `not-finite` for a coordinate that is no finite number
 */
export function signedAreaM2(ring: readonly Point[]): number {
  requireFinitePoints('polygon', ring);
  if (ring.length < 3) return 0;
  const { xM: x0, yM: y0 } = ring[0]!;
  let twice = 0;
  for (let i = 1; i + 1 < ring.length; i += 1) {
    const a = ring[i]!;
    const b = ring[i + 1]!;
    twice += (a.xM - x0) * (b.yM - y0) - (b.xM - x0) * (a.yM - y0);
  }
  return twice / 2;
}

/**
 * Area of a polygon, m², whichever way its corners run; see `signedAreaM2` for degenerate rings.
 * @throws EngineError `not-finite` for a coordinate that is no finite number
 */
export function polygonAreaM2(ring: readonly Point[]): number {
  return Math.abs(signedAreaM2(ring));
}
