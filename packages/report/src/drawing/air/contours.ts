import type { FieldGridMap } from '@undercroft/assessment';
import type { Point } from '@undercroft/record';
import { contours } from 'd3-contour';

/** Rings in plan meters, outer ones and holes together (even-odd). */
export type Rings = readonly (readonly Point[])[];

/** Cells that are added around the floor, so that contours run out under the walls instead of along them. */
const PAD = 3;

/** The grid with a border, and values carried on into cells without floor from those beside them. */
function carriedOn({ columns, rows }: FieldGridMap, values: readonly (number | null)[]): Float64Array {
  const width = columns + 2 * PAD;
  const height = rows + 2 * PAD;
  const grid = new Float64Array(width * height).fill(Number.NaN);
  values.forEach((value, k) => {
    const at = (Math.floor(k / columns) + PAD) * width + (k % columns) + PAD;
    if (value !== null) grid[at] = value;
  });
  const steps = [1, -1, width, -width];
  for (let pass = 0; pass < PAD; pass += 1) {
    const before = grid.slice();
    for (let at = 0; at < grid.length; at += 1) {
      if (!Number.isNaN(before[at])) continue;
      const beside = steps
        .filter((s) => Math.abs(s) > 1 || Math.floor((at + s) / width) === Math.floor(at / width))
        .map((s) => before[at + s])
        .filter((v) => v !== undefined && !Number.isNaN(v));
      if (beside.length > 0) grid[at] = beside.reduce((sum, v) => sum + v, 0) / beside.length;
    }
  }
  // Where nothing was near there is no floor either; the lowest value draws nothing.
  const lowest = Math.min(...values.filter((v) => v !== null));
  return grid.map((v) => (Number.isNaN(v) ? lowest : v));
}

/**
 * Parts of the plan in which a field is at least each of some values. They reach a little over the floor: cut them off at
 * the outline.
 * @param values one for each cell of the map, null where there is no floor
 */
export function partsAbove(
  map: FieldGridMap,
  values: readonly (number | null)[],
  thresholds: readonly number[],
): ReadonlyMap<number, Rings> {
  if (values.every((v) => v === null)) return new Map();
  const { originXM, originYM, cellXM, cellYM, columns, rows } = map;
  const make = contours()
    .size([columns + 2 * PAD, rows + 2 * PAD])
    .thresholds([...thresholds]);
  const place = ([x, y]: readonly number[]): Point => ({
    xM: originXM + (x - PAD) * cellXM,
    yM: originYM + (y - PAD) * cellYM,
  });
  // The library takes any array of numbers; its types ask for a plain one.
  const made = make(carriedOn(map, values) as unknown as number[]);
  return new Map(made.map(({ value, coordinates }) => [value, coordinates.flat().map((r) => r.map(place))]));
}
