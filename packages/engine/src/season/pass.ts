import type { CompiledCase } from './compiled-case.ts';
import { createSoilSolver, stepHeat } from './heat-step.ts';
import { type Recorder, recordHour, recordPart } from './recorder.ts';
import { createDrive, createStepResult, type SpaceState } from './state.ts';
import { type DriveRules, setDrive, setFlows } from './step-drive.ts';
import { createWaterSolver } from './water-solver.ts';
import { stepWater } from './water-step.ts';
import type { WeatherSeries } from './weather-series.ts';

/** Centered in time for the year that is reported, fully implicit for the long steps of the spin-up. */
const CENTERED = 0.5;
const IMPLICIT = 1;

/**
 * Takes the space through the weather once, in place: for each step the air flows, then temperatures, then water with
 * machines, then wood and films.
 * @param stepsPerHour equal parts that each hour of an hourly series is cut into
 * @param first step to begin with
 * @param end step to stop before
 * @param recorder gets every step and hour; absent during spin-up
 */
export function runPass(
  c: CompiledCase,
  rules: DriveRules,
  series: WeatherSeries,
  state: SpaceState,
  stepsPerHour: number,
  recorder?: Recorder,
  first = 0,
  end = series.steps,
): void {
  const parts = series.hoursPerStep === 1 ? stepsPerHour : 1;
  const seconds = (3600 * series.hoursPerStep) / parts;
  const theta = series.hoursPerStep === 1 ? CENTERED : IMPLICIT;
  const soil = createSoilSolver(c, seconds, theta);
  const water = createWaterSolver(c, seconds, theta);
  const drive = createDrive();
  const out = createStepResult();
  for (let i = first; i < end; i++) {
    setDrive(c, rules, series, i, drive);
    for (let part = 0; part < parts; part++) {
      setFlows(c, rules, state, drive);
      stepHeat(c, soil, drive, state, out);
      stepWater(c, water, drive, state, out);
      if (recorder !== undefined && parts > 1) recordPart(recorder, out.values);
    }
    if (recorder !== undefined) {
      const hour = parts > 1 ? recorder.hour : out.values;
      recordHour(recorder, hour, i, series.month[i]!, state);
      if (parts > 1) hour.fill(0);
    }
  }
}
