import type { Barrier } from './barriers.ts';
import { ACROSS_X, ACROSS_Y } from './cell-graph.ts';
import { cellsAlong } from './clip-cell.ts';
import type { FieldGrid } from './field-grid.ts';
import { joinedSpaces } from './joined-spaces.ts';
import { openingExchangeM2PerS } from './mixing.ts';

/** What lies between neighboring cells of a mesh. */
export interface MeshFaces {
  readonly faceA: Int32Array;
  readonly faceB: Int32Array;
  readonly faceAxis: Uint8Array;
  /** Open area over the distance that it has to be passed, m: times the mixing coefficient it is a conductance. */
  readonly opening: Float64Array;
  /** Air that trades places through an opening because of small differences of temperature, m³/s each way. */
  readonly exchangeM3PerS: Float64Array;
  /** Open share of the height, 0..1. */
  readonly openShare: Float64Array;
  /** Face of each cell toward the next column and the next row, -1 for none. */
  readonly faceRight: Int32Array;
  readonly faceUp: Int32Array;
  /** Bay of each cell: what hangs together through faces that are at least half open. */
  readonly bay: Int32Array;
  readonly bayVolumeM3: readonly number[];
}

interface FaceInput {
  readonly grid: FieldGrid;
  readonly cellAt: Int32Array;
  readonly column: Int32Array;
  readonly row: Int32Array;
  readonly areaM2: Float64Array;
  readonly heightM: Float64Array;
  readonly barriers: readonly Barrier[];
  readonly openLengthM: (column: number, row: number, acrossX: boolean) => number;
}

/** A face less open than this parts two bays. */
const BAY_SHARE = 0.5;

/** Faces between open cells, with what barriers leave of them. */
export function meshFaces(input: FaceInput): MeshFaces {
  const { grid, cellAt, column, row, heightM } = input;
  const count = column.length;
  const narrow = narrowings(input);
  const a: number[] = [];
  const b: number[] = [];
  const axis: number[] = [];
  const opening: number[] = [];
  const exchange: number[] = [];
  const share: number[] = [];
  const faceRight = new Int32Array(count).fill(-1);
  const faceUp = new Int32Array(count).fill(-1);
  const add = (from: number, to: number, acrossX: boolean): number => {
    const width = input.openLengthM(column[from]!, row[from]!, acrossX);
    if (width <= 1e-9) return -1;
    const height = (heightM[from]! + heightM[to]!) / 2;
    const distance = acrossX ? grid.cellXM : grid.cellYM;
    const narrowing = narrow.get(2 * (row[from]! * grid.columns + column[from]!) + (acrossX ? 0 : 1));
    const open = (height * width) / (distance + (narrowing?.extraM ?? 0));
    const trade = narrowing?.exchangeM3PerS ?? 0;
    if (open === 0 && trade === 0) return -1;
    a.push(from);
    b.push(to);
    axis.push(acrossX ? ACROSS_X : ACROSS_Y);
    opening.push(open);
    exchange.push(trade);
    share.push(narrowing?.openShare ?? 1);
    return a.length - 1;
  };
  for (let cell = 0; cell < count; cell += 1) {
    const place = row[cell]! * grid.columns + column[cell]!;
    const right = column[cell]! + 1 < grid.columns ? cellAt[place + 1]! : -1;
    if (right >= 0) faceRight[cell] = add(cell, right, true);
    const up = row[cell]! + 1 < grid.rows ? cellAt[place + grid.columns]! : -1;
    if (up >= 0) faceUp[cell] = add(cell, up, false);
  }
  const faces = {
    faceA: Int32Array.from(a),
    faceB: Int32Array.from(b),
    faceAxis: Uint8Array.from(axis),
    opening: Float64Array.from(opening),
    exchangeM3PerS: Float64Array.from(exchange),
    openShare: Float64Array.from(share),
    faceRight,
    faceUp,
  };
  return { ...faces, ...baysOf(faces, input) };
}

/** What barriers do to a face. */
interface Narrowing {
  /** Length of free passage with the same resistance, on top of the distance of the cells, m; infinite for closed. */
  readonly extraM: number;
  readonly exchangeM3PerS: number;
  readonly openShare: number;
}

/** Narrowed faces by two times the place of the cell that they belong to, one more for faces toward the next row. */
function narrowings({ grid, cellAt, heightM, barriers }: FaceInput): Map<number, Narrowing> {
  const found = new Map<number, Narrowing>();
  for (const barrier of barriers) {
    const { from, to } = barrier;
    const dx = to.xM - from.xM;
    const dy = to.yM - from.yM;
    const length = Math.hypot(dx, dy);
    if (length === 0) continue;
    // A slanting line becomes stairs: each of their faces stands for its part of the line.
    const span = length / (Math.abs(dx) / grid.cellXM + Math.abs(dy) / grid.cellYM);
    const side = (x: number, y: number): number => dx * (y - from.yM) - dy * (x - from.xM);
    const stretch = span / length;
    const seen = new Set<number>();
    const visit = (column: number, row: number): void => {
      if (column < 0 || row < 0 || column >= grid.columns || row >= grid.rows) return;
      const place = row * grid.columns + column;
      const cell = cellAt[place]!;
      if (cell < 0) return;
      const x = grid.minXM + (column + 0.5) * grid.cellXM;
      const y = grid.minYM + (row + 0.5) * grid.cellYM;
      for (const acrossX of [true, false]) {
        if (acrossX ? column + 1 >= grid.columns : row + 1 >= grid.rows) continue;
        const other = cellAt[acrossX ? place + 1 : place + grid.columns]!;
        const key = 2 * place + (acrossX ? 0 : 1);
        if (other < 0 || seen.has(key)) continue;
        seen.add(key);
        const here = side(x, y);
        const there = side(x + (acrossX ? grid.cellXM : 0), y + (acrossX ? 0 : grid.cellYM));
        if (here >= 0 === there >= 0) continue;
        const t = here / (here - there);
        const alongM =
          ((x + (acrossX ? t * grid.cellXM : 0) - from.xM) * dx +
            (y + (acrossX ? 0 : t * grid.cellYM) - from.yM) * dy) /
          length;
        const height = (heightM[cell]! + heightM[other]!) / 2;
        const distance = acrossX ? grid.cellXM : grid.cellYM;
        const width = acrossX ? grid.cellYM : grid.cellXM;
        const next = narrowingAt(barrier, alongM, span, height, distance, width);
        if (next !== null) found.set(key, combine(found.get(key), next));
      }
    };
    cellsAlong(
      { xM: from.xM - stretch * dx, yM: from.yM - stretch * dy },
      { xM: to.xM + stretch * dx, yM: to.yM + stretch * dy },
      grid,
      visit,
      1,
    );
  }
  return found;
}

/** What a barrier does to a face that stands for `spanM` of it around a place along it; null where it has ended. */
function narrowingAt(
  { pieces, depthM }: Barrier,
  alongM: number,
  spanM: number,
  heightM: number,
  distanceM: number,
  widthM: number,
): Narrowing | null {
  let covered = 0;
  let conductance = 0;
  let open = 0;
  let exchange = 0;
  for (const { startM, endM, openShare, trades } of pieces) {
    const overlap = Math.min(endM, alongM + spanM / 2) - Math.max(startM, alongM - spanM / 2);
    const part = overlap / spanM;
    if (part <= 1e-9) continue;
    const share = openShare(heightM);
    if (share >= 1 && trades === 'narrow') continue;
    covered += part;
    open += part * share;
    if (share > 0) conductance += part / (distanceM + ((1 / share - 1) * depthM * widthM) / spanM);
    if (trades !== 'never') exchange += overlap * openingExchangeM2PerS(share * heightM);
  }
  if (covered === 0) return null;
  const free = Math.max(0, 1 - covered);
  conductance += free / distanceM;
  return {
    extraM: conductance > 0 ? Math.max(0, 1 / conductance - distanceM) : Number.POSITIVE_INFINITY,
    exchangeM3PerS: exchange,
    openShare: open + free,
  };
}

/** Two barriers in one face, one behind the other. */
function combine(before: Narrowing | undefined, next: Narrowing): Narrowing {
  if (before === undefined) return next;
  return {
    extraM: before.extraM + next.extraM,
    exchangeM3PerS: Math.min(before.exchangeM3PerS, next.exchangeM3PerS),
    openShare: Math.min(before.openShare, next.openShare),
  };
}

function baysOf(
  faces: Pick<MeshFaces, 'faceA' | 'faceB' | 'opening' | 'openShare'>,
  { column, areaM2, heightM }: FaceInput,
): Pick<MeshFaces, 'bay' | 'bayVolumeM3'> {
  const joined = Uint8Array.from(faces.openShare, (share, f) =>
    share >= BAY_SHARE && faces.opening[f]! > 0 ? 1 : 0,
  );
  const bay = joinedSpaces(column.length, faces.faceA, faces.faceB, joined);
  const bayVolumeM3: number[] = [];
  bay.forEach((at, cell) => {
    bayVolumeM3[at] = (bayVolumeM3[at] ?? 0) + areaM2[cell]! * heightM[cell]!;
  });
  return { bay, bayVolumeM3 };
}
