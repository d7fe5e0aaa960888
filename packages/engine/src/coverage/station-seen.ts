import { distanceM, type Point } from '../geometry/point.ts';
import type { CompiledScene } from './compiled-scene.ts';
import type { FloorGrid, RingFiller } from './floor-grid.ts';
import { common, type Interval, insideRings, subtract, unite } from './intervals.ts';
import { bayReachM } from './joist-bays.ts';
import type { JoistBay, Station } from './scene.ts';
import { shadowRings } from './shadows.ts';
import { type SeenStretch, type StationView, viewFrom } from './station-view.ts';

/** All that one station shows. */
export interface StationSeen {
  readonly station: Station;
  /** False when it stands nowhere near the open floor. */
  readonly inSpace: boolean;
  /** Floor cells. */
  readonly cells: Uint32Array;
  /** Stretches of faces, and of vents and bays along their lines, by their places in the scene's lists. */
  readonly faces: readonly { readonly index: number; readonly stretch: Interval }[];
  readonly vents: readonly { readonly index: number; readonly stretch: Interval }[];
  readonly bays: readonly { readonly index: number; readonly stretch: Interval }[];
}

/**
 * Looks around from one station for everything that coverage reports on. Floor and faces are judged at the foot of
 * things, where liners end and water stands; vents at their middle, bays at the underside of the joists.
 */
export function seenFrom(
  compiled: CompiledScene,
  grid: FloorGrid,
  filler: RingFiller,
  station: Station,
  maxIncidenceDeg: number,
): StationSeen {
  const view = viewFrom(compiled, station, maxIncidenceDeg);
  const cells = new Uint32Array(grid.floor.length);
  if (view.eye === null) return { station, inSpace: false, cells, faces: [], vents: [], bays: [] };
  const { eye, eyeM, polygon } = view;
  const shadowsAt = (heightM: number): Point[][] =>
    shadowRings(compiled.bars, eye, eyeM, heightM, station.rangeM);
  const onFloor = shadowsAt(0);
  filler.add(polygon, cells);
  for (const ring of onFloor) filler.remove(ring, cells);
  for (let i = 0; i < cells.length; i += 1) cells[i]! &= grid.floor[i]!;
  return {
    station,
    inSpace: true,
    cells,
    faces: joined(view.faces.flatMap((s) => lit(s, onFloor).map((stretch) => ({ index: s.face, stretch })))),
    vents: ventsSeen(compiled, view, shadowsAt),
    bays: baysSeen(compiled.scene.bays ?? [], view, eye, shadowsAt),
  };
}

/** What some stations show together, as if one had seen it all; null for none. */
export function together(stations: readonly StationSeen[]): StationSeen | null {
  const [first] = stations;
  if (!first) return null;
  const cells = new Uint32Array(first.cells.length);
  for (const one of stations) for (let i = 0; i < cells.length; i += 1) cells[i]! |= one.cells[i]!;
  return {
    station: first.station,
    inSpace: stations.some((s) => s.inSpace),
    cells,
    faces: joined(stations.flatMap((s) => s.faces)),
    vents: joined(stations.flatMap((s) => s.vents)),
    bays: joined(stations.flatMap((s) => s.bays)),
  };
}

/** One stretch where several run on: a face is cut where others touch it and where the view begins. */
function joined(pieces: StationSeen['faces']): StationSeen['faces'] {
  const byIndex = new Map<number, Interval[]>();
  for (const { index, stretch } of pieces) {
    const known = byIndex.get(index);
    if (known) known.push(stretch);
    else byIndex.set(index, [stretch]);
  }
  return [...byIndex].flatMap(([index, list]) => unite(list).map((stretch) => ({ index, stretch })));
}

/** What the shadows leave of a stretch. */
function lit(s: SeenStretch, shadows: readonly (readonly Point[])[]): Interval[] {
  const whole = [{ fromM: s.fromM, toM: s.toM }];
  return shadows.length === 0 ? whole : subtract(whole, insideRings(s.from, s.to, s.fromM, s.toM, shadows));
}

function ventsSeen(
  { scene }: CompiledScene,
  view: StationView,
  shadowsAt: (heightM: number) => Point[][],
): StationSeen['vents'] {
  const found: { index: number; stretch: Interval }[] = [];
  (scene.vents ?? []).forEach(({ edge, offsetM, widthM, middleM }, index) => {
    // Outside walls are the first faces, in the order of the outline.
    const onWall = view.faces.filter((s) => s.face === edge && s.toM > offsetM && s.fromM < offsetM + widthM);
    if (onWall.length === 0) return;
    const shadows = shadowsAt(middleM ?? view.eyeM);
    const open = unite(onWall.flatMap((s) => lit(s, shadows)));
    for (const stretch of common(open, [{ fromM: offsetM, toM: offsetM + widthM }]))
      found.push({ index, stretch });
  });
  return found;
}

function baysSeen(
  bays: readonly JoistBay[],
  { station, eyeM, polygon }: StationView,
  eye: Point,
  shadowsAt: (heightM: number) => Point[][],
): StationSeen['bays'] {
  const found: { index: number; stretch: Interval }[] = [];
  const shadowsOf = new Map<number, Point[][]>();
  bays.forEach((bay, index) => {
    const lengthM = distanceM(bay.from, bay.to);
    if (lengthM === 0) return;
    const dx = (bay.to.xM - bay.from.xM) / lengthM;
    const dy = (bay.to.yM - bay.from.yM) / lengthM;
    const aside = Math.abs((eye.xM - bay.from.xM) * dy - (eye.yM - bay.from.yM) * dx);
    if (aside > bayReachM(bay, eyeM) || aside > station.rangeM) return;
    let shadows = shadowsOf.get(bay.undersideM);
    if (!shadows) {
      shadows = shadowsAt(bay.undersideM);
      shadowsOf.set(bay.undersideM, shadows);
    }
    const inView = insideRings(bay.from, bay.to, 0, lengthM, [polygon]);
    const open =
      shadows.length === 0 ? inView : subtract(inView, insideRings(bay.from, bay.to, 0, lengthM, shadows));
    for (const stretch of open) found.push({ index, stretch });
  });
  return found;
}
