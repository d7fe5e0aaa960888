import { distanceM, type Point } from '../geometry/point.ts';
import { requireRange } from '../numerics/require-range.ts';
import { alongLine } from './rings.ts';
import type { SceneWall } from './scene.ts';

/** A part of an interior wall that is wall, between its start, its openings and its end. */
interface WallPiece {
  readonly from: Point;
  readonly to: Point;
  /** Along the wall from its start [m]. */
  readonly startM: number;
  readonly endM: number;
}

/**
 * What is left of an interior wall between its openings. Openings may overlap each other and run past the wall's ends.
 * @throws EngineError `not-finite` or `out-of-range` for an opening without a proper place or width
 */
export function wallPieces(wall: SceneWall): WallPiece[] {
  const lengthM = distanceM(wall.from, wall.to);
  const gaps = (wall.openings ?? [])
    .map(({ offsetM, widthM }) => {
      const start = requireRange(`opening offset in wall ${wall.id} (m)`, offsetM, -1000, 1000);
      return [start, start + requireRange(`opening width in wall ${wall.id} (m)`, widthM, 0, 1000)] as const;
    })
    .sort((a, b) => a[0] - b[0]);
  const pieces: WallPiece[] = [];
  const add = (startM: number, endM: number): void => {
    if (endM - startM <= 1e-9) return;
    const from = startM === 0 ? wall.from : alongLine(wall.from, wall.to, startM);
    const to = endM === lengthM ? wall.to : alongLine(wall.from, wall.to, endM);
    pieces.push({ from, to, startM, endM });
  };
  let at = 0;
  for (const [start, end] of gaps) {
    if (start > at) add(at, Math.min(start, lengthM));
    at = Math.max(at, end);
    if (at >= lengthM) break;
  }
  add(Math.min(at, lengthM), lengthM);
  return pieces;
}
