import { requireRange } from '../numerics/require-range.ts';
import type { MoldParameters } from './classes.ts';
import { type MoldState, stepMoldIndex } from './step.ts';
import { requireSurfaceSeries } from './surface-series.ts';

/** How a series is run. */
export interface MoldSeriesOptions {
  /** Parameters of the surface, see `moldParameters`. */
  readonly parameters: MoldParameters;
  /** Length of every step [h], above 0 and up to 24; default 1. */
  readonly hoursPerStep?: number;
  /** Index at the start, 0..6; default 0. */
  readonly startIndex?: number;
  /** Also return the index after every step; default false. */
  readonly keepHourly?: boolean;
}

/** What a series did to a surface. */
export interface MoldSeriesResult {
  /** Largest index after any step. */
  readonly maximumIndex: number;
  /** Hours from the start of the series until it was first reached; 0 when nothing grew. */
  readonly hourOfMaximum: number;
  /** Index after the last step. */
  readonly finalIndex: number;
  /** Index after every step, when asked for. */
  readonly hourly?: Float64Array;
}

/**
 * Mold index over a series of surface conditions at even steps.
 *
 * Gaps are refused, not bridged. Compare `maximumIndex` with the limit through `meetsMoldLimit`.
 *
 * @param temperatureC surface temperature in every step [°C], -90..90
 * @param relativeHumidity at the surface in every step [fraction 0..1]
 * @throws EngineError `bad-input` for series of different or no length; `not-finite`, `out-of-range` naming the step
 * @source Hukka and Viitanen 1999; Ojanen, Viitanen et al. 2010 (`moldSources`)
 */
export function moldIndexOfSeries(
  temperatureC: ArrayLike<number>,
  relativeHumidity: ArrayLike<number>,
  options: MoldSeriesOptions,
): MoldSeriesResult {
  requireSurfaceSeries(temperatureC, relativeHumidity);
  const hours = requireRange('hours per step', options.hoursPerStep ?? 1, Number.MIN_VALUE, 24);
  const startIndex = requireRange('mold index at the start', options.startIndex ?? 0, 0, 6);
  const state: MoldState = { index: startIndex, dryHours: 0 };
  const hourly = options.keepHourly ? new Float64Array(temperatureC.length) : undefined;
  let maximumIndex = startIndex;
  let stepsToMaximum = 0;
  for (let i = 0; i < temperatureC.length; i++) {
    stepMoldIndex(state, temperatureC[i]!, relativeHumidity[i]!, hours, options.parameters);
    if (hourly) hourly[i] = state.index;
    if (state.index > maximumIndex) {
      maximumIndex = state.index;
      stepsToMaximum = i + 1;
    }
  }
  const result = { maximumIndex, hourOfMaximum: stepsToMaximum * hours, finalIndex: state.index };
  return hourly ? { ...result, hourly } : result;
}
