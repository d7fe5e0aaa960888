import type { Point } from '../geometry/point.ts';
import { requireRange } from '../numerics/require-range.ts';
import { compileScene } from './compiled-scene.ts';
import { DOOR_REACH_M } from './crawl-route.ts';
import { middleOf } from './floor-grid.ts';
import { type Crawler, nearestPassable, type PassableFloor, passableFloor } from './passable-floor.ts';
import { type CoverageScene, type Station, USUAL_VIEW } from './scene.ts';
import { type Ways, waysFrom } from './shortest-ways.ts';

/** The pictures that will be taken; `USUAL_VIEW` by default. */
export interface PlannedView {
  readonly fieldOfViewDeg?: number;
  readonly rangeM?: number;
  readonly heightM?: number;
}

/** Distance between places to choose from, m: about a body's length of crawling. Common practice, no source. */
export const CANDIDATE_SPACING_M = 1;

/**
 * Places to choose stations from, spread over all floor that can be reached from the door: one for each square of
 * side `spacingM` that holds any, as near to the square's middle as one can lie. Each looks all round. Ids are
 * `c1`, `c2`, ... row by row from the least y.
 * @throws EngineError as `crawlRoute`, and `out-of-range` for a spacing not from 0.1 to 20 m
 */
export function candidateStations(
  scene: CoverageScene,
  door: Point,
  options: Crawler & PlannedView & { readonly spacingM?: number } = {},
): Station[] {
  const compiled = compileScene(scene);
  const floor = passableFloor(compiled, options);
  const start = nearestPassable(floor, compiled, door, DOOR_REACH_M);
  if (start < 0) return [];
  const spacingM = options.spacingM ?? CANDIDATE_SPACING_M;
  return candidatesOver(floor, waysFrom(floor, start), spacingM, options).map((station, i) => ({
    ...station,
    id: `c${i + 1}`,
  }));
}

/**
 * As `candidateStations`, over a floor and the ways from the door made ready before; ids are cells of the floor.
 * @param near only squares whose middles are this near to one of these places
 */
export function candidatesOver(
  { grid }: PassableFloor,
  { lengthM }: Ways,
  spacingM: number,
  view: PlannedView,
  near?: { readonly places: readonly Point[]; readonly reachM: number },
): Station[] {
  requireRange('spacing of candidates (m)', spacingM, 0.1, 20);
  const side = Math.max(1, Math.round(spacingM / grid.cellM));
  const stations: Station[] = [];
  for (let top = 0; top < grid.rows; top += side) {
    for (let left = 0; left < grid.columns; left += side) {
      const middle = middleOf(grid, left + (side - 1) / 2, top + (side - 1) / 2);
      if (near && !near.places.some((p) => Math.hypot(p.xM - middle.xM, p.yM - middle.yM) <= near.reachM))
        continue;
      let best = -1;
      let least = Number.POSITIVE_INFINITY;
      for (let row = top; row < Math.min(grid.rows, top + side); row += 1) {
        for (let column = left; column < Math.min(grid.columns, left + side); column += 1) {
          const cell = row * grid.columns + column;
          const away = (column - left - (side - 1) / 2) ** 2 + (row - top - (side - 1) / 2) ** 2;
          if (!Number.isFinite(lengthM[cell]!) || away >= least) continue;
          least = away;
          best = cell;
        }
      }
      if (best < 0) continue;
      stations.push({
        id: `${best}`,
        at: middleOf(grid, best % grid.columns, Math.floor(best / grid.columns)),
        bearingDeg: 0,
        fieldOfViewDeg: 360,
        rangeM: view.rangeM ?? USUAL_VIEW.rangeM,
        heightM: view.heightM ?? USUAL_VIEW.heightM,
      });
    }
  }
  return stations;
}
