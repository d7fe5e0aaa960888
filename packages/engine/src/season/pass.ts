import type { CompiledCase } from './compiled-case.ts';
import { fillTables } from './fast-tables.ts';
import { stepHeat } from './heat-step.ts';
import { loadCase } from './load-case.ts';
import { closeMonth, joinParts, type Recorder, recordHour, recordPart, startRecording } from './recorder.ts';
import { keepState, loadState, type SpaceState } from './state.ts';
import { type DriveRules, setDrive, setFlows } from './step-drive.ts';
import { stepWater } from './water-step.ts';
import type { WeatherSeries } from './weather-series.ts';

/** Centered in time for the year that is reported, fully implicit for the long steps of the spin-up. */
const CENTERED = 0.5;
const IMPLICIT = 1;

/**
 * Takes the space through the weather once, in place: for each step the air flows, then temperatures, then water with
 * machines, then wood and films.
 * @param first step to begin with
 * @param end step to stop before
 */
export function runPass(
  compiled: CompiledCase,
  rules: DriveRules,
  series: WeatherSeries,
  state: SpaceState,
  first = 0,
  end = series.steps,
): void {
  begin(compiled, state, 3600 * series.hoursPerStep, series.hoursPerStep === 1 ? CENTERED : IMPLICIT);
  for (let i = first; i < end; i++) {
    setDrive(rules, series, i);
    setFlows(rules);
    stepHeat();
    stepWater();
  }
  keepState(state);
}

/**
 * Takes the space through a whole year by the hour, in place, and hands each hour to the recorder.
 * @param stepsPerHour equal parts that each hour is cut into
 */
export function runYear(
  compiled: CompiledCase,
  rules: DriveRules,
  hourly: WeatherSeries,
  state: SpaceState,
  stepsPerHour: number,
  recorder: Recorder,
): void {
  begin(compiled, state, 3600 / stepsPerHour, CENTERED);
  startRecording(recorder);
  const { month, steps } = hourly;
  for (let i = 0; i < steps; i++) {
    setDrive(rules, hourly, i);
    if (stepsPerHour === 1) {
      setFlows(rules);
      stepHeat();
      stepWater();
    } else {
      for (let part = 0; part < stepsPerHour; part++) {
        setFlows(rules);
        stepHeat();
        stepWater();
        recordPart(recorder);
      }
      joinParts();
    }
    recordHour(recorder, i);
    if (i + 1 === steps || month[i + 1] !== month[i]) closeMonth(recorder, month[i]!);
  }
  keepState(state);
}

function begin(compiled: CompiledCase, state: SpaceState, seconds: number, theta: number): void {
  fillTables();
  loadCase(compiled, seconds, theta);
  loadState(state);
}
