import { requireRange } from '../numerics/require-range.ts';
import { checkCase } from './check-case.ts';
import { compileCase } from './compiled-case.ts';
import { fillTables } from './fast-tables.ts';
import { runYear } from './pass.ts';
import { createRecorder } from './recorder.ts';
import type { SeasonCase, SeasonWeather } from './season-case.ts';
import { type SeasonResult, seasonResult } from './season-result.ts';
import { endOfSpinUp, HOURLY_YEARS, type SettledSpace, spinOn, spinUp } from './spin-up.ts';
import { copyState } from './state.ts';
import { createDriveRules, type FlowTables } from './step-drive.ts';
import { type PreparedWeather, prepareWeather } from './weather-series.ts';

/** How a season is run. */
export interface SeasonOptions {
  /** Keep the hourly series; default false. */
  readonly hourly?: boolean;
  /** Follow the mold index of every class on every surface, not only of the class that the case names. */
  readonly allMoldClasses?: boolean;
  /** Equal parts that each hour is cut into, 1 to 60; default 1. More shows what the length of the step does. */
  readonly stepsPerHour?: number;
  /** Also return the state that the reported year began with; default false. */
  readonly keepStart?: boolean;
  /** Flows of networks that were worked out before, for calls that meet the same network objects again. */
  readonly flows?: FlowTables;
}

/**
 * Runs a year by the hour for each case, with the spin-up that soil and wood need.
 *
 * Weather values hold for their whole hour. Each case is run by itself with room that is used again for the next, so
 * memory does not grow with their number but by their results. Same input, same output.
 * @throws EngineError `bad-input`, `not-finite`, `out-of-range`, naming the case and the quantity or the hour
 */
export function runSeason(
  cases: readonly SeasonCase[],
  weather: SeasonWeather,
  options: SeasonOptions = {},
): SeasonResult[] {
  const prepared = prepareWeather(weather);
  const tables = options.flows ?? new WeakMap();
  return cases.map((source) => runCase(source, prepared, tables, options));
}

/** Runs one case in weather that has been prepared, sharing the flow tables of networks seen before. */
export function runCase(
  source: SeasonCase,
  weather: PreparedWeather,
  tables: FlowTables,
  options: SeasonOptions,
): SeasonResult {
  return runNear(source, weather, tables, options).result;
}

/** The same, from how a space that differs little settled, and with how this one did. */
export function runNear(
  source: SeasonCase,
  weather: PreparedWeather,
  tables: FlowTables,
  options: SeasonOptions,
  near?: SettledSpace,
): { readonly result: SeasonResult; readonly settled: SettledSpace } {
  checkCase(source);
  fillTables();
  const c = compileCase(source, weather.meanPressurePa);
  const rules = createDriveRules(source, weather, tables);
  const stepsPerHour = Math.round(requireRange('steps per hour', options.stepsPerHour ?? 1, 1, 60));
  let { coarse, start: state } = spinUp(c, rules, weather, near);
  let years = 1;
  for (let hourlyYears = 1; ; hourlyYears++) {
    years++;
    const start = copyState(state);
    const recorder = createRecorder(
      c,
      stepsPerHour,
      options.allMoldClasses === true,
      options.hourly === true,
    );
    runYear(c, rules, weather.hourly, state, stepsPerHour, recorder);
    const ending = endOfSpinUp(start, state, years);
    if (ending.converged || hourlyYears === HOURLY_YEARS) {
      return {
        result: seasonResult(c, rules, recorder, start, state, ending, options.keepStart === true),
        settled: { coarse, hourly: state },
      };
    }
    // The steady year of the half-day steps lies a little beside that of the hours: a year that starts there fails again
    // by the same amount. So the next starts where this one ended, and only if that fails too is more spin-up due.
    if (hourlyYears % 2 === 0) {
      years += spinOn(c, rules, weather, state, ending.residual);
      coarse = copyState(state);
    }
  }
}
