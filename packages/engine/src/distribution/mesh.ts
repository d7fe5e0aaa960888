import { isInsideRing } from '../coverage/rings.ts';
import { boundingBox } from '../geometry/bounding-box.ts';
import type { Point } from '../geometry/point.ts';
import { polygonAreaM2 } from '../geometry/polygon-area.ts';
import { EngineError } from '../numerics/engine-error.ts';
import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import { clearHeightAtM } from '../plan/clear-height.ts';
import { pierFootprint } from '../plan/floor-areas.ts';
import { barriersOf } from './barriers.ts';
import { areaInBoxM2, lengthInsideM } from './clip-cell.ts';
import { boxOf, cutCells, type FieldGrid, middleOf, overBox } from './field-grid.ts';
import type { FieldPlan } from './field-plan.ts';
import { type MeshFaces, meshFaces } from './mesh-faces.ts';

/** The floor of a crawl space in cells. */
export interface FieldMesh extends MeshFaces {
  readonly grid: FieldGrid;
  /** Number of the cell at row times columns plus column; -1 where there is no floor. */
  readonly cellAt: Int32Array;
  readonly count: number;
  readonly column: Int32Array;
  readonly row: Int32Array;
  /** Floor in each cell; cells that a wall or pier cuts have less than a whole one. */
  readonly areaM2: Float64Array;
  readonly heightM: Float64Array;
  readonly floorM2: number;
  readonly volumeM3: number;
  /** Corners of the outside walls, as given. */
  readonly outline: readonly Point[];
  readonly notices: readonly Notice[];
}

/** Side of the cells unless asked otherwise, m. */
export const CELL_M = 0.25;
/** Side of the cells of the final map, m. */
export const FINE_CELL_M = 0.125;
/** More cells than this are a slip in the units, not a crawl space. */
const MOST_CELLS = 2_000_000;
/** Less of a cell than this is rounding. */
const LEAST_SHARE = 1e-3;
/** Lower than this there is no room for air to move, m. Common practice, no source. */
const LEAST_HEIGHT_M = 0.05;

/**
 * Divides the floor of a plan into cells of about the asked size; the grid is fitted to the plan's extent. Walls and
 * piers cut cells to what is open of them, so the floor area is that of the plan.
 * @param cellM side of a cell [m], 0.02 to 2
 * @throws EngineError `bad-geometry` for an outline without area or without a clear height, `out-of-range` or
 *   `not-finite` for sizes that make no sense
 */
export function fieldMesh(plan: FieldPlan, cellM: number = CELL_M): FieldMesh {
  requireRange('side of a cell (m)', cellM, 0.02, 2);
  const box = boundingBox(plan.outline);
  if (box === null || plan.outline.length < 3 || polygonAreaM2(plan.outline) <= 1e-9) {
    throw new EngineError('bad-geometry', 'outline: must have at least 3 corners and enclose an area');
  }
  const { outline } = plan;
  const columns = Math.max(1, Math.ceil((box.maxXM - box.minXM) / cellM - 1e-9));
  const rows = Math.max(1, Math.ceil((box.maxYM - box.minYM) / cellM - 1e-9));
  if (columns * rows > MOST_CELLS) {
    throw new EngineError(
      'out-of-range',
      `outline: ${columns} by ${rows} cells of ${cellM} m are too many; check its units or take larger cells`,
    );
  }
  const grid = {
    minXM: box.minXM,
    minYM: box.minYM,
    cellXM: (box.maxXM - box.minXM) / columns,
    cellYM: (box.maxYM - box.minYM) / rows,
    columns,
    rows,
  };
  const solids = [
    ...(plan.piers ?? []).map(pierFootprint),
    ...(plan.obstacles ?? []).filter((o) => o.heightM === undefined).map((o) => o.outline),
  ];
  const share = openShares(grid, outline, solids);
  const height = heights(grid, plan, share);
  const cellAt = new Int32Array(columns * rows).fill(-1);
  const places: number[] = [];
  for (let place = 0; place < cellAt.length; place += 1) {
    if (share[place]! < LEAST_SHARE || height[place]! < LEAST_HEIGHT_M) continue;
    cellAt[place] = places.length;
    places.push(place);
  }
  if (places.length === 0) {
    throw new EngineError(
      'bad-geometry',
      'outline: no open floor is left between walls, piers and obstacles',
    );
  }
  const cellArea = grid.cellXM * grid.cellYM;
  const column = Int32Array.from(places, (place) => place % columns);
  const row = Int32Array.from(places, (place) => Math.floor(place / columns));
  const areaM2 = Float64Array.from(places, (place) => share[place]! * cellArea);
  const heightM = Float64Array.from(places, (place) => height[place]!);
  let floorM2 = 0;
  let volumeM3 = 0;
  for (let i = 0; i < areaM2.length; i += 1) {
    floorM2 += areaM2[i]!;
    volumeM3 += areaM2[i]! * heightM[i]!;
  }
  const { barriers, notices } = barriersOf(plan);
  const faces = meshFaces({
    grid,
    cellAt,
    column,
    row,
    areaM2,
    heightM,
    barriers,
    openLengthM: openLengths(grid, share, outline, solids),
  });
  return {
    ...faces,
    grid,
    cellAt,
    count: places.length,
    column,
    row,
    areaM2,
    heightM,
    floorM2,
    volumeM3,
    outline,
    notices,
  };
}

/** Open share of each place of the grid: within the outline and outside everything solid. */
function openShares(
  grid: FieldGrid,
  outline: readonly Point[],
  solids: readonly (readonly Point[])[],
): Float64Array {
  const { columns, rows } = grid;
  const cellArea = grid.cellXM * grid.cellYM;
  const share = new Float64Array(columns * rows);
  const cut = cutCells(grid, outline);
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const place = row * columns + column;
      if (cut[place] === 1) share[place] = areaInBoxM2(outline, boxOf(grid, column, row)) / cellArea;
      else {
        const middle = middleOf(grid, column, row);
        share[place] = isInsideRing(middle.xM, middle.yM, outline) ? 1 : 0;
      }
    }
  }
  for (const ring of solids) {
    overBox(grid, ring, (column, row) => {
      const place = row * columns + column;
      if (share[place] === 0) return;
      const taken = areaInBoxM2(ring, boxOf(grid, column, row)) / cellArea;
      const left = share[place]! - taken;
      share[place] = left < LEAST_SHARE ? 0 : left;
    });
  }
  return share;
}

/** Clear height of each place; obstacles of known height take theirs away where their footprint holds its middle. */
function heights(grid: FieldGrid, plan: FieldPlan, share: Float64Array): Float64Array {
  const samples = plan.clearHeights ?? [];
  const usual = plan.heightM;
  if (samples.length === 0 && usual === undefined) {
    throw new EngineError('bad-geometry', 'clear height: none was taken and no heightM is given');
  }
  if (usual !== undefined) requireRange('clear height (m)', usual, 0.1, 4);
  const height = new Float64Array(share.length);
  for (let row = 0; row < grid.rows; row += 1) {
    for (let column = 0; column < grid.columns; column += 1) {
      const place = row * grid.columns + column;
      if (share[place] === 0) continue;
      height[place] = samples.length === 0 ? usual! : clearHeightAtM(samples, middleOf(grid, column, row));
    }
  }
  for (const { outline, heightM } of plan.obstacles ?? []) {
    if (heightM === undefined) continue;
    overBox(grid, outline, (column, row) => {
      const middle = middleOf(grid, column, row);
      if (!isInsideRing(middle.xM, middle.yM, outline)) return;
      const place = row * grid.columns + column;
      height[place] = Math.max(0, height[place]! - heightM);
    });
  }
  return height;
}

/** Open length, m, of the side toward the next column (x) or row (y) of a place of the grid. */
function openLengths(
  grid: FieldGrid,
  share: Float64Array,
  outline: readonly Point[],
  solids: readonly (readonly Point[])[],
): (column: number, row: number, acrossX: boolean) => number {
  return (column, row, acrossX) => {
    const place = row * grid.columns + column;
    const full = acrossX ? grid.cellYM : grid.cellXM;
    if (share[place] === 1 && share[acrossX ? place + 1 : place + grid.columns] === 1) return full;
    const box = boxOf(grid, column, row);
    const [at, start] = acrossX ? [box.maxXM, box.minYM] : [box.maxYM, box.minXM];
    let length = lengthInsideM(outline, acrossX, at, start, start + full);
    for (const ring of solids) length -= lengthInsideM(ring, acrossX, at, start, start + full);
    return Math.max(0, length);
  };
}
