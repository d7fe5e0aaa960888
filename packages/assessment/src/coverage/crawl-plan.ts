import { coverage as engine, type Notice } from '@undercroft/engine';
import type { Job, Point, SurveyedJob } from '@undercroft/record';
import type { Assessment } from '../assessment.ts';
import { Assumptions } from '../assumptions.ts';
import { JobError } from '../job-error.ts';
import { requireSurveyed } from '../surveyed.ts';
import type { FromWall } from './coverage-assessment.ts';
import { fromWalls } from './from-walls.ts';
import { namesOf } from './names.ts';
import { type SpaceScene, sceneOf } from './scene.ts';
import { picturesOf } from './stations.ts';
import { doorPlace } from './subjects.ts';

/** How a crawl is planned. */
export interface CrawlOptions {
  /** `all` plans for the whole space, `rest` (default) for what no picture shows yet. */
  readonly what?: 'all' | 'rest';
  /** Whether joist bays are to be looked into as well, which takes many more stations; false by default. */
  readonly bays?: boolean;
  /** Horizontal angle of the camera [degrees] and how far the lamp shows detail [m]; the engine's usual ones by default. */
  readonly fieldOfViewDeg?: number;
  readonly rangeM?: number;
}

/** One picture to take at a stop. */
export interface CrawlShot {
  /** Number of the stop and a letter, e.g. `2b`. */
  readonly id: string;
  /** Where to point the camera [degrees clockwise from the plan's y axis]. */
  readonly bearingDeg: number;
  /** The same from true north. */
  readonly compassDeg: number;
}

/** Stand here, point there. */
export interface CrawlStop {
  readonly number: number;
  readonly at: Point;
  /** The two nearest walls that do not run alike. */
  readonly fromWalls: readonly FromWall[];
  /** Way from the stop before, or from the door, as the places where it bends. */
  readonly path: readonly Point[];
  readonly legM: number;
  readonly shots: readonly CrawlShot[];
}

/** A crawl through the fewest stations, from the door and back. */
export interface CrawlPlanShown {
  readonly what: 'all' | 'rest';
  readonly door: { readonly id: string; readonly at: Point };
  readonly view: { readonly fieldOfViewDeg: number; readonly rangeM: number };
  readonly stops: readonly CrawlStop[];
  readonly wayBack: readonly Point[];
  readonly lengthM: number;
  /** No choice of stations has fewer than this; as many as there are stops when proven. */
  readonly stationsLowerBound: number;
  readonly stationsProven: boolean;
  readonly lengthLowerBoundM: number;
  readonly lengthProven: boolean;
  /** Share of the floor that will be shown, with the pictures that are there, 0..1. */
  readonly floorShare: number;
  /** What cannot be seen from anywhere one can crawl to. */
  readonly outOfSight: readonly {
    readonly kind: string;
    readonly id?: string;
    /** For people; absent for the floor. */
    readonly name?: string;
    readonly face?: number;
    readonly side?: 'left' | 'right';
    readonly at: Point;
  }[];
  readonly notices: readonly Notice[];
}

const KINDS: readonly engine.SightKind[] = ['floor', 'wall', 'interior-wall', 'pier', 'vent'];

type Geometry = Assessment['geometry'];

interface Asked {
  readonly space: SpaceScene;
  readonly door: CrawlPlanShown['door'];
  readonly options: engine.PlanOptions;
}

/** The first door that has a place. */
function doorOf(job: SurveyedJob, space: SpaceScene): CrawlPlanShown['door'] {
  for (const door of job.plan.doors) {
    const at = doorPlace(door, space);
    if (at !== undefined) return { id: door.id, at };
  }
  const found = job.plan.doors.length === 0 ? 'no door' : 'no door with a place';
  throw new JobError([
    { path: 'plan.doors', found, expected: 'the access door, on its wall or at its place' },
  ]);
}

function askedFor(job: SurveyedJob, geometry: Geometry, options: CrawlOptions): Asked {
  const space = sceneOf(job, geometry);
  const { what = 'rest', bays = false, fieldOfViewDeg, rangeM } = options;
  const taken = what === 'all' ? [] : picturesOf(job, new Assumptions()).placed.flatMap((p) => p.stations);
  return {
    space: bays ? space : { ...space, scene: { ...space.scene, bays: [] } },
    door: doorOf(job, space),
    options: {
      noGo: space.noGo,
      look: bays ? [...KINDS, 'bay'] : KINDS,
      takenFrom: taken,
      ...(fieldOfViewDeg === undefined ? {} : { fieldOfViewDeg }),
      ...(rangeM === undefined ? {} : { rangeM }),
    },
  };
}

function shown(
  job: SurveyedJob,
  geometry: Geometry,
  { door, options, space }: Asked,
  plan: engine.CrawlPlan,
  what: 'all' | 'rest',
): CrawlPlanShown {
  const { USUAL_VIEW } = engine;
  const nameOf = namesOf(job, geometry);
  const stops = plan.stops.map(({ number, at, path, legM, bearingsDeg }): CrawlStop => {
    const shots = bearingsDeg.map((deg, i) => {
      const bearingDeg = Math.round(deg) % 360;
      const id = `${number}${String.fromCharCode(97 + i)}`;
      return { id, bearingDeg, compassDeg: (bearingDeg + job.plan.northDeg) % 360 };
    });
    return { number, at, fromWalls: fromWalls(at, geometry, nameOf), path, legM, shots };
  });
  return {
    what,
    door,
    view: {
      fieldOfViewDeg: options.fieldOfViewDeg ?? USUAL_VIEW.fieldOfViewDeg,
      rangeM: options.rangeM ?? USUAL_VIEW.rangeM,
    },
    stops,
    wayBack: plan.wayBack,
    lengthM: plan.lengthM,
    stationsLowerBound: plan.stationsLowerBound,
    stationsProven: plan.stationsProven,
    lengthLowerBoundM: plan.lengthLowerBoundM,
    lengthProven: plan.lengthProven,
    floorShare: plan.expected.floorShare,
    outOfSight: plan.outOfSight.map((hidden) => {
      if (hidden.id === undefined) return hidden;
      const id = hidden.kind === 'wall' ? geometry.edges[Number(hidden.id)].id : hidden.id;
      return { ...hidden, id, name: nameOf(hidden.kind, id) };
    }),
    notices: [...space.notices, ...plan.notices],
  };
}

/**
 * The fewest stations that show everything, or everything that no picture shows yet, and the shortest passable way
 * through them from the door: stand here, point there. Takes 0.1 to 3 s. It says what the plan allows to pass, never
 * that it is safe to enter.
 * @throws JobError for a job without walls, ground or a door with a place
 * @throws EngineError for sizes of the plan that make no sense
 */
export function crawlPlanOf(
  record: Job,
  { geometry }: Pick<Assessment, 'geometry'>,
  options: CrawlOptions = {},
): CrawlPlanShown {
  const job = requireSurveyed(record);
  const asked = askedFor(job, geometry, options);
  const plan = engine.planCrawl(asked.space.scene, asked.door.at, asked.options);
  return shown(job, geometry, asked, plan, options.what ?? 'rest');
}

/** As `crawlPlanOf`, with a solver from outside where the engine's own search does not prove the number of stations. */
export async function crawlPlanWith(
  record: Job,
  { geometry }: Pick<Assessment, 'geometry'>,
  solver: engine.CoverSolver,
  options: CrawlOptions = {},
): Promise<CrawlPlanShown> {
  const job = requireSurveyed(record);
  const asked = askedFor(job, geometry, options);
  const plan = await engine.planCrawlWith(asked.space.scene, asked.door.at, solver, asked.options);
  return shown(job, geometry, asked, plan, options.what ?? 'rest');
}
