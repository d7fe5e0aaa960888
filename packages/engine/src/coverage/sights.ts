import { distanceM, type Point } from '../geometry/point.ts';
import { pierFootprint } from '../plan/floor-areas.ts';
import { setCells } from './cell-regions.ts';
import { middleOf } from './floor-grid.ts';
import type { Interval } from './intervals.ts';
import { alongLine } from './rings.ts';
import type { SceneSeen } from './scene-seen.ts';
import type { StationSeen } from './station-seen.ts';

/** Something small enough to be seen or not: a floor cell, or a piece of a wall, pier face, vent or bay. */
export interface Sight {
  readonly kind: 'floor' | 'wall' | 'interior-wall' | 'pier' | 'vent' | 'bay';
  /** Id, or for an outside wall the index of its first corner as text; absent for the floor. */
  readonly id?: string;
  /** Pier face 0..3. */
  readonly face?: number;
  readonly side?: 'left' | 'right';
  /** Its middle. */
  readonly at: Point;
  /** The two ends of a piece; absent for a floor cell. */
  readonly ends?: readonly [Point, Point];
  /** Places in the list of the stations that see it, ascending. */
  readonly seenBy: readonly number[];
}

/** Kinds of things that a plan is to show. */
export type SightKind = Sight['kind'];

/** Longest piece of a wall, face, vent or bay that one station must see, m. */
const PIECE_M = 0.25;
/** Share at each end of a piece that may be missing, so that what is seen of a line comes to nine tenths and more. */
const PIECE_EDGE = 0.05;

type ListOf = (station: StationSeen) => StationSeen['faces'];
const FACES: ListOf = (s) => s.faces;
const VENTS: ListOf = (s) => s.vents;
const BAYS: ListOf = (s) => s.bays;

interface Witness {
  readonly station: number;
  readonly stretch: Interval;
}

/** Everything that is to be seen, each with the stations that see it. */
export function sightsOf(seen: SceneSeen, kinds: ReadonlySet<SightKind>): Sight[] {
  const { scene, solids } = seen.compiled;
  const sights: Sight[] = kinds.has('floor') ? floorSights(seen) : [];
  const byList = new Map<ListOf, Witness[][]>();
  /** Who sees which stretch of each face, vent or bay, sorted out once. */
  const stretchesOf = (of: ListOf): Witness[][] => {
    let found = byList.get(of);
    if (!found) {
      found = [];
      for (let station = 0; station < seen.stations.length; station += 1) {
        for (const { index, stretch } of of(seen.stations[station]!)) {
          found[index] ??= [];
          found[index].push({ station, stretch });
        }
      }
      byList.set(of, found);
    }
    return found;
  };
  const addLine = (
    what: Pick<Sight, 'kind' | 'id' | 'face' | 'side'>,
    from: Point,
    to: Point,
    open: readonly Interval[],
    index: number,
    of: ListOf,
  ): void => {
    if (!kinds.has(what.kind)) return;
    const witnesses = stretchesOf(of)[index];
    for (const { fromM, toM } of open) {
      const pieces = Math.ceil((toM - fromM) / PIECE_M);
      for (let k = 0; k < pieces; k += 1) {
        const at = (share: number): number => fromM + ((k + share) / pieces) * (toM - fromM);
        const [low, high] = [at(PIECE_EDGE), at(1 - PIECE_EDGE)];
        const seenBy: number[] = [];
        for (const { station, stretch } of witnesses ?? []) {
          if (low >= stretch.fromM && high <= stretch.toM && seenBy.at(-1) !== station) seenBy.push(station);
        }
        const ends = [alongLine(from, to, at(0)), alongLine(from, to, at(1))] as const;
        sights.push({ ...what, at: alongLine(from, to, at(0.5)), ends, seenBy });
      }
    }
  };
  solids.faces.forEach((face, i) => {
    const { from, to, what } = faceLine(seen, face);
    addLine(what, from, to, seen.faceOpen[i]!, i, FACES);
  });
  (scene.vents ?? []).forEach(({ id, edge }, i) => {
    const to = scene.outline[(edge + 1) % scene.outline.length]!;
    addLine({ kind: 'vent', id }, scene.outline[edge]!, to, seen.ventOpen[i]!, i, VENTS);
  });
  (scene.bays ?? []).forEach(({ id, from, to }, i) => {
    addLine({ kind: 'bay', id }, from, to, seen.bayOpen[i]!, i, BAYS);
  });
  return sights;
}

function floorSights({ grid, stations }: SceneSeen): Sight[] {
  const seenBy = new Map<number, number[]>(setCells(grid, grid.floor).map((cell) => [cell, []]));
  stations.forEach(({ cells }, i) => {
    for (const cell of setCells(grid, cells)) seenBy.get(cell)!.push(i);
  });
  return [...seenBy].map(([cell, who]) => ({
    kind: 'floor',
    at: middleOf(grid, cell % grid.columns, Math.floor(cell / grid.columns)),
    seenBy: who,
  }));
}

/** The line of a face in the plan, and what it is. */
function faceLine(
  { compiled: { scene, solids } }: SceneSeen,
  { kind, index, part }: SceneSeen['compiled']['solids']['faces'][number],
): { from: Point; to: Point; what: Pick<Sight, 'kind' | 'id' | 'face' | 'side'> } {
  if (kind === 'wall') {
    const { outline } = solids;
    const what = { kind, id: `${index}` };
    return { from: outline[index]!, to: outline[(index + 1) % outline.length]!, what };
  }
  if (kind === 'pier') {
    const pier = scene.piers![index]!;
    const ring = pierFootprint(pier);
    return { from: ring[part]!, to: ring[(part + 1) % 4]!, what: { kind, id: pier.id, face: part } };
  }
  const wall = scene.interiorWalls![index]!;
  const half = (part === 0 ? -1 : 1) * ((wall.thicknessM ?? 0) / 2);
  const length = distanceM(wall.from, wall.to);
  const nx = (-(wall.to.yM - wall.from.yM) / length) * half;
  const ny = ((wall.to.xM - wall.from.xM) / length) * half;
  return {
    from: { xM: wall.from.xM + nx, yM: wall.from.yM + ny },
    to: { xM: wall.to.xM + nx, yM: wall.to.yM + ny },
    what: { kind, id: wall.id, side: part === 0 ? 'right' : 'left' },
  };
}
