import type { Ending } from '../numerics/solution.ts';
import type { CompiledCase } from './compiled-case.ts';
import { runPass } from './pass.ts';
import { createState, type SpaceState } from './state.ts';
import type { DriveRules } from './step-drive.ts';
import type { PreparedWeather } from './weather-series.ts';

/** How near the end of the reported year must come to its beginning: soil in K, wood in kg/kg. */
export const REPEAT_SOIL_K = 0.05;
export const REPEAT_WOOD = 0.002;
/** Coarse years before the first hourly one, and hourly years at most. */
const COARSE_YEARS = 2;
const HOURLY_YEARS = 4;

/** Runs the coarse years of the spin-up from a guess. */
export function spinUp(c: CompiledCase, rules: DriveRules, weather: PreparedWeather): SpaceState {
  const state = createState(c, weather.monthMeanC[0]!, weather.hourly.humidityRatio[0]!);
  for (let year = 0; year < COARSE_YEARS; year++) runPass(c, rules, weather.coarse, state, 1);
  return state;
}

/**
 * Whether the year repeats: the largest change of any soil layer over `REPEAT_SOIL_K` and of any wood over
 * `REPEAT_WOOD`. The residual is that ratio, so 1 or less is converged. Undefined when another year is due.
 */
export function endOfSpinUp(start: SpaceState, end: SpaceState, hourlyYears: number): Ending | undefined {
  let residual = 0;
  for (let i = 0; i < start.soilC.length; i++) {
    residual = Math.max(residual, Math.abs(end.soilC[i]! - start.soilC[i]!) / REPEAT_SOIL_K);
  }
  for (let i = 0; i < start.woodSurface.length; i++) {
    residual = Math.max(residual, Math.abs(end.woodSurface[i]! - start.woodSurface[i]!) / REPEAT_WOOD);
    residual = Math.max(residual, Math.abs(end.woodCore[i]! - start.woodCore[i]!) / REPEAT_WOOD);
  }
  const converged = residual <= 1;
  if (!converged && hourlyYears < HOURLY_YEARS) return undefined;
  return {
    converged,
    reason: converged ? 'tolerance-met' : 'iteration-limit',
    residual,
    iterations: COARSE_YEARS + hourlyYears,
  };
}
