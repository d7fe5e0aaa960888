import { boundingBox } from '../geometry/bounding-box.ts';
import type { Point } from '../geometry/point.ts';
import { type CellBox, cellsAlong } from './clip-cell.ts';

/** An even grid over the plan. Row 0 has the least y. */
export interface FieldGrid {
  readonly minXM: number;
  readonly minYM: number;
  readonly cellXM: number;
  readonly cellYM: number;
  readonly columns: number;
  readonly rows: number;
}

/** The rectangle of a place of the grid. */
export function boxOf(grid: FieldGrid, column: number, row: number): CellBox {
  return {
    minXM: grid.minXM + column * grid.cellXM,
    minYM: grid.minYM + row * grid.cellYM,
    maxXM: grid.minXM + (column + 1) * grid.cellXM,
    maxYM: grid.minYM + (row + 1) * grid.cellYM,
  };
}

/** Middle of a place of the grid. */
export function middleOf(grid: FieldGrid, column: number, row: number): Point {
  return {
    xM: grid.minXM + (column + 0.5) * grid.cellXM,
    yM: grid.minYM + (row + 0.5) * grid.cellYM,
  };
}

/** 1 for each place of the grid that the sides of a polygon touch. */
export function cutCells(grid: FieldGrid, ring: readonly Point[]): Uint8Array {
  const cut = new Uint8Array(grid.columns * grid.rows);
  ring.forEach((a, i) => {
    cellsAlong(a, ring[(i + 1) % ring.length]!, grid, (column, row) => {
      if (column >= 0 && column < grid.columns && row >= 0 && row < grid.rows) {
        cut[row * grid.columns + column] = 1;
      }
    });
  });
  return cut;
}

/** Visits every place of the grid that the bounding box of a polygon touches. */
export function overBox(
  grid: FieldGrid,
  ring: readonly Point[],
  visit: (column: number, row: number) => void,
): void {
  const box = boundingBox(ring);
  if (box === null) return;
  const firstColumn = Math.max(0, Math.floor((box.minXM - grid.minXM) / grid.cellXM));
  const lastColumn = Math.min(grid.columns - 1, Math.floor((box.maxXM - grid.minXM) / grid.cellXM));
  const firstRow = Math.max(0, Math.floor((box.minYM - grid.minYM) / grid.cellYM));
  const lastRow = Math.min(grid.rows - 1, Math.floor((box.maxYM - grid.minYM) / grid.cellYM));
  for (let row = firstRow; row <= lastRow; row += 1) {
    for (let column = firstColumn; column <= lastColumn; column += 1) visit(column, row);
  }
}
