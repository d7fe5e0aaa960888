import type { CoverProblem } from '../../src/coverage/cover-problem.ts';
import { visibleRegion } from '../../src/coverage/visible-region.ts';
import { partitionAreas } from '../../src/geometry/partition-areas.ts';
import type { Point } from '../../src/geometry/point.ts';

/** Slivers between lines of sight that only rounding tells apart, m². */
const SLIVER_M2 = 1e-5;

/**
 * The covering problem of an outline with a post in each corner, without a grid: the sight lines of all corners cut
 * the floor into pieces, and each piece is a row with the corners that see it.
 */
export function exactRows(outline: readonly Point[]): CoverProblem {
  const views = outline.map((at, i) =>
    visibleRegion(
      { outline },
      { id: `${i}`, at, bearingDeg: 0, fieldOfViewDeg: 360, rangeM: Number.POSITIVE_INFINITY },
    ),
  );
  const rows = new Map<string, { row: number[]; index: number }>();
  const most = 50_000;
  const areas = partitionAreas(
    [outline, ...views.map((v) => v.polygon)],
    (inside) => {
      if (!inside[0]) return -1;
      const row: number[] = [];
      for (let i = 1; i < inside.length; i += 1) if (inside[i]) row.push(i - 1);
      const key = row.join(' ');
      const known = rows.get(key);
      if (known) return known.index;
      rows.set(key, { row, index: rows.size });
      return rows.size - 1;
    },
    most,
  );
  return {
    candidateCount: outline.length,
    rows: [...rows.values()].filter(({ index }) => areas[index]! > SLIVER_M2).map(({ row }) => row),
  };
}
