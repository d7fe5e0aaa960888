import type { Point } from '../geometry/point.ts';
import { costQueue } from './cost-queue.ts';
import { middleOf } from './floor-grid.ts';
import type { PassableFloor } from './passable-floor.ts';

/** The shortest ways from one cell to all others. */
export interface Ways {
  /** Length to each cell [m]; infinity where no way leads. */
  readonly lengthM: Float64Array;
  /** The cell from which each cell is reached in a straight line; the start itself for the start, -1 for no way. */
  readonly from: Int32Array;
}

/**
 * Shortest ways over passable cells in any direction, not only along the grid: a cell is reached in a straight line
 * from the place where its neighbor's way last bent, when that line passes over passable cells only, else from the
 * best neighbor (the lazy any-angle form of Dijkstra's search, from memory). Such ways bend at the corners of what is
 * in the way; they are a little longer than the shortest, most by a tenth of a percent, a few by some percent where
 * two corners are near; `wayTo` pulls them tight.
 */
export function waysFrom(floor: PassableFloor, start: number, goals?: readonly number[]): Ways {
  const { grid, open, columnOf, rowOf } = floor;
  const { columns, rows, cellM } = grid;
  const length = new Float64Array(open.length).fill(Number.POSITIVE_INFINITY);
  const from = new Int32Array(open.length).fill(-1);
  const done = new Uint8Array(open.length);
  const queue = costQueue();
  const wanted = goals && new Set(goals);
  length[start] = 0;
  from[start] = start;
  queue.add(start, 0);
  const apart = (a: number, b: number): number => {
    const dc = columnOf[a]! - columnOf[b]!;
    const dr = rowOf[a]! - rowOf[b]!;
    return Math.sqrt(dc * dc + dr * dr) * cellM;
  };
  for (let cell = queue.take(); cell >= 0; cell = queue.take()) {
    if (done[cell] === 1) continue;
    const column = columnOf[cell]!;
    const row = rowOf[cell]!;
    if (!isLineOpen(floor, from[cell]!, cell)) {
      length[cell] = Number.POSITIVE_INFINITY;
      for (let dr = -1; dr <= 1; dr += 1) {
        for (let dc = -1; dc <= 1; dc += 1) {
          const near = cell + dr * columns + dc;
          if (column + dc < 0 || column + dc >= columns || row + dr < 0 || row + dr >= rows) continue;
          if (done[near] === 0) continue;
          // Straight from where the neighbor's way last bent, or else from the neighbor.
          const bend = from[near]!;
          const straight = length[bend]! + apart(bend, cell);
          if (straight < length[cell]! && isLineOpen(floor, bend, cell)) {
            length[cell] = straight;
            from[cell] = bend;
          }
          const total = length[near]! + apart(near, cell);
          if (total < length[cell]! && isLineOpen(floor, near, cell)) {
            length[cell] = total;
            from[cell] = near;
          }
        }
      }
    }
    done[cell] = 1;
    if (wanted?.delete(cell) && wanted.size === 0) break;
    const bend = from[cell]!;
    for (let dr = -1; dr <= 1; dr += 1) {
      for (let dc = -1; dc <= 1; dc += 1) {
        if (column + dc < 0 || column + dc >= columns || row + dr < 0 || row + dr >= rows) continue;
        const next = cell + dr * columns + dc;
        // Nothing new when the way there bends at the same place already.
        if (open[next] === 0 || done[next] === 1 || from[next] === bend) continue;
        // Past a corner one does not squeeze.
        if (dr !== 0 && dc !== 0 && (open[cell + dc] === 0 || open[cell + dr * columns] === 0)) continue;
        const total = length[bend]! + apart(bend, next);
        if (total >= length[next]! - 1e-12) continue;
        length[next] = total;
        from[next] = bend;
        queue.add(next, total);
      }
    }
  }
  return { lengthM: length, from };
}

/** How far a bend is moved to make a way shorter, in cells. */
const SHIFT_CELLS = 2;

/**
 * The way to a cell as the places where it bends, start and end included, pulled tight: bends that are not needed are
 * left out, others are moved by a cell or two, alone or two into one, as long as that makes it shorter. Empty where
 * no way leads.
 */
export function wayTo(floor: PassableFloor, ways: Ways, cell: number): Point[] {
  if (ways.from[cell]! < 0) return [];
  const way = [cell];
  while (ways.from[way.at(-1)!] !== way.at(-1)) way.push(ways.from[way.at(-1)!]!);
  way.reverse();
  for (let better = true; better; ) {
    better = false;
    for (let i = 1; i + 1 < way.length; i += 1) {
      for (const count of [2, 1]) {
        if (i + count >= way.length) continue;
        const bends = shorterBends(floor, way[i - 1]!, way.slice(i, i + count), way[i + count]!);
        if (bends === null) continue;
        way.splice(i, count, ...bends);
        better = true;
        break;
      }
    }
  }
  const { grid, columnOf, rowOf } = floor;
  return way.map((c) => middleOf(grid, columnOf[c]!, rowOf[c]!));
}

/** None or one bend that makes the way from a to b shorter than by the bends it has; null when there is no such. */
function shorterBends(floor: PassableFloor, a: number, bends: readonly number[], b: number): number[] | null {
  if (isLineOpen(floor, a, b)) return [];
  const { grid, open, columnOf, rowOf } = floor;
  const apart = (p: number, q: number): number =>
    Math.hypot(columnOf[p]! - columnOf[q]!, rowOf[p]! - rowOf[q]!);
  const stops = [a, ...bends, b];
  let least = -1e-9;
  for (let i = 1; i < stops.length; i += 1) least += apart(stops[i - 1]!, stops[i]!);
  let best = -1;
  for (const bend of bends) {
    for (let row = rowOf[bend]! - SHIFT_CELLS; row <= rowOf[bend]! + SHIFT_CELLS; row += 1) {
      for (let column = columnOf[bend]! - SHIFT_CELLS; column <= columnOf[bend]! + SHIFT_CELLS; column += 1) {
        if (row < 0 || column < 0 || row >= grid.rows || column >= grid.columns) continue;
        const cell = row * grid.columns + column;
        if (open[cell] === 0) continue;
        const total = apart(a, cell) + apart(cell, b);
        if (total >= least || !isLineOpen(floor, a, cell) || !isLineOpen(floor, cell, b)) continue;
        least = total;
        best = cell;
      }
    }
  }
  return best < 0 ? null : [best];
}

/** Whether the straight line between the middles of two cells touches passable cells only. */
export function isLineOpen(
  { grid, open, columnOf, rowOf }: PassableFloor,
  start: number,
  end: number,
): boolean {
  const { columns } = grid;
  let cell = start;
  const across = Math.abs(columnOf[end]! - columnOf[start]!);
  const up = Math.abs(rowOf[end]! - rowOf[start]!);
  const right = columnOf[end]! > columnOf[start]! ? 1 : -1;
  const above = rowOf[end]! > rowOf[start]! ? columns : -columns;
  let lead = across - up;
  for (let left = across + up; ; left -= 1) {
    if (open[cell] === 0) return false;
    if (left <= 0) return true;
    if (lead > 0) {
      cell += right;
      lead -= 2 * up;
    } else if (lead < 0) {
      cell += above;
      lead += 2 * across;
    } else {
      // Right through a corner of four cells: both beside it must be open.
      if (open[cell + right] === 0 || open[cell + above] === 0) return false;
      cell += right + above;
      lead += 2 * (across - up);
      left -= 1;
    }
  }
}
