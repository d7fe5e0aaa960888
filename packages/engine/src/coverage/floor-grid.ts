import type { Point } from '../geometry/point.ts';
import { EngineError } from '../numerics/engine-error.ts';
import { requireRange } from '../numerics/require-range.ts';
import type { CompiledScene } from './compiled-scene.ts';

/** The floor in square cells, one bit each, row by row from the least y, 32 columns to a word. */
export interface FloorGrid {
  readonly cellM: number;
  readonly minXM: number;
  readonly minYM: number;
  readonly columns: number;
  readonly rows: number;
  readonly wordsPerRow: number;
  /** Cells whose middle is floor that can be seen in principle. */
  readonly floor: Uint32Array;
  readonly floorCells: number;
}

/** Side of a cell unless asked otherwise, m. */
export const CELL_M = 0.1;
/** More cells than this are a slip in the units, not a crawl space. */
const MOST_CELLS = 4_000_000;

/**
 * Cells over the floor of a scene: within the walls, outside piers, interior walls and the footprints of obstacles.
 * @throws EngineError `out-of-range` for cells not from 0.02 to 1 m, or so many that the plan must be far too large
 */
export function floorGrid({ solids, bars }: CompiledScene, cellM: number): FloorGrid {
  requireRange('side of a cell (m)', cellM, 0.02, 1);
  const { box } = solids;
  const columns = Math.max(1, Math.ceil((box.maxXM - box.minXM) / cellM));
  const rows = Math.max(1, Math.ceil((box.maxYM - box.minYM) / cellM));
  if (columns * rows > MOST_CELLS) {
    throw new EngineError(
      'out-of-range',
      `outline: ${columns} by ${rows} cells of ${cellM} m are too many; check its units or take larger cells`,
    );
  }
  const wordsPerRow = Math.ceil(columns / 32);
  const floor = new Uint32Array(rows * wordsPerRow);
  const grid = {
    cellM,
    minXM: box.minXM,
    minYM: box.minYM,
    columns,
    rows,
    wordsPerRow,
    floor,
    floorCells: 0,
  };
  const filler = ringFiller(grid);
  filler.add(solids.outline, floor);
  for (const { kind, ring } of solids.rings) if (kind !== 'low') filler.remove(ring, floor);
  for (const { kind, ring } of bars) if (kind === 'obstacle') filler.remove(ring, floor);
  return { ...grid, floorCells: countBits(floor) };
}

/**
 * Sets or clears the cells whose middles lie inside a ring (even-odd). Bits past the last column of a row may be set
 * too: mask with `floor`.
 */
export interface RingFiller {
  add(ring: readonly Point[], bits: Uint32Array): void;
  remove(ring: readonly Point[], bits: Uint32Array): void;
}

/**
 * Fills rings into bits of a grid. Each side of the ring turns the bit where it crosses a row of middles; running the
 * turns along the row, a word at a time, gives inside and outside.
 */
export function ringFiller(
  grid: Pick<FloorGrid, 'cellM' | 'minXM' | 'minYM' | 'rows' | 'wordsPerRow'>,
): RingFiller {
  const { cellM, minXM, minYM, rows, wordsPerRow } = grid;
  const turns = new Uint32Array(rows * wordsPerRow);

  /** Marks the turns; returns the rows that have any. */
  const mark = (ring: readonly Point[]): { first: number; end: number } => {
    let first = rows;
    let end = 0;
    for (let i = 0, j = ring.length - 1; i < ring.length; j = i, i += 1) {
      const up = ring[j]!.yM < ring[i]!.yM;
      const low = up ? ring[j]! : ring[i]!;
      const high = up ? ring[i]! : ring[j]!;
      const from = Math.max(0, Math.ceil((low.yM - minYM) / cellM - 0.5));
      const to = Math.min(rows, Math.ceil((high.yM - minYM) / cellM - 0.5));
      if (to <= from) continue;
      if (from < first) first = from;
      if (to > end) end = to;
      const slope = (high.xM - low.xM) / (high.yM - low.yM);
      for (let row = from; row < to; row += 1) {
        const x = low.xM + (minYM + (row + 0.5) * cellM - low.yM) * slope;
        const column = Math.max(0, Math.ceil((x - minXM) / cellM - 0.5));
        if (column < wordsPerRow * 32) turns[row * wordsPerRow + (column >>> 5)]! ^= 1 << (column & 31);
      }
    }
    return { first, end };
  };

  const fill = (ring: readonly Point[], bits: Uint32Array, set: boolean): void => {
    const { first, end } = mark(ring);
    for (let row = first; row < end; row += 1) {
      let carry = 0;
      for (let word = row * wordsPerRow; word < (row + 1) * wordsPerRow; word += 1) {
        let run = turns[word]!;
        turns[word] = 0;
        run ^= run << 1;
        run ^= run << 2;
        run ^= run << 4;
        run ^= run << 8;
        run ^= run << 16;
        run ^= carry;
        carry = run >> 31;
        if (set) bits[word]! |= run;
        else bits[word]! &= ~run;
      }
    }
  };
  return {
    add: (ring, bits) => fill(ring, bits, true),
    remove: (ring, bits) => fill(ring, bits, false),
  };
}

/** Number of bits that are set. */
export function countBits(bits: Uint32Array): number {
  let count = 0;
  for (let i = 0; i < bits.length; i += 1) count += onesIn(bits[i]!);
  return count;
}

/** Number of ones in a 32-bit word (parallel count, from memory). */
export function onesIn(word: number): number {
  let v = word - ((word >>> 1) & 0x55555555);
  v = (v & 0x33333333) + ((v >>> 2) & 0x33333333);
  return Math.imul((v + (v >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}

/** Column of a place along x, row along y; may lie outside the grid. */
export function cellOf(grid: FloorGrid, at: Point): { column: number; row: number } {
  return {
    column: Math.floor((at.xM - grid.minXM) / grid.cellM),
    row: Math.floor((at.yM - grid.minYM) / grid.cellM),
  };
}

/** Middle of a cell. */
export function middleOf(grid: FloorGrid, column: number, row: number): Point {
  return { xM: grid.minXM + (column + 0.5) * grid.cellM, yM: grid.minYM + (row + 0.5) * grid.cellM };
}
