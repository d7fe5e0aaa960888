import { ground } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { SpaceGeometry } from '../geometry.ts';

/** Depth whose undisturbed temperature the floor of a space is tied to [m]; rough, replaced by the hourly year. */
export const TIED_DEPTH_M = 1;
/** Ground to air in a crawl space, radiation included (ISO 6946, cold floor below, from memory) [W/(m²·K)]. */
export const GROUND_FILM_W_PER_M2K = 4;

/** Heat through a bare floor and a bare block wall per kelvin (building handbooks, from memory) [W/(m²·K)]. */
export const BARE_FLOOR_W_PER_M2K = 1.6;
export const BARE_WALL_W_PER_M2K = 1.7;

/** Heat per kelvin through a bare part with insulation of a resistance [m²·K/W] on it. */
export function withInsulation(bareWPerM2K: number, addedRsi: number | undefined): number {
  return 1 / (1 / bareWPerM2K + (addedRsi ?? 0));
}

/** Heat couplings of the space [W/K]. */
export interface HeatPaths {
  readonly floorW: number;
  readonly wallW: number;
  readonly groundW: number;
}

/** Couplings of the space to house, outdoors and ground. */
export function heatPaths(job: SurveyedJob, space: SpaceGeometry, soil: ground.Soil): HeatPaths {
  const area = space.result.floorAreaM2;
  const walls = job.plan.walls.filter((w) => w.outdoors);
  const rsi =
    walls.length === 0 ? undefined : walls.reduce((sum, w) => sum + (w.insulationRsi ?? 0), 0) / walls.length;
  const wallArea = space.engine.exposedWallAreaM2 ?? space.result.perimeterM * space.heightM.value;
  const toDepth = 1 / (1 / GROUND_FILM_W_PER_M2K + TIED_DEPTH_M / soil.conductivityWPerMK);
  return {
    floorW: area * withInsulation(BARE_FLOOR_W_PER_M2K, job.house.floorInsulationRsi),
    wallW: wallArea * withInsulation(BARE_WALL_W_PER_M2K, rsi),
    groundW: area * toDepth,
  };
}

/** Thermal class of the soil that the house stands on; average soil where nobody said. */
export function soilOf(job: SurveyedJob): ground.Soil {
  const key =
    job.house.soil === undefined
      ? 'average'
      : job.house.soil === 'sand'
        ? 'sand-or-gravel'
        : job.house.soil === 'rock'
          ? 'rock'
          : 'clay-or-silt';
  return ground.SOILS.find((s) => s.key === key) as ground.Soil;
}
