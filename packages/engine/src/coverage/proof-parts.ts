import { distanceToPolygonM } from '../geometry/distance.ts';
import { distanceM, type Point } from '../geometry/point.ts';
import { cellRegions } from './cell-regions.ts';
import type { CompiledScene } from './compiled-scene.ts';
import { countBits, ringFiller } from './floor-grid.ts';
import { unite } from './intervals.ts';
import { type LineSeen, lineSeen } from './line-seen.ts';
import { isInsideRing } from './rings.ts';
import type { Station } from './scene.ts';
import type { SceneSeen } from './scene-seen.ts';
import { shadowRings } from './shadows.ts';
import { SLIP_M } from './standing-place.ts';
import type { StationSeen } from './station-seen.ts';
import { viewFrom } from './station-view.ts';

/** What a claim or finding is about. A plural means every one of them. */
export type ProofSubject =
  | {
      readonly kind: 'floor' /** Part of it; the whole floor by default. */;
      readonly outline?: readonly Point[];
    }
  | { readonly kind: 'walls' | 'piers' | 'vents' | 'bays' }
  | { readonly kind: 'wall' /** Index of its first corner. */; readonly edge: number }
  | {
      readonly kind: 'pier';
      readonly id: string /** One face 0..3; all by default. */;
      readonly face?: number;
    }
  | { readonly kind: 'interior-wall' | 'vent' | 'bay'; readonly id: string }
  | { readonly kind: 'place'; readonly at: Point };

/** Something that a claim is about and that its pictures do not show enough of. */
export interface MissingProof {
  readonly kind: 'floor' | 'wall' | 'interior-wall' | 'pier' | 'vent' | 'bay' | 'place';
  /** Id, or for an outside wall the index of its first corner as text; absent for the floor and for a place. */
  readonly id?: string;
  /** Pier face 0..3. */
  readonly face?: number;
  readonly side?: 'left' | 'right';
  /** Share that is shown, 0..1. */
  readonly share: number;
  /** A place to look at. */
  readonly at?: Point;
}

/** What counts as enough. */
export interface Enough {
  readonly line: number;
  readonly floor: number;
}

/** The floor that a station sees: a ring, and rings that low things hide of it; null for none. */
export type FloorSeenFrom = (
  station: Station,
) => { readonly ring: readonly Point[]; readonly hidden: readonly (readonly Point[])[] } | null;

/** Works out what a station sees of the floor, once for each. */
export function floorSeenFrom(compiled: CompiledScene, incidenceDeg: number): FloorSeenFrom {
  const known = new Map<Station, ReturnType<FloorSeenFrom>>();
  return (station) => {
    let found = known.get(station);
    if (found === undefined) {
      const { eye, eyeM, polygon } = viewFrom(compiled, station, incidenceDeg);
      const hidden = eye === null ? [] : shadowRings(compiled.bars, eye, eyeM, 0, station.rangeM);
      found = eye === null ? null : { ring: polygon, hidden };
      known.set(station, found);
    }
    return found;
  };
}

/** A part of what a claim is about, with how much of it is shown. */
export interface Part {
  readonly missing: MissingProof;
  /** Area or length: what it weighs among its like. */
  readonly size: number;
  readonly needed: number;
  readonly stations: readonly string[];
}

/** A place this near to what a picture shows is shown, m: findings are marked by hand. Common practice, no source. */
const NEAR_M = 0.05;

/** The parts of what a claim is about, each with how much of it some stations show. Parts that nobody can see are left out. */
export function partsOf(
  seen: SceneSeen,
  witnesses: readonly StationSeen[],
  about: ProofSubject,
  enough: Enough,
  floorFrom: FloorSeenFrom,
): Part[] {
  const { scene, solids } = seen.compiled;
  const line = (missing: Omit<MissingProof, 'share'>, found: LineSeen): Part[] =>
    found.seenShare === null
      ? []
      : [
          {
            missing: { ...missing, share: found.seenShare },
            size: found.openM,
            needed: enough.line,
            stations: found.stations,
          },
        ];
  const faces = (wanted: (face: (typeof solids.faces)[number]) => boolean): Part[] =>
    solids.faces.flatMap((face, i) => {
      if (!wanted(face)) return [];
      const found = lineOf(seen.faceOpen[i]!, witnesses, i, (s) => s.faces);
      if (face.kind === 'wall') return line({ kind: 'wall', id: `${face.index}` }, found);
      if (face.kind === 'pier') {
        return line({ kind: 'pier', id: scene.piers![face.index]!.id, face: face.part }, found);
      }
      const side = face.part === 0 ? 'right' : 'left';
      return line({ kind: 'interior-wall', id: scene.interiorWalls![face.index]!.id, side }, found);
    });
  const listed = (kind: 'vent' | 'bay', id?: string): Part[] => {
    const open = kind === 'vent' ? seen.ventOpen : seen.bayOpen;
    return ((kind === 'vent' ? scene.vents : scene.bays) ?? []).flatMap((item, i) =>
      id !== undefined && item.id !== id
        ? []
        : line(
            { kind, id: item.id },
            lineOf(open[i]!, witnesses, i, (s) => (kind === 'vent' ? s.vents : s.bays)),
          ),
    );
  };
  switch (about.kind) {
    case 'floor':
      return [floorPart(seen, witnesses, about.outline, enough.floor)];
    case 'place':
      return [placePart(witnesses, about.at, floorFrom)];
    case 'walls':
      return faces((f) => f.kind !== 'pier');
    case 'wall':
      return faces((f) => f.kind === 'wall' && f.index === about.edge);
    case 'interior-wall':
      return faces((f) => f.kind === 'interior-wall' && scene.interiorWalls![f.index]!.id === about.id);
    case 'piers':
      return faces((f) => f.kind === 'pier');
    case 'pier':
      return faces(
        (f) =>
          f.kind === 'pier' &&
          scene.piers![f.index]!.id === about.id &&
          (about.face === undefined || about.face === f.part),
      );
    case 'vents':
      return listed('vent');
    case 'bays':
      return listed('bay');
    default:
      return listed(about.kind, about.id);
  }
}

function lineOf(
  open: SceneSeen['faceOpen'][number],
  witnesses: readonly StationSeen[],
  index: number,
  of: (station: StationSeen) => StationSeen['faces'],
): LineSeen {
  const found = witnesses.map((s) =>
    of(s).flatMap((piece) => (piece.index === index ? [piece.stretch] : [])),
  );
  const who = witnesses.filter((_, i) => found[i]!.length > 0).map((s) => s.station.id);
  return lineSeen(open, unite(found.flat()), who);
}

function floorPart(
  { grid }: SceneSeen,
  witnesses: readonly StationSeen[],
  outline: readonly Point[] | undefined,
  needed: number,
): Part {
  const asked = new Uint32Array(grid.floor.length);
  if (outline) ringFiller(grid).add(outline, asked);
  else asked.fill(0xffffffff);
  for (let i = 0; i < asked.length; i += 1) asked[i]! &= grid.floor[i]!;
  const unseen = asked.slice();
  const stations: string[] = [];
  for (const { cells, station } of witnesses) {
    let any = 0;
    for (let i = 0; i < unseen.length; i += 1) {
      any |= cells[i]! & asked[i]!;
      unseen[i]! &= ~cells[i]!;
    }
    if (any !== 0) stations.push(station.id);
  }
  const cells = countBits(asked);
  const largest = cellRegions(grid, unseen).regions[0];
  return {
    missing: {
      kind: 'floor',
      share: cells > 0 ? 1 - countBits(unseen) / cells : 0,
      ...(largest ? { at: largest.within } : {}),
    },
    size: cells * grid.cellM ** 2,
    needed,
    stations,
  };
}

/** A place is shown where it lies within the region that a picture shows, or at its border. */
function placePart(witnesses: readonly StationSeen[], at: Point, floorFrom: FloorSeenFrom): Part {
  const stations = witnesses
    .filter(({ station }) => {
      if (distanceM(station.at, at) > station.rangeM + NEAR_M + SLIP_M) return false;
      const floor = floorFrom(station);
      if (floor === null || distanceToPolygonM(at, floor.ring) > NEAR_M) return false;
      return !floor.hidden.some((ring) => isInsideRing(at.xM, at.yM, ring));
    })
    .map(({ station }) => station.id);
  return { missing: { kind: 'place', share: stations.length > 0 ? 1 : 0, at }, size: 1, needed: 1, stations };
}
