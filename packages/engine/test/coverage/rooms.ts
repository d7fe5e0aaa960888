import type { CoverageScene, Station } from '../../src/coverage/scene.ts';
import type { Point } from '../../src/geometry/point.ts';

/** Corners of an upright rectangle. */
export function box(x0: number, y0: number, x1: number, y1: number): Point[] {
  return [
    { xM: x0, yM: y0 },
    { xM: x1, yM: y0 },
    { xM: x1, yM: y1 },
    { xM: x0, yM: y1 },
  ];
}

/** An empty room with a corner at the origin. Walls: 0 south, 1 east, 2 north, 3 west. */
export function room(width: number, height: number): CoverageScene {
  return { outline: box(0, 0, width, height) };
}

/** A station that looks all round without end. */
export function allRound(id: string, xM: number, yM: number): Station {
  return { id, at: { xM, yM }, bearingDeg: 0, fieldOfViewDeg: 360, rangeM: Number.POSITIVE_INFINITY };
}
