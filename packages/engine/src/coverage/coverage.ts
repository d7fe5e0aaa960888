import type { Point } from '../geometry/point.ts';
import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import { cellRegions, regionBorder } from './cell-regions.ts';
import { seeableFloor } from './floor-area.ts';
import { countBits, type FloorGrid, onesIn } from './floor-grid.ts';
import { type Interval, lengthOf, unite } from './intervals.ts';
import { type LineSeen, lineSeen } from './line-seen.ts';
import type { CoverageScene, Station } from './scene.ts';
import { type CoverageOptions, lookAround, type SceneSeen } from './scene-seen.ts';
import { type StandingThing, standsIn } from './stands-in.ts';
import type { StationSeen } from './station-seen.ts';
import { notInSpace } from './visible-region.ts';

/** A part of the floor that nobody saw. */
export interface UnseenRegion {
  readonly areaM2: number;
  readonly centroid: Point;
  /** A place in the region, near its centroid. */
  readonly within: Point;
  /** Its border along cell sides; outer rings counter-clockwise, holes clockwise. */
  readonly rings: readonly (readonly Point[])[];
  /** What stands in or at it. */
  readonly standsIn: readonly StandingThing[];
}

/** What some pictures show of a space, together and each. */
export interface Coverage {
  /** Floor that can be seen in principle [m²], exact: within the walls, off piers, walls and obstacles. */
  readonly floorM2: number;
  /** Floor under obstacles, which no picture shows [m²], exact. Not part of `floorM2`. */
  readonly coveredM2: number;
  readonly floorSeenM2: number;
  /** Share of `floorM2`, 0..1; 0 without floor. */
  readonly floorShare: number;
  /** How far `floorSeenM2` may be off [m²]: half a cell for every cell on a border of what was seen. */
  readonly floorErrorM2: number;
  readonly cellM: number;
  /** Largest first. */
  readonly unseenRegions: readonly UnseenRegion[];
  /** Unseen floor in regions too small to list [m²]. */
  readonly scatteredM2: number;
  readonly walls: readonly ({ readonly edge: number } & LineSeen)[];
  readonly interiorWalls: readonly ({ readonly id: string; readonly side: 'left' | 'right' } & LineSeen)[];
  readonly pierFaces: readonly ({ readonly pierId: string; readonly face: 0 | 1 | 2 | 3 } & LineSeen)[];
  readonly vents: readonly ({ readonly id: string } & LineSeen)[];
  readonly bays: readonly ({ readonly id: string } & LineSeen)[];
  readonly perStation: readonly StationShare[];
  readonly notices: readonly Notice[];
}

/** What one station adds. */
export interface StationShare {
  readonly id: string;
  readonly floorM2: number;
  /** Floor that no station before it in the list showed [m²]. */
  readonly newM2: number;
  /** Floor that no other station shows [m²]. */
  readonly onlyM2: number;
}

/**
 * What was seen of a space from some stations, and what was not.
 *
 * Walls, pier faces, vents and bays are measured as stretches, exactly. The floor is counted in cells by their middles
 * and scaled to its exact area; `floorErrorM2` says how far that may be off. See `visibleRegion` for what hides what.
 * A face counts as seen at its foot, from within range and at no flatter view than `maxIncidenceDeg` from its normal;
 * a vent at its middle; a bay where the middle of its subfloor shows between the joists (`bayReachM`).
 * @throws EngineError `bad-geometry` for an outline without area; `not-finite` or `out-of-range` for figures of the
 *   scene, a station or the options that are none or out of range
 */
export function coverage(
  scene: CoverageScene,
  stations: readonly Station[],
  options: CoverageOptions = {},
): Coverage {
  return summarize(lookAround(scene, stations, options), options);
}

function summarize(seen: SceneSeen, options: CoverageOptions): Coverage {
  const { compiled, grid, stations } = seen;
  const { scene, solids } = compiled;
  const leastM2 = requireRange('smallest unseen region (m²)', options.leastUnseenM2 ?? 0.1, 0, 1e6);
  const { floorM2, coveredM2 } = seeableFloor(compiled);
  const cellM2 = grid.floorCells > 0 ? floorM2 / grid.floorCells : 0;
  const { union, once, firsts } = unionOf(grid, stations);
  const seenCells = countBits(union);

  const unseenBits = grid.floor.map((word, i) => word & ~union[i]!);
  const { regions, regionOf } = cellRegions(grid, unseenBits);
  const listed = regions.filter((region) => region.cells.length * cellM2 >= leastM2);
  const things = standsIn(grid, regionOf, regions.length, scene);

  const faces = linesSeen(seen.faceOpen, stations, (s) => s.faces);
  const vents = linesSeen(seen.ventOpen, stations, (s) => s.vents);
  const bays = linesSeen(seen.bayOpen, stations, (s) => s.bays);
  const ofKind = (kind: string) =>
    solids.faces.flatMap((face, i) => (face.kind === kind ? [{ ...face, i }] : []));
  const outside = stations.filter((s) => !s.inSpace).map((s) => s.station.id);
  return {
    floorM2,
    coveredM2,
    floorSeenM2: seenCells * cellM2,
    floorShare: grid.floorCells > 0 ? seenCells / grid.floorCells : 0,
    floorErrorM2: (borderCells(grid, union) / 2) * grid.cellM ** 2,
    cellM: grid.cellM,
    unseenRegions: listed.map((region, i) => ({
      areaM2: region.cells.length * cellM2,
      centroid: region.centroid,
      within: region.within,
      rings: regionBorder(grid, region.cells),
      standsIn: things[i]!,
    })),
    scatteredM2: regions.slice(listed.length).reduce((sum, r) => sum + r.cells.length * cellM2, 0),
    walls: ofKind('wall').map(({ index, i }) => ({ edge: index, ...faces[i]! })),
    interiorWalls: ofKind('interior-wall').map(({ index, part, i }) => ({
      id: scene.interiorWalls![index]!.id,
      side: part === 0 ? 'right' : 'left',
      ...faces[i]!,
    })),
    pierFaces: ofKind('pier').map(({ index, part, i }) => ({
      pierId: scene.piers![index]!.id,
      face: part as 0 | 1 | 2 | 3,
      ...faces[i]!,
    })),
    vents: (scene.vents ?? []).map(({ id }, i) => ({ id, ...vents[i]! })),
    bays: (scene.bays ?? []).map(({ id }, i) => ({ id, ...bays[i]! })),
    perStation: stations.map((s, i) => ({
      id: s.station.id,
      floorM2: countBits(s.cells) * cellM2,
      newM2: firsts[i]! * cellM2,
      onlyM2: overlapCount(s.cells, once) * cellM2,
    })),
    notices: [...compiled.notices, ...(outside.length > 0 ? [notInSpace(outside)] : [])],
  };
}

/** Cells seen at all, cells seen exactly once, and how many each station was the first to see. */
function unionOf(grid: FloorGrid, stations: readonly StationSeen[]) {
  const union = new Uint32Array(grid.floor.length);
  const twice = new Uint32Array(grid.floor.length);
  const firsts: number[] = [];
  for (const { cells } of stations) {
    let first = 0;
    for (let i = 0; i < union.length; i += 1) {
      first += onesIn(cells[i]! & ~union[i]!);
      twice[i]! |= cells[i]! & union[i]!;
      union[i]! |= cells[i]!;
    }
    firsts.push(first);
  }
  return { union, once: union.map((word, i) => word & ~twice[i]!), firsts };
}

function overlapCount(a: Uint32Array, b: Uint32Array): number {
  let count = 0;
  for (let i = 0; i < a.length; i += 1) count += onesIn(a[i]! & b[i]!);
  return count;
}

/** Cells, seen or not, with a neighbor of the other kind; beyond the grid nothing is seen. */
function borderCells({ rows, wordsPerRow: words }: FloorGrid, bits: Uint32Array): number {
  let count = 0;
  for (let row = 0; row < rows; row += 1) {
    for (let w = 0; w < words; w += 1) {
      const at = row * words + w;
      const own = bits[at]!;
      const before = w > 0 ? bits[at - 1]! >>> 31 : 0;
      const after = w + 1 < words ? bits[at + 1]! << 31 : 0;
      const below = row > 0 ? bits[at - words]! : 0;
      const above = row + 1 < rows ? bits[at + words]! : 0;
      const sideways = (own ^ ((own << 1) | before)) | (own ^ ((own >>> 1) | after));
      count += onesIn(sideways | (own ^ below) | (own ^ above));
    }
  }
  return count;
}

/** Less of a line than this is not worth naming a station for, m. */
const GLIMPSE_M = 0.01;

function linesSeen(
  open: readonly (readonly Interval[])[],
  stations: readonly StationSeen[],
  of: (station: StationSeen) => StationSeen['faces'],
): LineSeen[] {
  const all: Interval[][] = open.map(() => []);
  const who: string[][] = open.map(() => []);
  for (const station of stations) {
    const mine = new Map<number, Interval[]>();
    for (const { index, stretch } of of(station)) {
      all[index]!.push(stretch);
      const known = mine.get(index);
      if (known) known.push(stretch);
      else mine.set(index, [stretch]);
    }
    for (const [index, stretches] of mine) {
      if (lengthOf(unite(stretches)) > GLIMPSE_M) who[index]!.push(station.station.id);
    }
  }
  return open.map((stretches, i) => lineSeen(stretches, unite(all[i]!), who[i]!));
}
