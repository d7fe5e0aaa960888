import type { Point } from '../geometry/point.ts';
import type { FloorGrid } from './floor-grid.ts';

/** Cells that hang together, edge to edge or corner to corner. */
export interface CellRegion {
  /** Places in the grid: row times columns plus column, ascending. */
  readonly cells: readonly number[];
  readonly centroid: Point;
  /** Middle of the cell nearest to the centroid: a place that is in the region even when the centroid is not. */
  readonly within: Point;
}

/** Places of the set cells, ascending. */
export function setCells({ columns, rows, wordsPerRow }: FloorGrid, bits: Uint32Array): number[] {
  const cells: number[] = [];
  for (let row = 0; row < rows; row += 1) {
    for (let w = 0; w < wordsPerRow; w += 1) {
      for (let rest = bits[row * wordsPerRow + w]!; rest !== 0; rest &= rest - 1) {
        cells.push(row * columns + w * 32 + 31 - Math.clz32(rest & -rest));
      }
    }
  }
  return cells;
}

/** A set cell that no region has yet. */
const LOOSE = -2;

/** Gives a set cell and all that hang together with it a region. `stack` has room for every cell of the grid. */
function fill(
  { columns, rows }: FloorGrid,
  label: Int32Array,
  stack: Int32Array,
  start: number,
  region: number,
): void {
  let top = 0;
  stack[top++] = start;
  label[start] = region;
  while (top > 0) {
    const cell = stack[--top]!;
    const column = cell % columns;
    const row = (cell - column) / columns;
    const lastRow = Math.min(rows - 1, row + 1);
    const lastColumn = Math.min(columns - 1, column + 1);
    for (let r = Math.max(0, row - 1); r <= lastRow; r += 1) {
      for (let c = Math.max(0, column - 1); c <= lastColumn; c += 1) {
        const next = r * columns + c;
        if (label[next] !== LOOSE) continue;
        label[next] = region;
        stack[top++] = next;
      }
    }
  }
}

/** The regions that the set cells form, largest first, then by their first cell; and the region of each cell, or -1. */
export function cellRegions(
  grid: FloorGrid,
  bits: Uint32Array,
): { regions: CellRegion[]; regionOf: Int32Array } {
  const { columns, rows } = grid;
  const label = new Int32Array(columns * rows).fill(-1);
  const stack = new Int32Array(columns * rows);
  const set = setCells(grid, bits);
  for (const cell of set) label[cell] = LOOSE;
  const found: number[][] = [];
  for (const cell of set) {
    if (label[cell] === LOOSE) {
      fill(grid, label, stack, cell, found.length);
      found.push([]);
    }
    found[label[cell]!]!.push(cell);
  }
  const order = found
    .map((_, i) => i)
    .sort((a, b) => found[b]!.length - found[a]!.length || found[a]![0]! - found[b]![0]!);
  const placeOf = new Int32Array(found.length);
  order.forEach((old, now) => {
    placeOf[old] = now;
  });
  for (const cell of set) label[cell] = placeOf[label[cell]!]!;
  return { regions: order.map((i) => describe(grid, found[i]!)), regionOf: label };
}

function describe(grid: FloorGrid, cells: readonly number[]): CellRegion {
  const { cellM, minXM, minYM, columns } = grid;
  let columnSum = 0;
  let rowSum = 0;
  for (const cell of cells) {
    const column = cell % columns;
    columnSum += column;
    rowSum += (cell - column) / columns;
  }
  const middleColumn = columnSum / cells.length;
  const middleRow = rowSum / cells.length;
  let nearest = cells[0]!;
  let least = Number.POSITIVE_INFINITY;
  for (const cell of cells) {
    const column = cell % columns;
    const away = (column - middleColumn) ** 2 + ((cell - column) / columns - middleRow) ** 2;
    if (away >= least) continue;
    least = away;
    nearest = cell;
  }
  const at = (column: number, row: number): Point => ({
    xM: minXM + (column + 0.5) * cellM,
    yM: minYM + (row + 0.5) * cellM,
  });
  return {
    cells,
    centroid: at(middleColumn, middleRow),
    within: at(nearest % columns, Math.floor(nearest / columns)),
  };
}

/**
 * The border of a region as rings along the sides of its cells: outer borders counter-clockwise, borders of holes
 * clockwise. Where cells touch in a corner only, the rings pass it separately.
 */
export function regionBorder(grid: FloorGrid, cells: readonly number[]): Point[][] {
  const { columns, rows } = grid;
  const own = new Uint8Array(columns * rows);
  for (const cell of cells) own[cell] = 1;
  const across = columns + 1;
  const has = (column: number, row: number): boolean =>
    column >= 0 && column < columns && own[row * columns + column] === 1;
  /** Sides by the grid corner where they start: the corners where they end, region on the left. */
  const sides = new Map<number, number[]>();
  const addSide = (from: number, to: number): void => {
    const ends = sides.get(from);
    if (ends) ends.push(to);
    else sides.set(from, [to]);
  };
  for (const cell of cells) {
    const column = cell % columns;
    const row = Math.floor(cell / columns);
    const corner = row * across + column;
    if (!has(column, row - 1)) addSide(corner, corner + 1);
    if (!has(column + 1, row)) addSide(corner + 1, corner + across + 1);
    if (!has(column, row + 1)) addSide(corner + across + 1, corner + across);
    if (!has(column - 1, row)) addSide(corner + across, corner);
  }
  const rings: Point[][] = [];
  for (const start of [...sides.keys()].sort((a, b) => a - b)) {
    while ((sides.get(start)?.length ?? 0) > 0) rings.push(walkRing(grid, sides, start));
  }
  return rings;
}

/** Follows sides from a corner back to it, turning left where two rings touch, and keeps the corners where it bends. */
function walkRing(grid: FloorGrid, sides: Map<number, number[]>, start: number): Point[] {
  const across = grid.columns + 1;
  const left = (step: number): number =>
    step === 1 ? across : step === across ? -1 : step === -1 ? -across : 1;
  const corners: number[] = [];
  let at = start;
  let step = 0;
  let firstStep = 0;
  do {
    const ends = sides.get(at)!;
    const place = Math.max(0, step === 0 ? 0 : ends.indexOf(at + left(step)));
    const next = ends[place]!;
    ends.splice(place, 1);
    if (next - at !== step) corners.push(at);
    step = next - at;
    firstStep ||= step;
    at = next;
  } while (at !== start);
  if (step === firstStep) corners.shift();
  return corners.map((corner) => ({
    xM: grid.minXM + (corner % across) * grid.cellM,
    yM: grid.minYM + Math.floor(corner / across) * grid.cellM,
  }));
}
