import { ground, type season } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { Assumptions } from '../assumptions.ts';
import { soilOf } from '../budget/heat-paths.ts';

/** Measured soils scatter about their class by this factor, mostly with their water content (common practice). */
const SCATTER = 1.5;

/** Soil column of the space: its class, in the layers of the engine's default. */
export function seasonSoil(
  job: SurveyedJob,
  base: season.SeasonSoil,
  assumptions: Assumptions,
): season.SeasonSoil {
  const soil = soilOf(job);
  const usual = soil.conductivityWPerMK;
  const conductivityWPerMK = assumptions.band(
    'soilConductivity',
    'Heat conductivity of the soil',
    { value: usual, low: usual / SCATTER, high: usual * SCATTER, unit: 'W/(m·K)' },
    `Class value of ${soil.title.toLowerCase()}; not measured.`,
  ).value;
  return {
    ...base,
    conductivityWPerMK,
    heatCapacityJPerM3K: soil.heatCapacityJPerM3K,
    waveDiffusivityM2PerS: ground.soilDiffusivityM2PerS({
      conductivityWPerMK,
      heatCapacityJPerM3K: soil.heatCapacityJPerM3K,
    }),
  };
}
