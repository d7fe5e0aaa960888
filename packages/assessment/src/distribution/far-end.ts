import type { distribution } from '@undercroft/engine';
import type { Point } from '@undercroft/record';
import type { FloorPartShown } from './distribution-assessment.ts';

/** Part of the floor that counts as its far end. */
const FAR_SHARE = 0.05;

/** Middle of a cell. */
export function middleOfCell({ grid, column, row }: distribution.FieldMesh, cell: number): Point {
  return {
    xM: grid.minXM + (column[cell] + 0.5) * grid.cellXM,
    yM: grid.minYM + (row[cell] + 0.5) * grid.cellYM,
  };
}

/** Cells of the twentieth of the floor that is farthest from a place, the farthest first. */
export function farCells(mesh: distribution.FieldMesh, from: Point): readonly number[] {
  const away = Float64Array.from({ length: mesh.count }, (_, cell) => {
    const { xM, yM } = middleOfCell(mesh, cell);
    return Math.hypot(xM - from.xM, yM - from.yM);
  });
  const order = Array.from(away.keys()).sort((a, b) => away[b] - away[a] || a - b);
  const cells: number[] = [];
  let area = 0;
  for (const cell of order) {
    cells.push(cell);
    area += mesh.areaM2[cell];
    if (area >= FAR_SHARE * mesh.floorM2) break;
  }
  return cells;
}

/** Mean humidity of some cells, and the dampest of them. */
export function partOfCells(
  mesh: distribution.FieldMesh,
  cells: readonly number[],
  relativeHumidity: Float64Array,
): FloorPartShown {
  let areaM2 = 0;
  let sum = 0;
  let dampest = cells[0];
  for (const cell of cells) {
    areaM2 += mesh.areaM2[cell];
    sum += mesh.areaM2[cell] * relativeHumidity[cell];
    if (relativeHumidity[cell] > relativeHumidity[dampest]) dampest = cell;
  }
  return { areaM2, relativeHumidity: sum / areaM2, at: middleOfCell(mesh, dampest) };
}
