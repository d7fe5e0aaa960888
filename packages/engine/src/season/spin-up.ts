import type { Ending } from '../numerics/solution.ts';
import type { CompiledCase } from './compiled-case.ts';
import { runPass } from './pass.ts';
import { WOOD_SITES } from './places.ts';
import { copyState, createState, type SpaceState } from './state.ts';
import type { DriveRules } from './step-drive.ts';
import { COARSE_HOURS, type PreparedWeather } from './weather-series.ts';

/** How near the end of the reported year must come to its beginning: soil in K, wood in kg/kg. */
const REPEAT_SOIL_K = 0.05;
const REPEAT_WOOD = 0.002;
/**
 * Days at the end of the coarse year that are run by the hour: the top of the soil holds a daily wave that half-day steps
 * put a few hours late, and wood settles on what half-day steps of a machine left out.
 */
const HOURLY_DAYS = 10;
/** Coarse years that may follow when the reported year did not repeat, and hourly years in all. */
const MORE_COARSE_YEARS = 12;
export const HOURLY_YEARS = 4;
/** Residual from which on coarse years are worth their while. */
const FAR = 6;

/** A space on January 1: what a coarse year made of it, and what the hours that followed did. */
export interface SettledSpace {
  readonly coarse: SpaceState;
  readonly hourly: SpaceState;
}

/**
 * First spin-up: one coarse year, which brings soil within 0.02 K and wood within 0.002.
 * @param near a space that differs little, to start from in place of a guess; what half-day steps left out there is
 *   taken to be left out here too
 */
export function spinUp(
  c: CompiledCase,
  rules: DriveRules,
  weather: PreparedWeather,
  near?: SettledSpace,
): { readonly coarse: SpaceState; readonly start: SpaceState } {
  const known = near?.coarse.soilC.length === c.layers ? near : undefined;
  const state =
    known === undefined
      ? createState(c, weather.monthMeanC[0]!, weather.hourly.humidityRatio[0]!)
      : copyState(known.coarse);
  const guess = copyState(state);
  coarseYear(c, rules, weather, state);
  WOOD_SITES.forEach((site, i) => {
    // What a year leaves of a wrong guess in the core, put right.
    const left = Math.exp(-365 / c.source.wood[site].coreDays);
    if (left < 0.5) {
      state.woodCore[i] =
        state.woodCore[i]! + ((state.woodCore[i]! - guess.woodCore[i]!) * left) / (1 - left);
    }
  });
  const coarse = copyState(state);
  if (known !== undefined) {
    addLeftOut(state.soilC, known, 'soilC');
    addLeftOut(state.woodSurface, known, 'woodSurface');
    addLeftOut(state.woodCore, known, 'woodCore');
  }
  return { coarse, start: state };
}

/** Adds what half-day steps left out of a space near by. */
function addLeftOut(
  values: Float64Array,
  { coarse, hourly }: SettledSpace,
  of: 'soilC' | 'woodSurface' | 'woodCore',
): void {
  const driest = of === 'soilC' ? Number.NEGATIVE_INFINITY : 0;
  for (let i = 0; i < values.length; i++) {
    values[i] = Math.max(driest, values[i]! + hourly[of][i]! - coarse[of][i]!);
  }
}

/**
 * More of it after a reported year that did not repeat: where it was far off, coarse years until they repeat; where it was
 * near, nothing, because the year itself brought it nearer. Returns the number of coarse years.
 */
export function spinOn(
  c: CompiledCase,
  rules: DriveRules,
  weather: PreparedWeather,
  state: SpaceState,
  residual: number,
): number {
  if (residual < FAR) return 0;
  for (let year = 1; year < MORE_COARSE_YEARS; year++) {
    const before = copyState(state);
    coarseYear(c, rules, weather, state);
    if (change(before, state) < 0.25) return year;
  }
  return MORE_COARSE_YEARS;
}

function coarseYear(c: CompiledCase, rules: DriveRules, weather: PreparedWeather, state: SpaceState): void {
  const { coarse, hourly } = weather;
  const left = 24 * HOURLY_DAYS;
  runPass(c, rules, coarse, state, 0, coarse.steps - left / COARSE_HOURS);
  runPass(c, rules, hourly, state, hourly.steps - left);
}

/** Largest change of any soil layer over its tolerance, or of any wood over that of wood. */
function change(start: SpaceState, end: SpaceState): number {
  let residual = 0;
  for (let i = 0; i < start.soilC.length; i++) {
    residual = Math.max(residual, Math.abs(end.soilC[i]! - start.soilC[i]!) / REPEAT_SOIL_K);
  }
  for (let i = 0; i < start.woodSurface.length; i++) {
    residual = Math.max(residual, Math.abs(end.woodSurface[i]! - start.woodSurface[i]!) / REPEAT_WOOD);
    residual = Math.max(residual, Math.abs(end.woodCore[i]! - start.woodCore[i]!) / REPEAT_WOOD);
  }
  return residual;
}

/** Whether the year repeats; 1 or less is converged. Undefined when another year is due. */
export function endOfSpinUp(start: SpaceState, end: SpaceState, years: number): Ending {
  const residual = change(start, end);
  const converged = residual <= 1;
  return {
    converged,
    reason: converged ? 'tolerance-met' : 'iteration-limit',
    residual,
    iterations: years,
  };
}
