import { EngineError } from '../numerics/engine-error.ts';
import { type Shape, shapeAreaM2 } from './area-of-overlap.ts';
import { boundingBox } from './bounding-box.ts';
import type { Point } from './point.ts';

/** Evenly spread places over a shape, each standing for one square cell. */
export interface SampleGrid {
  /** Side of a cell, m; 0 when there are no cells. */
  readonly cellM: number;
  readonly centers: readonly Point[];
}

/**
 * Centers of the square cells, in rows parallel to the axes, that lie inside a shape: about `cellCount` of them,
 * fewer or more by the cells cut by walls. A shape without area gives none.
 * @param cellCount cells wanted, at least 1
 * @throws EngineError `not-finite` for a coordinate that is no finite number; `out-of-range` for fewer than one cell
 */
export function sampleGrid(shape: Shape, cellCount: number): SampleGrid {
  if (!(cellCount >= 1)) {
    throw new EngineError('out-of-range', `cellCount must be at least 1; got ${cellCount}`);
  }
  const area = shapeAreaM2(shape);
  const box = boundingBox(shape.outer);
  if (box === null || !(area > 0)) return { cellM: 0, centers: [] };
  const cellM = Math.sqrt(area / cellCount);
  const columns = Math.ceil((box.maxXM - box.minXM) / cellM);
  const rows = Math.ceil((box.maxYM - box.minYM) / cellM);
  const startX = (box.minXM + box.maxXM - (columns - 1) * cellM) / 2;
  const startY = (box.minYM + box.maxYM - (rows - 1) * cellM) / 2;
  const centers: Point[] = [];
  for (let row = 0; row < rows; row += 1) {
    const yM = startY + row * cellM;
    const crossings = crossingsAt(shape.outer, yM);
    const holes = (shape.holes ?? []).map((hole) => crossingsAt(hole, yM)).filter((cut) => cut.length > 0);
    for (let k = 0; k + 1 < crossings.length; k += 2) {
      const last = Math.floor((crossings[k + 1]! - startX) / cellM);
      for (let column = Math.ceil((crossings[k]! - startX) / cellM); column <= last; column += 1) {
        const xM = startX + column * cellM;
        if (!holes.some((cut) => isBetween(cut, xM))) centers.push({ xM, yM });
      }
    }
  }
  return { cellM, centers };
}

/** Where the sides of a ring cross a level line, ascending; sides are half-open, so a corner counts once. */
function crossingsAt(ring: readonly Point[], yM: number): number[] {
  const found: number[] = [];
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i, i += 1) {
    const a = ring[j]!;
    const b = ring[i]!;
    if (a.yM > yM !== b.yM > yM) found.push(a.xM + ((yM - a.yM) * (b.xM - a.xM)) / (b.yM - a.yM));
  }
  return found.sort((p, q) => p - q);
}

/** Whether a place on a level line lies inside, given where the ring crosses that line. */
function isBetween(crossings: readonly number[], xM: number): boolean {
  let inside = false;
  for (const crossing of crossings) if (crossing < xM) inside = !inside;
  return inside;
}
