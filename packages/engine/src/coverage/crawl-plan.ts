import { angleBetweenDeg, bearingDeg, wrapDeg } from '../geometry/bearing.ts';
import { distanceM, type Point } from '../geometry/point.ts';
import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import { CANDIDATE_SPACING_M, candidatesOver, type PlannedView } from './candidate-stations.ts';
import { type CompiledScene, compileScene } from './compiled-scene.ts';
import type { CoverProblem, CoverSolution, CoverSolver } from './cover-problem.ts';
import { type Coverage, coverage } from './coverage.ts';
import {
  type CrawlRoute,
  DOOR_REACH_M,
  type RouteOptions,
  type RouteStop,
  routeOver,
} from './crawl-route.ts';
import { nearestPassable, type PassableFloor, passableFloor } from './passable-floor.ts';
import { pointings } from './pointings.ts';
import { type CoverageScene, type Station, USUAL_VIEW } from './scene.ts';
import { lookAroundIn, type SceneSeen } from './scene-seen.ts';
import { setCover, setCoverWith } from './set-cover.ts';
import { type Ways, waysFrom } from './shortest-ways.ts';
import { type Sight, type SightKind, sightsOf } from './sights.ts';
import { together } from './station-seen.ts';

/** How a crawl is planned. */
export interface PlanOptions extends RouteOptions, PlannedView {
  /** Distance between the places to choose from [m]; 1 by default. */
  readonly spacingM?: number;
  /** Side of the floor cells that must be seen [m]; 0.2 by default. */
  readonly cellM?: number;
  /** What is to be seen; everything by default. */
  readonly look?: readonly SightKind[];
  /** Pictures that are there already: what they show is left out of the plan; none by default. */
  readonly takenFrom?: readonly Station[];
  /** Branches of the engine's own search, see `setCover`. */
  readonly nodeLimit?: number;
}

/** A stop of a plan: stand here, point there. */
export interface PlannedStop extends RouteStop {
  /** Where to point the camera, degrees clockwise from the plan's +y axis, in the order of turning right. */
  readonly bearingsDeg: readonly number[];
}

/** Something that cannot be seen, with a place to look for it. */
export type HiddenThing = Omit<Sight, 'seenBy' | 'ends'>;

/** A planned crawl. */
export interface CrawlPlan {
  readonly stops: readonly PlannedStop[];
  readonly wayBack: readonly Point[];
  readonly lengthM: number;
  /** How near the number of stops is to the fewest from the places to choose from, and the way to the shortest. */
  readonly stationsLowerBound: number;
  readonly stationsProven: boolean;
  readonly lengthLowerBoundM: number;
  readonly lengthProven: boolean;
  /** The pictures to take, in order; ids are stop and letter: `1a`, `1b`, `2a`. */
  readonly shots: readonly Station[];
  /** What these pictures will show, with those that are there already. */
  readonly expected: Coverage;
  /** What cannot be seen from anywhere one can crawl to, each thing once; the floor with a place to look for. */
  readonly outOfSight: readonly HiddenThing[];
  readonly notices: readonly Notice[];
}

const PLAN_CELL_M = 0.2;
/** Around what no candidate sees, candidates are set this densely and this near, m. */
const FINE_SPACING_M = 0.3;
const FINE_REACH_M = 1.5;
const ALL_KINDS: readonly SightKind[] = ['floor', 'wall', 'interior-wall', 'pier', 'vent', 'bay'];

/**
 * Plans a crawl: the fewest stations from which everything that can be seen is seen, the bearings to point the camera
 * at each, and the shortest passable way through them from the door. Fewest among places 1 m apart, with more
 * of them around what those do not see; the floor in cells of 0.2 m, walls, pier faces, vents and bays in pieces of at
 * most 0.25 m. `expected` then tells, in finer cells, what the pictures show.
 *
 * It says what the plan allows to pass. It never says that it is safe to enter.
 * @throws EngineError as `coverage` and `crawlRoute`
 */
export function planCrawl(scene: CoverageScene, door: Point, options: PlanOptions = {}): CrawlPlan {
  const draft = draftOf(scene, door, options);
  return planOf(draft, setCover(draft.problem, options.nodeLimit));
}

/** As `planCrawl`, with a solver from outside for what the engine's own search does not prove (`setCoverWith`). */
export async function planCrawlWith(
  scene: CoverageScene,
  door: Point,
  solver: CoverSolver,
  options: PlanOptions = {},
): Promise<CrawlPlan> {
  const draft = draftOf(scene, door, options);
  return planOf(draft, await setCoverWith(draft.problem, solver, options.nodeLimit));
}

/** All that is known before the stations are chosen. */
interface Draft {
  readonly compiled: CompiledScene;
  readonly floor: PassableFloor;
  readonly door: Point;
  /** The door's cell and the ways from there; undefined when the door is not passable. */
  readonly fromDoor: { readonly start: number; readonly ways: Ways } | undefined;
  readonly options: PlanOptions;
  readonly candidates: readonly Station[];
  readonly sights: readonly Sight[];
  readonly problem: CoverProblem;
}

function draftOf(scene: CoverageScene, door: Point, options: PlanOptions): Draft {
  const compiled = compileScene(scene);
  const floor = passableFloor(compiled, options);
  const start = nearestPassable(floor, compiled, door, DOOR_REACH_M);
  const fromDoor = start < 0 ? undefined : { start, ways: waysFrom(floor, start) };
  const kinds = new Set(options.look ?? ALL_KINDS);
  const look = { cellM: options.cellM ?? PLAN_CELL_M };
  const taken = together(lookAroundIn(compiled, options.takenFrom ?? [], look).stations);
  /** What is left to be seen, with the candidates that see it. */
  const leftOf = (seen: SceneSeen): Sight[] => {
    if (taken === null) return sightsOf(seen, kinds);
    const all = sightsOf({ ...seen, stations: [...seen.stations, taken] }, kinds);
    return all.filter(({ seenBy }) => seenBy.at(-1) !== seen.stations.length);
  };
  const spread = (spacingM: number, near?: { places: Point[]; reachM: number }): Station[] =>
    fromDoor ? candidatesOver(floor, fromDoor.ways, spacingM, options, near) : [];
  let candidates = spread(options.spacingM ?? CANDIDATE_SPACING_M);
  let seen = lookAroundIn(compiled, candidates, look);
  let sights = leftOf(seen);
  const places = sights.filter((s) => s.seenBy.length === 0).map((s) => s.at);
  if (places.length > 0) {
    const known = new Set(candidates.map((c) => c.id));
    const finer = spread(FINE_SPACING_M, { places, reachM: FINE_REACH_M }).filter((c) => !known.has(c.id));
    candidates = [...candidates, ...finer];
    seen = { ...seen, stations: [...seen.stations, ...lookAroundIn(compiled, finer, look).stations] };
    sights = leftOf(seen);
  }
  const problem = { candidateCount: candidates.length, rows: sights.map((s) => s.seenBy) };
  return { compiled, floor, door, fromDoor, options, candidates, sights, problem };
}

function planOf(draft: Draft, cover: CoverSolution): CrawlPlan {
  const { compiled, floor, door, fromDoor, options, candidates, sights } = draft;
  const stations = cover.chosen.map((i) => candidates[i]!);
  const route = routeOver(compiled, floor, door, stations, options.returnToDoor ?? true, fromDoor);
  const bearings = bearingsOf(draft, cover.chosen);
  const stops = route.stops.map(
    (stop): PlannedStop => ({ ...stop, bearingsDeg: bearings.get(stop.stationId)! }),
  );
  const shots = stops.flatMap((stop) => shotsOf(stop, options));
  return {
    stops,
    ...routeFigures(route),
    stationsLowerBound: cover.lowerBound,
    stationsProven: cover.proven,
    shots,
    expected: coverage(compiled.scene, [...(options.takenFrom ?? []), ...shots]),
    outOfSight: outOfSight(cover.unseeable.map((row) => sights[row]!)),
    notices: [...compiled.notices, ...route.notices],
  };
}

function routeFigures(route: CrawlRoute) {
  return {
    wayBack: route.wayBack,
    lengthM: route.lengthM,
    lengthLowerBoundM: route.lowerBoundM,
    lengthProven: route.proven,
  };
}

/** For each chosen station the bearings toward what is nearest to it among all that see it. */
function bearingsOf(
  { candidates, sights, options }: Draft,
  chosen: readonly number[],
): Map<string, number[]> {
  const directions = new Map<number, number[]>(chosen.map((c) => [c, []]));
  for (const { at, ends, seenBy } of sights) {
    let nearest = -1;
    let least = Number.POSITIVE_INFINITY;
    for (const c of seenBy) {
      if (!directions.has(c)) continue;
      const away = distanceM(candidates[c]!.at, at);
      if (away >= least) continue;
      least = away;
      nearest = c;
    }
    if (nearest >= 0) addDirections(directions.get(nearest)!, candidates[nearest]!.at, ends ?? [at, at]);
  }
  const view = requireRange(
    'field of view (degrees)',
    options.fieldOfViewDeg ?? USUAL_VIEW.fieldOfViewDeg,
    5,
    360,
  );
  return new Map([...directions].map(([c, list]) => [candidates[c]!.id, pointings(list, view)]));
}

/** Directions from a station over the whole of a piece, a degree apart, so that no gap between pictures cuts it. */
function addDirections(list: number[], from: Point, [a, b]: readonly [Point, Point]): void {
  const first = bearingDeg(from, a);
  const last = bearingDeg(from, b);
  if (first === null || last === null) return;
  const turn = angleBetweenDeg(first, last);
  const toRight = wrapDeg(last - first) <= 180 ? 1 : -1;
  const steps = Math.max(1, Math.ceil(turn));
  for (let k = 0; k <= steps; k += 1) list.push(wrapDeg(first + (toRight * turn * k) / steps));
}

function shotsOf({ number, at, bearingsDeg }: PlannedStop, view: PlannedView): Station[] {
  return bearingsDeg.map((bearing, i) => ({
    id: `${number}${String.fromCharCode(97 + i)}`,
    at,
    bearingDeg: bearing,
    fieldOfViewDeg: view.fieldOfViewDeg ?? USUAL_VIEW.fieldOfViewDeg,
    rangeM: view.rangeM ?? USUAL_VIEW.rangeM,
    heightM: view.heightM ?? USUAL_VIEW.heightM,
  }));
}

/** Each thing once, by its first piece. */
function outOfSight(sights: readonly Sight[]): HiddenThing[] {
  const found = new Map<string, HiddenThing>();
  for (const { seenBy: _, ends: _ends, ...what } of sights) {
    const key = `${what.kind} ${what.id ?? ''} ${what.face ?? ''} ${what.side ?? ''}`;
    if (!found.has(key)) found.set(key, what);
  }
  return [...found.values()];
}
