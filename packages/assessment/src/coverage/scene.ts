import { coverage as engine, type Notice } from '@undercroft/engine';
import type { Point, SurveyedJob } from '@undercroft/record';
import type { GeometryResult } from '../assessment.ts';

/** A space as the engine looks around in it. */
export interface SpaceScene {
  readonly scene: engine.CoverageScene;
  /** Places that nobody is to enter. */
  readonly noGo: readonly (readonly Point[])[];
  /** Index in the outline of each wall, by the id of the corner or leg at which it begins. */
  readonly edgeOf: ReadonlyMap<string, number>;
  readonly notices: readonly Notice[];
}

/** Sizes of the space that the scene needs. */
export type SceneGeometry = Pick<GeometryResult, 'corners' | 'edges' | 'clearHeightM'>;

/** Bays between the joists, where one run of them covers the whole floor; which of several lies where is not drawn. */
function baysOf(
  { plan }: SurveyedJob,
  geometry: SceneGeometry,
): { bays: engine.JoistBay[]; notices: Notice[] } {
  const [run, ...more] = plan.joists;
  if (run === undefined) return { bays: [], notices: [] };
  if (more.length > 0) {
    const message =
      'Several runs of joists are drawn and the plan does not say where each lies; joist bays are not looked at.';
    return { bays: [], notices: [{ code: 'joist-runs-unplaced', message }] };
  }
  const { id, bearingDeg, spacingM, depthM, clearanceM } = run;
  const undersideM = clearanceM ?? geometry.clearHeightM.mean;
  return {
    bays: engine.joistBays(geometry.corners, { id, bearingDeg, spacingM, depthM, undersideM }),
    notices: [],
  };
}

/** Things that hide nothing and are worth naming where nobody looked. */
function thingsOf({ plan, findings }: SurveyedJob): engine.SceneThing[] {
  return [
    ...plan.zones.map(({ id, outline }) => ({ id, kind: 'zone', outline })),
    ...plan.obstacles.filter(isOnlyNoGo).map(({ id, outline }) => ({ id, kind: 'obstacle', outline })),
    ...findings.flatMap(({ id, place: { at } }) => (at === undefined ? [] : [{ id, kind: 'finding', at }])),
    ...plan.equipment.map(({ id, at }) => ({ id, kind: 'equipment', at })),
  ];
}

/** A place to keep out of, such as a spill, of which nobody said that it is as high as the joists. */
const isOnlyNoGo = ({ noGo, heightM }: SurveyedJob['plan']['obstacles'][number]): boolean =>
  noGo && heightM === undefined;

/**
 * The scene of a job: what hides what, and what is worth naming. Obstacles that nobody is to enter and that have no
 * height hide nothing. Vents of walls that are not drawn are left out.
 * @throws EngineError for joists with a spacing that makes no sense
 */
export function sceneOf(job: SurveyedJob, geometry: SceneGeometry): SpaceScene {
  const { plan } = job;
  const edgeOf = new Map(geometry.edges.map((edge, index) => [edge.id, index]));
  const { bays, notices } = baysOf(job, geometry);
  return {
    scene: {
      outline: geometry.corners,
      interiorWalls: plan.interiorWalls,
      piers: plan.piers,
      obstacles: plan.obstacles.filter((o) => !isOnlyNoGo(o)),
      ducts: plan.ducts,
      girders: plan.girders,
      vents: plan.vents.flatMap(({ id, wallId, offsetM, widthM, heightM, sillHeightM }) => {
        const edge = edgeOf.get(wallId);
        if (edge === undefined) return [];
        const middle = sillHeightM === undefined ? {} : { middleM: Math.max(0, sillHeightM + heightM / 2) };
        return [{ id, edge, offsetM, widthM, ...middle }];
      }),
      bays,
      clearHeights: plan.heights,
      things: thingsOf(job),
    },
    noGo: plan.obstacles.filter((o) => o.noGo).map((o) => o.outline),
    edgeOf,
    notices,
  };
}
