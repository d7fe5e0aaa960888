import type { season } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import { type Assumptions, measured } from '../assumptions.ts';
import { BARE_WALL_W_PER_M2K, withInsulation } from '../budget/heat-paths.ts';
import { wallPaths, wallPermeance } from '../budget/wall-paths.ts';
import type { SpaceGeometry } from '../geometry.ts';

type WallFacts = SurveyedJob['plan']['walls'][number];

/** Bare block or concrete against soil (building handbooks, from memory) [W/(m²·K)]. */
const BARE_BELOW_W_PER_M2K = 1.2;
/** Grade outside over the floor of the space, where nobody looked [m]; an estimate of the trade, no source. */
const USUAL_GRADE = { value: 0.2, low: 0, high: 0.5, unit: 'm' } as const;
/** The outside ground that stands for a wall lies this far below grade at its middle and beyond [m]. */
const BESIDE_WALL_M = 0.25;

interface WallStrip {
  readonly facts: WallFacts | undefined;
  readonly lengthM: number;
  readonly aboveM: number;
  readonly belowM: number;
}

function strips(job: SurveyedJob, space: SpaceGeometry, assumptions: Assumptions): WallStrip[] {
  return space.engine.walls
    .filter((w) => w.outdoors)
    .map(({ edge, heightM }) => {
      const facts = job.plan.walls.find((w) => w.wallId === edge.id);
      const height = heightM ?? space.heightM.value;
      const grade =
        facts?.gradeAboveFloorM ??
        assumptions.band(
          'gradeAboveFloor',
          'Outside grade over the floor of the space',
          USUAL_GRADE,
          'Not leveled at every wall.',
        ).value;
      const belowM = Math.min(Math.max(0, grade), height);
      return { facts, lengthM: edge.lengthM, aboveM: height - belowM, belowM };
    });
}

/** Vapor that the part of a wall above grade lets through per pascal, where no liner covers it [kg/(s·Pa)]. */
function aboveGradeVapor({ facts, lengthM, aboveM, belowM }: WallStrip): number {
  const permeance = facts === undefined ? undefined : wallPermeance(facts);
  if (permeance === undefined) return 0;
  const covered = facts?.linerSealed === true ? Math.max(0, (facts.linerHeightM ?? 0) - belowM) : 0;
  return lengthM * Math.max(0, aboveM - covered) * permeance;
}

/** Rising damp of all walls as one wall of the same wetted length. */
function oneCapillaryWall(
  job: SurveyedJob,
  space: SpaceGeometry,
  assumptions: Assumptions,
  none: season.SeasonWalls['capillary'],
): { readonly capillary: season.SeasonWalls['capillary']; readonly belowVapor: number } {
  const paths = wallPaths(job, space.result, measured(15), assumptions);
  const belowVapor = paths.dampMasonry.reduce(
    (sum, m) => sum + m.areaM2.value * m.permeanceKgPerM2SPa.value,
    0,
  );
  const wicking = paths.wickingMasonry;
  const lengthM = wicking.reduce((sum, w) => sum + w.lengthM.value, 0);
  if (lengthM === 0) return { capillary: { ...none, lengthM: 0 }, belowVapor };
  const mean = (pick: (wall: (typeof wicking)[number]) => number) =>
    wicking.reduce((sum, w) => sum + w.lengthM.value * pick(w), 0) / lengthM;
  return {
    capillary: {
      lengthM,
      faceHeightM: mean((w) => w.faceHeightM.value),
      thicknessM: mean((w) => w.thicknessM.value),
      sorptivityMPerRootS: mean((w) => w.sorptivityMPerRootS.value),
      wetPorosity: mean((w) => w.wetPorosity.value),
    },
    belowVapor,
  };
}

/** Foundation walls as the year takes them; its one permeance is the mean over all outside walls. */
export function seasonWalls(
  job: SurveyedJob,
  space: SpaceGeometry,
  base: season.SeasonWalls,
  assumptions: Assumptions,
): season.SeasonWalls {
  const all = strips(job, space, assumptions);
  const above = all.reduce((sum, s) => sum + s.lengthM * s.aboveM, 0);
  const below = all.reduce((sum, s) => sum + s.lengthM * s.belowM, 0);
  const length = all.reduce((sum, s) => sum + s.lengthM, 0);
  const heat = (bare: number, height: (s: WallStrip) => number) =>
    all.reduce((sum, s) => sum + s.lengthM * height(s) * withInsulation(bare, s.facts?.insulationRsi), 0);
  const { capillary, belowVapor } = oneCapillaryWall(job, space, assumptions, base.capillary);
  const vapor = belowVapor + all.reduce((sum, s) => sum + aboveGradeVapor(s), 0);
  return {
    ...base,
    aboveGradeAreaM2: above,
    aboveGradeUWPerM2K: above > 0 ? heat(BARE_WALL_W_PER_M2K, (s) => s.aboveM) / above : 0,
    belowGradeAreaM2: below,
    belowGradeUWPerM2K: below > 0 ? heat(BARE_BELOW_W_PER_M2K, (s) => s.belowM) / below : 0,
    belowGradeDepthM: BESIDE_WALL_M + (length > 0 ? below / length / 2 : 0),
    permeanceKgPerM2SPa: above + below > 0 ? vapor / (above + below) : 0,
    capillary,
  };
}
