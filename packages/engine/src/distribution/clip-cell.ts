import type { Point } from '../geometry/point.ts';

/** An upright rectangle, m. */
export interface CellBox {
  readonly minXM: number;
  readonly minYM: number;
  readonly maxXM: number;
  readonly maxYM: number;
}

/**
 * Area that a polygon and an upright rectangle have in common, m² (Sutherland and Hodgman 1974, from memory). The
 * polygon may be hollow; parts of it that hang together only along an edge of the rectangle do no harm to the area.
 */
export function areaInBoxM2(ring: readonly Point[], box: CellBox): number {
  let xs = ring.map((p) => p.xM);
  let ys = ring.map((p) => p.yM);
  for (let side = 0; side < 4; side += 1) {
    const nextX: number[] = [];
    const nextY: number[] = [];
    const along = side < 2 ? xs : ys;
    const limit = [box.minXM, box.maxXM, box.minYM, box.maxYM][side]!;
    const keepAbove = side % 2 === 0;
    for (let i = 0, j = xs.length - 1; i < xs.length; j = i, i += 1) {
      const from = keepAbove ? along[j]! - limit : limit - along[j]!;
      const to = keepAbove ? along[i]! - limit : limit - along[i]!;
      if (from < 0 !== to < 0) {
        const t = from / (from - to);
        nextX.push(xs[j]! + t * (xs[i]! - xs[j]!));
        nextY.push(ys[j]! + t * (ys[i]! - ys[j]!));
      }
      if (to >= 0) {
        nextX.push(xs[i]!);
        nextY.push(ys[i]!);
      }
    }
    xs = nextX;
    ys = nextY;
    if (xs.length === 0) return 0;
  }
  let twice = 0;
  for (let i = 1; i + 1 < xs.length; i += 1) {
    twice += (xs[i]! - xs[0]!) * (ys[i + 1]! - ys[0]!) - (xs[i + 1]! - xs[0]!) * (ys[i]! - ys[0]!);
  }
  return Math.abs(twice) / 2;
}

/**
 * Length of an upright or level line inside a polygon, m (even-odd).
 * @param upright whether the line runs along y, at x = `at`
 */
export function lengthInsideM(
  ring: readonly Point[],
  upright: boolean,
  at: number,
  start: number,
  end: number,
): number {
  const crossings: number[] = [];
  let inside = false;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i, i += 1) {
    const across = upright ? ring[j]!.xM : ring[j]!.yM;
    const acrossNext = upright ? ring[i]!.xM : ring[i]!.yM;
    if (across > at === acrossNext > at) continue;
    const along = upright ? ring[j]!.yM : ring[j]!.xM;
    const alongNext = upright ? ring[i]!.yM : ring[i]!.xM;
    const crossing = along + ((at - across) * (alongNext - along)) / (acrossNext - across);
    if (crossing <= start) inside = !inside;
    else if (crossing < end) crossings.push(crossing);
  }
  crossings.sort((a, b) => a - b);
  let length = 0;
  let from = start;
  for (const crossing of [...crossings, end]) {
    if (inside) length += crossing - from;
    inside = !inside;
    from = crossing;
  }
  return length;
}

/**
 * Calls `visit` with column and row of every cell of a grid that a segment touches or nearly touches.
 * @param reach how near counts as touching, in cells
 */
export function cellsAlong(
  a: Point,
  b: Point,
  grid: { readonly minXM: number; readonly minYM: number; readonly cellXM: number; readonly cellYM: number },
  visit: (column: number, row: number) => void,
  reach = 1e-6,
): void {
  const [low, high] = a.yM <= b.yM ? [a, b] : [b, a];
  const x0 = (low.xM - grid.minXM) / grid.cellXM;
  const x1 = (high.xM - grid.minXM) / grid.cellXM;
  const y0 = (low.yM - grid.minYM) / grid.cellYM;
  const y1 = (high.yM - grid.minYM) / grid.cellYM;
  const xAt = (y: number): number =>
    y1 === y0 ? x0 : x0 + (x1 - x0) * Math.min(1, Math.max(0, (y - y0) / (y1 - y0)));
  for (let row = Math.floor(y0 - reach); row <= Math.floor(y1 + reach); row += 1) {
    const from = y1 === y0 ? x0 : xAt(row - reach);
    const to = y1 === y0 ? x1 : xAt(row + 1 + reach);
    const first = Math.floor(Math.min(from, to) - reach);
    const last = Math.floor(Math.max(from, to) + reach);
    for (let column = first; column <= last; column += 1) visit(column, row);
  }
}
