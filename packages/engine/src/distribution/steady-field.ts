import { EngineError } from '../numerics/engine-error.ts';
import { requireRange } from '../numerics/require-range.ts';
import type { Arrangement } from './arrangement.ts';
import { carriedDown } from './carry-lanes.ts';
import { setCirculation } from './duty-evaluator.ts';
import {
  type Accuracy,
  atDuty,
  dutyEnding,
  firstGuess,
  SOLVED,
  seekThrough,
  systemsDown,
} from './duty-through-grids.ts';
import type { FieldModel } from './field-model.ts';
import { type FieldSystem, fieldSystem } from './field-system.ts';
import { LANES } from './lanes.ts';
import type { MachineAtWork } from './machine-closure.ts';
import { mixedState } from './mixed-state.ts';
import { type MovedAir, movedAir } from './moved-air.ts';
import { solveLanes } from './solve-lanes.ts';
import type { SteadyField } from './steady-state.ts';

/** Options of `steadyField`. */
export interface SteadyOptions {
  /** Background mixing, m²/s; see `backgroundMixing`. */
  readonly mixingM2PerS: number;
  /** Air flows solved before. */
  readonly air?: MovedAir;
  /** Share of the time that the machine runs, measured; by its humidistat when absent. */
  readonly duty?: number;
  /** A state near the one that is looked for. */
  readonly near?: Pick<SteadyField, 'lanes' | 'machine'>;
  /**
   * `final` (default) closes balances to rounding; `ranking` gives humidities to some hundredths of a percent and leaves
   * out the state with the machine off.
   */
  readonly accuracy?: Accuracy;
}

/**
 * The steady state of an arrangement: the duty at which the humidistat reads its set-point and the field that goes with
 * it. Means over on and off times; valid where a cycle is short against the time in which the air goes round.
 *
 * The duty is looked for on coarser grids and taken to the finest by secant steps; each step solves four systems at once:
 * humidity and temperature, each as it is and as it answers to the machine.
 * @throws EngineError for figures or places that make no sense, or a system in which nothing bounds the state
 */
export function steadyField(
  model: FieldModel,
  arrangement: Arrangement,
  options: SteadyOptions,
): SteadyField {
  const mixing = requireRange('background mixing (m²/s)', options.mixingM2PerS, 1e-5, 10);
  requireBound(model);
  const air = options.air ?? movedAir(model, arrangement);
  const system = fieldSystem(model, arrangement, air, mixing);
  const accuracy = options.accuracy ?? 'final';
  if (arrangement.machine === undefined) return withoutMachine(model, system, air, mixing);
  const { machine } = arrangement;
  const systems = systemsDown(model, system);
  const mixed = mixedState(model, machine, system);
  const guess = firstGuess(mixed.machine, options.near);
  const found =
    options.duty === undefined
      ? seekThrough(model, machine, systems, accuracy, guess, options.near)
      : atDuty(model, machine, system, accuracy, requireRange('duty (fraction)', options.duty, 0, 1));
  const { lanes } = found.evaluator;
  const { work } = found.duty.trial;
  const count = model.mesh.count;
  const humidityRatio = new Float64Array(count);
  const temperatureC = new Float64Array(count);
  for (let i = 0; i < count; i += 1) {
    const at = LANES * i;
    humidityRatio[i] = lanes[at]! + work.waterGiven * lanes[at + 1]!;
    temperatureC[i] = lanes[at + 2]! + work.heatGiven * lanes[at + 3]!;
  }
  return {
    outcome: found.outcome,
    machine: work,
    humidityRatio,
    temperatureC,
    mixed,
    offHumidityRatio: accuracy === 'final' ? offMean(model, systems, lanes) : Number.NaN,
    air,
    mixingM2PerS: mixing,
    balance: balanceOf(system, humidityRatio, temperatureC, work),
    endings: {
      transport: found.duty.trial.ending,
      duty: dutyEnding(found.duty, accuracy),
    },
    lanes,
  };
}

/** Refuses a site where nothing holds the air: its humidity or temperature would be anything. */
function requireBound({ totals }: FieldModel): void {
  if (totals.loss[0] === 0) {
    throw new EngineError(
      'bad-input',
      'vapor: give at least one exchange; nothing binds the humidity of the air',
    );
  }
  if (totals.loss[2] === 0) {
    throw new EngineError(
      'bad-input',
      'heat: give at least one exchange; nothing binds the temperature of the air',
    );
  }
}

/** The mean with the machine off is wanted to some digits only. */
const OFF_TOLERANCE = 1e-6;

/** Mean humidity ratio by volume with the machine standing still; it hardly hangs on the grid, so a coarser one serves. */
function offMean(model: FieldModel, systems: readonly FieldSystem[], near: Float64Array): number {
  const level = Math.min(1, systems.length - 1);
  const system = systems[level]!;
  const { operator, solver } = model.room(level);
  setCirculation(operator, system, 0);
  const lanes = carriedDown(model, level, near);
  solveLanes(operator, givenTo(system), lanes, solver, OFF_TOLERANCE);
  return meanOf(system.volumeM3, (i) => lanes[LANES * i]!);
}

/** What cells are given without the machine, in the lanes of humidity and temperature. */
function givenTo(system: FieldSystem): Float64Array {
  const given = new Float64Array(LANES * system.waterGiven.length);
  for (let i = 0; i < system.waterGiven.length; i += 1) {
    given[LANES * i] = system.waterGiven[i]!;
    given[LANES * i + 2] = system.heatGiven[i]!;
  }
  return given;
}

function meanOf(weights: Float64Array, value: (i: number) => number): number {
  let sum = 0;
  let total = 0;
  for (let i = 0; i < weights.length; i += 1) {
    sum += weights[i]! * value(i);
    total += weights[i]!;
  }
  return sum / total;
}

function withoutMachine(
  model: FieldModel,
  system: FieldSystem,
  air: MovedAir,
  mixingM2PerS: number,
): SteadyField {
  const { operator, solver } = model.room(0);
  setCirculation(operator, system, 0);
  const lanes = new Float64Array(LANES * model.mesh.count);
  const transport = solveLanes(operator, givenTo(system), lanes, solver, SOLVED.final);
  const humidityRatio = Float64Array.from({ length: model.mesh.count }, (_, i) => lanes[LANES * i]!);
  const temperatureC = Float64Array.from({ length: model.mesh.count }, (_, i) => lanes[LANES * i + 2]!);
  return {
    outcome: 'none',
    machine: null,
    humidityRatio,
    temperatureC,
    mixed: null,
    offHumidityRatio: meanOf(system.volumeM3, (i) => humidityRatio[i]!),
    air,
    mixingM2PerS,
    balance: balanceOf(system, humidityRatio, temperatureC, null),
    endings: {
      transport,
      duty: { converged: true, reason: 'tolerance-met', residual: 0, iterations: 0 },
    },
    lanes,
  };
}

/** Smallest differences to the surroundings that count as something coming in: humidity ratio and K. */
const LEAST_DIFFERENCE = { water: 1e-6, heat: 0.1 } as const;

/** What comes in less what goes out, over what comes in, for water and heat. */
function balanceOf(
  { loss, waterGiven, heatGiven }: FieldSystem,
  humidityRatio: Float64Array,
  temperatureC: Float64Array,
  work: MachineAtWork | null,
): SteadyField['balance'] {
  const of = (lane: number, given: Float64Array, state: Float64Array, net: number, least: number): number => {
    let sum = net;
    let entering = Math.max(0, net);
    let conductance = 0;
    for (let i = 0; i < given.length; i += 1) {
      const own = loss[LANES * i + lane]!;
      const gain = given[i]! - own * state[i]!;
      sum += gain;
      entering += Math.max(0, gain);
      conductance += own;
    }
    return sum / Math.max(entering, least * conductance);
  };
  const water = work === null ? 0 : work.waterGiven - work.flowM3PerS * work.intakeHumidityRatio;
  const heat = work === null ? 0 : work.heatGiven - work.flowM3PerS * work.intakeC;
  return {
    water: of(0, waterGiven, humidityRatio, water, LEAST_DIFFERENCE.water),
    heat: of(2, heatGiven, temperatureC, heat, LEAST_DIFFERENCE.heat),
  };
}
