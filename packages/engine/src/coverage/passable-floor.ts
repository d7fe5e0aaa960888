import { boundingBox } from '../geometry/bounding-box.ts';
import { distanceM, type Point } from '../geometry/point.ts';
import { distanceToSegmentM } from '../geometry/segment-distance.ts';
import { segmentMeeting } from '../geometry/segment-intersection.ts';
import { requireRange } from '../numerics/require-range.ts';
import { clearHeightAtM } from '../plan/clear-height.ts';
import type { Bar } from './bars.ts';
import type { CompiledScene } from './compiled-scene.ts';
import { cellOf, type FloorGrid, floorGrid, middleOf, ringFiller } from './floor-grid.ts';
import { standingPlace } from './standing-place.ts';

/** The person who crawls. */
export interface Crawler {
  /**
   * Height needed to pass under something [m], 0.1 to 3; 0.4 by default, about the 16 in of the smallest access
   * opening of the house codes (IRC R408.4, 407 by 610 mm, quoted).
   */
  readonly clearanceM?: number;
  /** Width needed to pass between things [m], 0.1 to 3; 0.5 by default. Common practice, no source. */
  readonly bodyWidthM?: number;
  /** Places that nobody is to enter: wires, standing water, loose masonry. */
  readonly noGo?: readonly (readonly Point[])[];
}

/** Cells through which the middle of a body can pass. */
export interface PassableFloor {
  readonly grid: FloorGrid;
  /** 1 for a passable cell, by row times columns plus column. */
  readonly open: Uint8Array;
  /** Column and row of each cell. */
  readonly columnOf: Int32Array;
  readonly rowOf: Int32Array;
}

/** The crawler that is assumed; see `Crawler`. */
export const USUAL_CRAWLER = { clearanceM: 0.4, bodyWidthM: 0.5 } as const;

/** Something lower than this is crawled over, m. Common practice, no source. */
const CRAWLED_OVER_M = 0.15;
/** Side of the cells in which a way is sought, m. */
const WAY_CELL_M = 0.1;

/**
 * Where a crawler can pass: at least half a body's width from walls, piers, obstacles, ducts and girders too low to
 * pass under, and no-go places, and where the joists leave the clearance. Things on the floor that are lower than
 * 0.15 m are crawled over. A duct whose clearance nobody gave is not passed.
 * @throws EngineError `out-of-range` or `not-finite` for sizes that make no sense
 */
export function passableFloor(compiled: CompiledScene, crawler: Crawler): PassableFloor {
  const clearanceM = requireRange('clearance (m)', crawler.clearanceM ?? USUAL_CRAWLER.clearanceM, 0.1, 3);
  const halfM = requireRange('body width (m)', crawler.bodyWidthM ?? USUAL_CRAWLER.bodyWidthM, 0.1, 3) / 2;
  const grid = floorGrid(compiled, WAY_CELL_M);
  const { solids, blockers: b, bars, scene } = compiled;
  const filler = ringFiller(grid);
  const bits = new Uint32Array(grid.floor.length);
  filler.add(solids.outline, bits);
  for (const { ring } of solids.rings) filler.remove(ring, bits);
  const shut = [
    ...bars.filter((bar) => shutsTheWay(bar, clearanceM)).map((bar) => bar.ring),
    ...(crawler.noGo ?? []),
  ];
  for (const ring of shut) filler.remove(ring, bits);
  const open = new Uint8Array(grid.columns * grid.rows);
  const columnOf = Int32Array.from(open, (_, cell) => cell % grid.columns);
  const rowOf = Int32Array.from(open, (_, cell) => Math.floor(cell / grid.columns));
  for (let row = 0; row < grid.rows; row += 1) {
    for (let column = 0; column < grid.columns; column += 1) {
      const word = bits[row * grid.wordsPerRow + (column >>> 5)]!;
      open[row * grid.columns + column] = (word >>> (column & 31)) & 1;
    }
  }
  for (let i = 0; i < b.count; i += 1) {
    keepOff(grid, open, { xM: b.ax[i]!, yM: b.ay[i]! }, { xM: b.bx[i]!, yM: b.by[i]! }, halfM);
  }
  for (const ring of shut) {
    ring.forEach((from, i) => {
      keepOff(grid, open, from, ring[(i + 1) % ring.length]!, halfM);
    });
  }
  const heights = scene.clearHeights ?? [];
  if (heights.some((sample) => sample.clearHeightM < clearanceM)) {
    for (let cell = 0; cell < open.length; cell += 1) {
      if (open[cell] === 0) continue;
      const at = middleOf(grid, columnOf[cell]!, rowOf[cell]!);
      if (clearHeightAtM(heights, at) < clearanceM) open[cell] = 0;
    }
  }
  return { grid, open, columnOf, rowOf };
}

function shutsTheWay({ undersideM, topM }: Bar, clearanceM: number): boolean {
  return undersideM < clearanceM && topM > CRAWLED_OVER_M;
}

/** Shuts the cells whose middles are nearer to a segment than half a body's width. */
function keepOff(grid: FloorGrid, open: Uint8Array, a: Point, b: Point, halfM: number): void {
  const box = boundingBox([a, b])!;
  const low = cellOf(grid, { xM: box.minXM - halfM, yM: box.minYM - halfM });
  const high = cellOf(grid, { xM: box.maxXM + halfM, yM: box.maxYM + halfM });
  for (let row = Math.max(0, low.row); row <= Math.min(grid.rows - 1, high.row); row += 1) {
    for (
      let column = Math.max(0, low.column);
      column <= Math.min(grid.columns - 1, high.column);
      column += 1
    ) {
      const cell = row * grid.columns + column;
      if (open[cell] === 1 && distanceToSegmentM(middleOf(grid, column, row), a, b) < halfM) open[cell] = 0;
    }
  }
}

/**
 * The passable cell nearest to a place, with nothing solid between, or -1 when there is none within reach. A mark
 * that slipped a little into a wall is taken for a place before it (`standingPlace`).
 * @param reachM how far the cell's middle may be from the place, m
 */
export function nearestPassable(
  { grid, open, columnOf, rowOf }: PassableFloor,
  compiled: CompiledScene,
  mark: Point,
  reachM: number,
): number {
  const b = compiled.blockers;
  const at = standingPlace(compiled, mark) ?? mark;
  const { column, row } = cellOf(grid, at);
  const cells = Math.ceil(reachM / grid.cellM);
  const near: { cell: number; away: number }[] = [];
  for (let r = Math.max(0, row - cells); r <= Math.min(grid.rows - 1, row + cells); r += 1) {
    for (let c = Math.max(0, column - cells); c <= Math.min(grid.columns - 1, column + cells); c += 1) {
      const cell = r * grid.columns + c;
      if (open[cell] === 0) continue;
      const away = distanceM(at, middleOf(grid, c, r));
      if (away <= reachM) near.push({ cell, away });
    }
  }
  near.sort((p, q) => p.away - q.away || p.cell - q.cell);
  for (const { cell } of near) {
    const place = middleOf(grid, columnOf[cell]!, rowOf[cell]!);
    let clear = true;
    for (let i = 0; i < b.count && clear; i += 1) {
      const from = { xM: b.ax[i]!, yM: b.ay[i]! };
      clear = segmentMeeting(at, place, from, { xM: b.bx[i]!, yM: b.by[i]! }).kind !== 'cross';
    }
    if (clear) return cell;
  }
  return -1;
}
