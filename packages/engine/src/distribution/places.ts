import { isInsideRing } from '../coverage/rings.ts';
import { distanceM, type Point } from '../geometry/point.ts';
import { signedAreaM2 } from '../geometry/polygon-area.ts';
import { EngineError } from '../numerics/engine-error.ts';
import { cutCells, middleOf } from './field-grid.ts';
import type { FieldMesh } from './mesh.ts';

/** Where something gives or takes water or heat. */
export type FieldPlace =
  /** The whole floor, or what lies within a polygon; less what lies within any of `except`. */
  | {
      readonly kind: 'floor';
      readonly within?: readonly Point[];
      readonly except?: readonly (readonly Point[])[];
    }
  /** Along the outside walls, all or those of the given numbers; wall i runs from corner i of the outline. */
  | { readonly kind: 'walls'; readonly edges?: readonly number[] }
  | { readonly kind: 'line'; readonly from: Point; readonly to: Point }
  | { readonly kind: 'at'; readonly at: Point };

/** Cells of a place with their part of it: m² of floor, m of wall or line, 1 for a single place. */
export interface PlaceCells {
  readonly cells: Int32Array;
  readonly parts: Float64Array;
  readonly total: number;
}

/** How far from a marked place the nearest open cell may lie, m. */
const SLIP_M = 1;
/** Cells along a wall are sought this far inside it, in cells. */
const WALL_INSET = 0.25;
/** A cell that the edge of a zone cuts is looked at in so many places each way. */
const SAMPLES = 5;

/**
 * The cell of a place, or the nearest within 1 m when the place lies in a wall, a pier, or just outside.
 * @throws EngineError `bad-geometry` when there is none
 */
export function cellOfPlace(mesh: FieldMesh, at: Point, name: string): number {
  const cell = nearestCell(mesh, at, SLIP_M);
  if (cell < 0) {
    throw new EngineError(
      'bad-geometry',
      `${name}: (${at.xM}, ${at.yM}) lies more than ${SLIP_M} m from any open floor; move it inside the walls`,
    );
  }
  return cell;
}

/** The cell of a place, or the nearest whose middle is within reach; -1 for none. */
export function nearestCell({ grid, cellAt }: FieldMesh, at: Point, reachM: number): number {
  // A place on a line of the grid belongs to the cell above it, whatever rounding says.
  const column = Math.floor((at.xM - grid.minXM) / grid.cellXM + 1e-9);
  const row = Math.floor((at.yM - grid.minYM) / grid.cellYM + 1e-9);
  const cellAtPlace = (c: number, r: number): number =>
    c < 0 || r < 0 || c >= grid.columns || r >= grid.rows ? -1 : cellAt[r * grid.columns + c]!;
  const own = cellAtPlace(column, row);
  if (own >= 0) return own;
  const rings = Math.ceil(reachM / Math.min(grid.cellXM, grid.cellYM)) + 1;
  let best = -1;
  let least = reachM + Math.max(grid.cellXM, grid.cellYM) / 2;
  for (let r = row - rings; r <= row + rings; r += 1) {
    for (let c = column - rings; c <= column + rings; c += 1) {
      const cell = cellAtPlace(c, r);
      if (cell < 0) continue;
      const away = distanceM(at, middleOf(grid, c, r));
      if (away < least) {
        least = away;
        best = cell;
      }
    }
  }
  return best;
}

/**
 * Cells of a place with their parts of it.
 * @throws EngineError `bad-geometry` for a place that lies nowhere on the open floor
 */
export function placeCells(mesh: FieldMesh, place: FieldPlace, name: string): PlaceCells {
  const parts = new Float64Array(mesh.count);
  if (place.kind === 'floor') addFloor(mesh, place, parts);
  else if (place.kind === 'line') addLine(mesh, place.from, place.to, 0, parts);
  else if (place.kind === 'walls') addWalls(mesh, place.edges, parts);
  else parts[cellOfPlace(mesh, place.at, name)] = 1;
  const cells = Int32Array.from([...parts.keys()].filter((cell) => parts[cell]! > 0));
  const own = Float64Array.from(cells, (cell) => parts[cell]!);
  const total = own.reduce((sum, part) => sum + part, 0);
  if (total === 0 && place.kind !== 'floor') {
    throw new EngineError('bad-geometry', `${name}: lies nowhere on the open floor; check its place`);
  }
  return { cells, parts: own, total };
}

function addFloor(
  mesh: FieldMesh,
  { within, except = [] }: Extract<FieldPlace, { kind: 'floor' }>,
  parts: Float64Array,
): void {
  const { grid, count, column, row, areaM2 } = mesh;
  if (within === undefined && except.length === 0) {
    parts.set(areaM2);
    return;
  }
  const cut = new Uint8Array(grid.columns * grid.rows);
  for (const ring of [...(within === undefined ? [] : [within]), ...except]) {
    cutCells(grid, ring).forEach((touched, place) => {
      if (touched === 1) cut[place] = 1;
    });
  }
  const belongs = (x: number, y: number): boolean =>
    (within === undefined || isInsideRing(x, y, within)) && !except.some((ring) => isInsideRing(x, y, ring));
  for (let cell = 0; cell < count; cell += 1) {
    const minX = grid.minXM + column[cell]! * grid.cellXM;
    const minY = grid.minYM + row[cell]! * grid.cellYM;
    if (cut[row[cell]! * grid.columns + column[cell]!] === 0) {
      if (belongs(minX + grid.cellXM / 2, minY + grid.cellYM / 2)) parts[cell] = areaM2[cell]!;
      continue;
    }
    let inside = 0;
    let open = 0;
    for (let i = 0; i < SAMPLES; i += 1) {
      for (let j = 0; j < SAMPLES; j += 1) {
        const x = minX + ((i + 0.5) / SAMPLES) * grid.cellXM;
        const y = minY + ((j + 0.5) / SAMPLES) * grid.cellYM;
        if (!isInsideRing(x, y, mesh.outline)) continue;
        open += 1;
        if (belongs(x, y)) inside += 1;
      }
    }
    // A sliver that no sample hits goes by its middle.
    const share = open > 0 ? inside / open : belongs(minX + grid.cellXM / 2, minY + grid.cellYM / 2) ? 1 : 0;
    parts[cell] = areaM2[cell]! * share;
  }
}

function addWalls(mesh: FieldMesh, edges: readonly number[] | undefined, parts: Float64Array): void {
  const { outline } = mesh;
  const inset = signedAreaM2(outline) < 0 ? -WALL_INSET : WALL_INSET;
  outline.forEach((from, i) => {
    if (edges !== undefined && !edges.includes(i)) return;
    addLine(mesh, from, outline[(i + 1) % outline.length]!, inset, parts);
  });
}

/**
 * Adds to each cell the length of a line that runs through it.
 * @param inset how far to the left of the line its cells are sought, in cells
 */
function addLine(mesh: FieldMesh, from: Point, to: Point, inset: number, parts: Float64Array): void {
  const { grid } = mesh;
  const length = distanceM(from, to);
  if (length === 0) return;
  const dx = (to.xM - from.xM) / length;
  const dy = (to.yM - from.yM) / length;
  const cuts = [0, length];
  const addCuts = (start: number, direction: number, min: number, cell: number, most: number): void => {
    if (Math.abs(direction) < 1e-12) return;
    for (let k = 0; k <= most; k += 1) {
      const at = (min + k * cell - start) / direction;
      if (at > 0 && at < length) cuts.push(at);
    }
  };
  addCuts(from.xM, dx, grid.minXM, grid.cellXM, grid.columns);
  addCuts(from.yM, dy, grid.minYM, grid.cellYM, grid.rows);
  cuts.sort((a, b) => a - b);
  const off = inset * Math.min(grid.cellXM, grid.cellYM);
  for (let k = 0; k + 1 < cuts.length; k += 1) {
    const piece = cuts[k + 1]! - cuts[k]!;
    if (piece <= 1e-12) continue;
    const middle = (cuts[k]! + cuts[k + 1]!) / 2;
    const at = { xM: from.xM + middle * dx - off * dy, yM: from.yM + middle * dy + off * dx };
    const cell = nearestCell(mesh, at, SLIP_M);
    if (cell >= 0) parts[cell] = parts[cell]! + piece;
  }
}
