import { boundingBox } from '../geometry/bounding-box.ts';
import { distanceM, type Point } from '../geometry/point.ts';
import { pierFootprint } from '../plan/floor-areas.ts';
import { cellOf, type FloorGrid, middleOf } from './floor-grid.ts';
import { alongLine, isInsideRing, stripRing } from './rings.ts';
import type { CoverageScene } from './scene.ts';

/** Something that stands in, over or at an unseen place. */
export interface StandingThing {
  /** `pier`, `obstacle`, `duct`, `girder`, `vent`, `wall`, `interior-wall`, or what the caller called it. */
  readonly kind: string;
  /** Its id; for an outside wall the index of its first corner, as text. */
  readonly id: string;
}

/**
 * What stands in each region: things whose outline, line or place lies in a cell of the region or in one next to it
 * (a pier is not floor itself, so it stands at its cells, not in them).
 * @param regionOf region of each cell, -1 for none
 */
export function standsIn(
  grid: FloorGrid,
  regionOf: Int32Array,
  regionCount: number,
  scene: CoverageScene,
): StandingThing[][] {
  const found: StandingThing[][] = Array.from({ length: regionCount }, () => []);
  const note = (kind: string, id: string, touched: Set<number>): void => {
    for (const region of [...touched].sort((a, b) => a - b)) found[region]!.push({ kind, id });
  };
  const ofPath = (path: readonly Point[], touched = new Set<number>()): Set<number> => {
    path.forEach((from, i) => {
      const to = path[i + 1];
      const lengthM = to ? distanceM(from, to) : 0;
      const steps = Math.ceil((2 * lengthM) / grid.cellM);
      for (let k = 0; k <= steps; k += 1) {
        around(grid, regionOf, to ? alongLine(from, to, (k / Math.max(1, steps)) * lengthM) : from, touched);
      }
    });
    return touched;
  };
  const ofRing = (ring: readonly Point[]): Set<number> => {
    const touched = ofPath([...ring, ring[0]!]);
    const box = boundingBox(ring)!;
    const low = cellOf(grid, { xM: box.minXM, yM: box.minYM });
    const high = cellOf(grid, { xM: box.maxXM, yM: box.maxYM });
    for (let row = Math.max(0, low.row); row <= Math.min(grid.rows - 1, high.row); row += 1) {
      for (
        let column = Math.max(0, low.column);
        column <= Math.min(grid.columns - 1, high.column);
        column += 1
      ) {
        const region = regionOf[row * grid.columns + column]!;
        if (region < 0 || touched.has(region)) continue;
        const { xM, yM } = middleOf(grid, column, row);
        if (isInsideRing(xM, yM, ring)) touched.add(region);
      }
    }
    return touched;
  };
  for (const pier of scene.piers ?? []) note('pier', pier.id, ofRing(pierFootprint(pier)));
  for (const { id, outline } of scene.obstacles ?? []) note('obstacle', id, ofRing(outline));
  for (const { id, kind, at, outline } of scene.things ?? []) {
    if (outline && outline.length > 0) note(kind, id, ofRing(outline));
    else if (at) note(kind, id, ofPath([at]));
  }
  for (const { id, path } of scene.ducts ?? []) note('duct', id, ofPath(path));
  for (const { id, from, to } of scene.girders ?? []) note('girder', id, ofPath([from, to]));
  for (const { id, edge, offsetM, widthM } of scene.vents ?? []) {
    const from = scene.outline[edge];
    const to = scene.outline[(edge + 1) % scene.outline.length];
    if (!from || !to) continue;
    note('vent', id, ofPath([alongLine(from, to, offsetM), alongLine(from, to, offsetM + widthM)]));
  }
  for (const { id, from, to, thicknessM } of scene.interiorWalls ?? []) {
    note('interior-wall', id, thicknessM ? ofRing(stripRing(from, to, thicknessM)!) : ofPath([from, to]));
  }
  scene.outline.forEach((from, i) => {
    note('wall', `${i}`, ofPath([from, scene.outline[(i + 1) % scene.outline.length]!]));
  });
  return found;
}

/** Adds the regions of the cell of a place and of the eight around it. */
function around(grid: FloorGrid, regionOf: Int32Array, at: Point, touched: Set<number>): void {
  const { column, row } = cellOf(grid, at);
  for (let r = Math.max(0, row - 1); r <= Math.min(grid.rows - 1, row + 1); r += 1) {
    for (let c = Math.max(0, column - 1); c <= Math.min(grid.columns - 1, column + 1); c += 1) {
      const region = regionOf[r * grid.columns + c]!;
      if (region >= 0) touched.add(region);
    }
  }
}
