import { isOpenFloor } from '../coverage/blockers.ts';
import { compileScene } from '../coverage/compiled-scene.ts';
import { type Crawler, nearestPassable, passableFloor } from '../coverage/passable-floor.ts';
import { waysFrom } from '../coverage/shortest-ways.ts';
import { distanceM, type Point } from '../geometry/point.ts';
import { distanceToSegmentM } from '../geometry/segment-distance.ts';
import { EngineError } from '../numerics/engine-error.ts';
import { requireRange } from '../numerics/require-range.ts';
import { clearHeightAtM } from '../plan/clear-height.ts';
import type { FieldModel } from './field-model.ts';
import { jetPath } from './jet-path.ts';
import { nearestCell } from './places.ts';

/** What a crawl space offers to whoever sets up a dehumidifier, and what the machine needs. */
export interface PlacingSite {
  /** Access door or hatch, on the plan. */
  readonly door: Point;
  readonly crawler?: Crawler;
  /** Longest way from the door for service [m]; 12 by default (common practice, no source). */
  readonly serviceReachM?: number;
  /** Size of the machine [m]. */
  readonly body?: { readonly lengthM: number; readonly widthM: number; readonly heightM: number };
  /** Height of its underside over the floor [m]; 0.2, about one block, by default, so that a pump can hang on it. */
  readonly raisedM?: number;
  /** Least free run ahead of the outlet [m]; 1.2 by default (common practice, no source). */
  readonly freeRunM?: number;
  /** Where water can be let off, and how high over the floor; undefined when nobody looked. */
  readonly drains?: readonly { readonly at: Point; readonly inletM: number }[];
  /** Condensate pump; null for none. */
  readonly pump?: { readonly liftM: number; readonly reachM: number } | null;
  /** Receptacles; undefined when nobody looked. */
  readonly power?: readonly Point[];
  /** Cord of the machine [m]; 1.8 by default. An extension cord is no answer. */
  readonly cordM?: number;
  /** Longest duct at its outlet [m]; 9 by default. */
  readonly longestDuctM?: number;
}

/** Usual values where a `PlacingSite` says nothing. Common practice, no source. */
export const USUAL_PLACING = {
  serviceReachM: 12,
  body: { lengthM: 0.7, widthM: 0.35, heightM: 0.4 },
  raisedM: 0.2,
  freeRunM: 1.2,
  pump: { liftM: 4.5, reachM: 7.5 },
  cordM: 1.8,
  longestDuctM: 9,
} as const;

/** Room left over the machine and beside it, m. Common practice, no source. */
const ABOVE_M = 0.05;
const BESIDE_M = 0.1;
/** Fall of a hose without a pump. */
const HOSE_FALL = 0.02;
/** How far the door's mark may be from floor that can be passed, and the machine from where one lies, m. */
const DOOR_REACH_M = 1.5;
const SERVICE_ARM_M = 0.8;
const LOOK_M = 20;

/** Why a machine can't stand somewhere. */
export type PlacingRule =
  | 'no-floor'
  | 'clear-height'
  | 'clearance'
  | 'no-way'
  | 'service-reach'
  | 'outlet-run'
  | 'drain'
  | 'power'
  | 'no-return-path';

/** A place that was judged. */
export type PlacingVerdict =
  | { readonly ok: true; readonly wayM: number; readonly pumped: boolean }
  | { readonly ok: false; readonly rule: PlacingRule; readonly why: string };

/** Judges places and directions for a machine. */
export interface PlacingRules {
  /** Rules of the place alone. */
  readonly place: (at: Point) => PlacingVerdict;
  /** Free run ahead of an outlet, m; enough or not. */
  readonly run: (outlet: Point, bearingDeg: number) => { readonly ok: boolean; readonly runM: number };
  readonly freeRunM: number;
  readonly longestDuctM: number;
}

/**
 * Rules for standing a machine in a space: room for it on its block, a way in for service, water off, power. What nobody
 * looked at (drains, power) is not judged.
 * @throws EngineError `bad-geometry` when no one can crawl in at the door
 */
export function placingRules(model: FieldModel, site: PlacingSite): PlacingRules {
  const { plan } = model.site;
  const scene = compileScene(plan);
  const body = site.body ?? USUAL_PLACING.body;
  const raisedM = requireRange('height of the block (m)', site.raisedM ?? USUAL_PLACING.raisedM, 0, 2);
  const serviceReachM = requireRange(
    'service reach (m)',
    site.serviceReachM ?? USUAL_PLACING.serviceReachM,
    0.5,
    100,
  );
  const freeRunM = requireRange(
    'free run ahead of the outlet (m)',
    site.freeRunM ?? USUAL_PLACING.freeRunM,
    0,
    LOOK_M,
  );
  const longestDuctM = requireRange(
    'longest duct (m)',
    site.longestDuctM ?? USUAL_PLACING.longestDuctM,
    0,
    50,
  );
  const pump = site.pump === undefined ? USUAL_PLACING.pump : site.pump;
  const cordM = requireRange('cord (m)', site.cordM ?? USUAL_PLACING.cordM, 0, 50);
  const topM = raisedM + body.heightM + ABOVE_M;
  const halfM = body.widthM / 2 + BESIDE_M;
  const floor = passableFloor(scene, site.crawler ?? {});
  const start = nearestPassable(floor, scene, site.door, DOOR_REACH_M);
  if (start < 0) {
    throw new EngineError(
      'bad-geometry',
      `access door: nobody can crawl in at (${site.door.xM}, ${site.door.yM}); check its place and what stands before it`,
    );
  }
  const ways = waysFrom(floor, start);
  const samples = plan.clearHeights ?? [];

  const place = (at: Point): PlacingVerdict => {
    const no = (rule: PlacingRule, why: string): PlacingVerdict => ({ ok: false, rule, why });
    if (!isOpenFloor(scene.solids, at.xM, at.yM)) {
      return no('no-floor', 'it is outside the walls or in something solid');
    }
    const height = samples.length > 0 ? clearHeightAtM(samples, at) : plan.heightM!;
    if (height < topM) {
      return no(
        'clear-height',
        `${height.toFixed(2)} m clear height, and ${topM.toFixed(2)} m are needed on the block`,
      );
    }
    const beside = besideM(scene, at, topM);
    if (beside < halfM) {
      return no(
        'clearance',
        `${beside.toFixed(2)} m to the next wall, pier or duct, and ${halfM.toFixed(2)} m are needed`,
      );
    }
    const cell = nearestPassable(floor, scene, at, SERVICE_ARM_M);
    const wayM = cell < 0 ? Number.POSITIVE_INFINITY : ways.lengthM[cell]!;
    if (!Number.isFinite(wayM)) return no('no-way', 'nobody can crawl there from the door');
    if (wayM > serviceReachM) {
      return no('service-reach', `${wayM.toFixed(1)} m from the door, more than ${serviceReachM} m`);
    }
    const water = waterOff(site, at, raisedM, pump);
    if (water === null) return no('drain', drainWhy(site, at, pump));
    const cord = site.power === undefined ? 0 : Math.min(...site.power.map((p) => distanceM(p, at)));
    if (cord > cordM) {
      return no(
        'power',
        Number.isFinite(cord)
          ? `${cord.toFixed(1)} m to the next receptacle, and the cord has ${cordM} m`
          : 'there is no receptacle',
      );
    }
    return { ok: true, wayM, pumped: water === 'pump' };
  };

  const run = (outlet: Point, bearingDeg: number): { ok: boolean; runM: number } => {
    const cell = nearestCell(model.mesh, outlet, 0.1);
    if (cell < 0) return { ok: false, runM: 0 };
    const { freeRunM: runM } = jetPath(model.mesh, outlet, cell, bearingDeg, LOOK_M);
    return { ok: runM >= freeRunM, runM };
  };
  return { place, run, freeRunM, longestDuctM };
}

/** Way to the next thing that the machine can't stand in or under, m. */
function besideM({ blockers, bars }: ReturnType<typeof compileScene>, at: Point, topM: number): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (let i = 0; i < blockers.count; i += 1) {
    const a = { xM: blockers.ax[i]!, yM: blockers.ay[i]! };
    const b = { xM: blockers.bx[i]!, yM: blockers.by[i]! };
    nearest = Math.min(nearest, distanceToSegmentM(at, a, b));
  }
  for (const { ring, undersideM } of bars) {
    if (undersideM >= topM) continue;
    for (let i = 0; i < ring.length; i += 1) {
      nearest = Math.min(nearest, distanceToSegmentM(at, ring[i]!, ring[(i + 1) % ring.length]!));
    }
  }
  return nearest;
}

function waterOff(
  site: PlacingSite,
  at: Point,
  raisedM: number,
  pump: PlacingSite['pump'],
): 'fall' | 'pump' | 'unknown' | null {
  if (site.drains === undefined) return 'unknown';
  let byPump = false;
  for (const drain of site.drains) {
    const away = distanceM(drain.at, at);
    if (drain.inletM + HOSE_FALL * away <= raisedM) return 'fall';
    if (pump != null && away <= pump.reachM && drain.inletM - raisedM <= pump.liftM) byPump = true;
  }
  return byPump ? 'pump' : null;
}

function drainWhy({ drains = [] }: PlacingSite, at: Point, pump: PlacingSite['pump']): string {
  if (drains.length === 0) return 'there is nowhere to let its water off';
  const away = Math.min(...drains.map((drain) => distanceM(drain.at, at)));
  const by =
    pump == null ? 'there is no pump' : `the pump reaches ${pump.reachM} m and lifts ${pump.liftM} m`;
  return `${away.toFixed(1)} m to the next drain, too far to fall there, and ${by}`;
}
