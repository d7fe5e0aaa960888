import { EngineError } from '../numerics/engine-error.ts';
import { requireRange } from '../numerics/require-range.ts';
import type { Ending } from '../numerics/solution.ts';
import type { Arrangement, FieldMachine } from './arrangement.ts';
import { cellGraph } from './cell-graph.ts';
import { type DutyEvaluator, dutyEvaluator, setCirculation } from './duty-evaluator.ts';
import { type DutyFound, refineDuty, seekDuty } from './duty-search.ts';
import { evaluatorRoom } from './evaluator-room.ts';
import type { FieldModel } from './field-model.ts';
import { coarserSystem, type FieldSystem, fieldSystem } from './field-system.ts';
import { LANES } from './lanes.ts';
import { coldShareOf, type MachineAtWork } from './machine-closure.ts';
import { type MovedAir, movedAir } from './moved-air.ts';
import { solveLanes } from './solve-lanes.ts';
import type { MachineOutcome, SteadyField } from './steady-state.ts';

/** Options of `steadyField`. */
export interface SteadyOptions {
  /** Background mixing, m²/s; see `backgroundMixing`. */
  readonly mixingM2PerS: number;
  /** Air flows solved before. */
  readonly air?: MovedAir;
  /** A state near the one that is looked for. */
  readonly near?: Pick<SteadyField, 'lanes' | 'machine'>;
  /**
   * `final` (default) closes balances to rounding; `ranking` gives humidities to some hundredths of a percent and leaves
   * out the state with the machine off.
   */
  readonly accuracy?: 'final' | 'ranking';
}

/** The grids on which a duty is first looked for are at least so coarse, m, and have at least so many cells. */
const SEEKING_CELL_M = 0.8;
const SEEKING_CELLS = 60;
/** How near the reading comes to the set-point, fraction: on coarse grids, on the finest, and for a ranking. */
const WITHIN = { coarse: 3e-4, final: 1e-6, ranking: 5e-5 } as const;
const SOLVED = { final: 1e-9, ranking: 1e-5 } as const;
const OFF_TOLERANCE = 1e-6;
/** The state with the machine off, where only the sign of the reading and the cold limit matter. */
const OFF_SEEKING = 1e-4;

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
  const found = seekThrough(model, machine, systems, accuracy, guess, options.near);
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
      duty: dutyEnding(found.duty, WITHIN[accuracy]),
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

/** The system on the finest grid and on coarser ones, as far as they serve to look for a duty. */
function systemsDown({ mesh }: FieldModel, finest: FieldSystem): FieldSystem[] {
  const systems = [finest];
  let cellM = Math.max(mesh.grid.cellXM, mesh.grid.cellYM);
  while (cellM < SEEKING_CELL_M) {
    const next = coarserSystem(systems.at(-1)!);
    if (next === null || next.intake === next.outlet || next.levels[0]!.graph.count < SEEKING_CELLS) break;
    systems.push(next);
    cellM *= 2;
  }
  return systems;
}

interface Sought {
  readonly outcome: MachineOutcome;
  readonly duty: DutyFound;
  readonly evaluator: DutyEvaluator;
}

function seekThrough(
  model: FieldModel,
  machine: FieldMachine,
  systems: readonly FieldSystem[],
  accuracy: 'final' | 'ranking',
  guess: number,
  near: SteadyOptions['near'],
): Sought {
  const { pressurePa } = model;
  const coarsest = systems.length - 1;
  const start = near === undefined ? null : carriedDown(model, coarsest, near.lanes);
  let evaluator = dutyEvaluator(systems[coarsest]!, machine, pressurePa, model.room(coarsest), start);
  const off = evaluator.try(0, OFF_SEEKING);
  const coldShare = coldShareOf(machine, off.work.intakeC);
  const tooCold = coldShare === 0;
  evaluator.coldShare = coldShare;
  let found: DutyFound = tooCold
    ? { outcome: 'idle', duty: 0, trial: off, slope: Number.NaN, trials: 1 }
    : seekDuty(evaluator, guess, coarsest > 0 ? WITHIN.coarse : WITHIN[accuracy]);
  for (let level = coarsest - 1; level >= 0; level -= 1) {
    const lanes = carriedUp(model, level + 1, evaluator.lanes);
    evaluator = dutyEvaluator(systems[level]!, machine, pressurePa, model.room(level), lanes);
    evaluator.coldShare = coldShare;
    if (tooCold) continue;
    const next = refineDuty(evaluator, found, level > 0 ? WITHIN.coarse : WITHIN[accuracy]);
    found = { ...next, trials: found.trials + next.trials };
  }
  const last = finish(evaluator, found, accuracy);
  return { outcome: tooCold ? 'too-cold' : last.outcome, duty: last, evaluator };
}

/** Solves once more at the duty that was found, as closely as asked, and mends the duty by what that changed. */
function finish(evaluator: DutyEvaluator, found: DutyFound, accuracy: 'final' | 'ranking'): DutyFound {
  let { duty } = found;
  let trial = evaluator.try(duty, SOLVED[accuracy]);
  let { trials } = found;
  for (let k = 0; k < 3 && found.outcome === 'holds'; k += 1) {
    if (Math.abs(trial.excess) <= WITHIN[accuracy] || !(found.slope < 0)) break;
    duty = Math.min(1, Math.max(duty / 2, duty - trial.excess / found.slope));
    trial = evaluator.try(duty, SOLVED[accuracy]);
    trials += 1;
  }
  return { ...found, duty, trial, trials };
}

/** A little below the duty of a state nearby, or well below that of mixed air. */
function firstGuess(mixed: MachineAtWork, near: SteadyOptions['near']): number {
  if (near?.machine != null && near.machine.duty > 0) return 0.8 * near.machine.duty;
  return 0.5 * Math.max(0.02, mixed.duty);
}

/**
 * Lanes of a coarser grid for the next finer one: half of the own coarse cell and a quarter of each coarse neighbor beside
 * it, but nothing from behind a barrier.
 */
function carriedUp(model: FieldModel, level: number, coarse: Float64Array): Float64Array {
  const { graph, down } = model.levels[level - 1]!;
  const { cell, face, free } = down!;
  const { faceA, faceB } = graph;
  const fine = new Float64Array(LANES * cell.length);
  for (let i = 0; i < cell.length; i += 1) {
    const from = LANES * cell[i]!;
    for (let lane = 0; lane < LANES; lane += 1) fine[LANES * i + lane] = coarse[from + lane]!;
  }
  for (let f = 0; f < face.length; f += 1) {
    if (face[f]! < 0 || free[f] === 0) continue;
    const a = LANES * faceA[f]!;
    const b = LANES * faceB[f]!;
    const coarseA = LANES * cell[faceA[f]!]!;
    const coarseB = LANES * cell[faceB[f]!]!;
    for (let lane = 0; lane < LANES; lane += 1) {
      const quarter = (coarse[coarseB + lane]! - coarse[coarseA + lane]!) / 4;
      fine[a + lane] = fine[a + lane]! + quarter;
      fine[b + lane] = fine[b + lane]! - quarter;
    }
  }
  return fine;
}

/** Lanes of the finest grid for one some levels coarser: the mean of the cells that go together. */
function carriedDown(model: FieldModel, levels: number, finest: Float64Array): Float64Array {
  let lanes = finest.slice();
  for (let level = 0; level < levels; level += 1) {
    const { graph, down } = model.levels[level]!;
    const coarse = new Float64Array(LANES * model.levels[level + 1]!.graph.count);
    const members = new Int32Array(model.levels[level + 1]!.graph.count);
    for (let i = 0; i < graph.count; i += 1) {
      const to = down!.cell[i]!;
      members[to] = members[to]! + 1;
      for (let lane = 0; lane < LANES; lane += 1) {
        coarse[LANES * to + lane] = coarse[LANES * to + lane]! + lanes[LANES * i + lane]!;
      }
    }
    for (let i = 0; i < coarse.length; i += 1) coarse[i] = coarse[i]! / members[Math.floor(i / LANES)]!;
    lanes = coarse;
  }
  return lanes;
}

/** The whole space as one cell: what one expects who takes its air as mixed. */
function mixedState(
  { totals, pressurePa }: FieldModel,
  machine: FieldMachine,
  { heatGiven, flowM3PerS }: FieldSystem,
): { readonly outcome: MachineOutcome; readonly machine: MachineAtWork } {
  let heat = 0;
  for (let i = 0; i < heatGiven.length; i += 1) heat += heatGiven[i]!;
  const none = new Float64Array(0);
  const one: FieldSystem = {
    levels: ONE_CELL,
    still: none,
    stirred: none,
    steadyFlow: none,
    machineFlow: none,
    loss: totals.loss,
    waterGiven: Float64Array.of(totals.waterGiven),
    heatGiven: Float64Array.of(heat),
    volumeM3: Float64Array.of(1),
    intake: 0,
    outlet: 0,
    sensor: 0,
    flowM3PerS,
  };
  const evaluator = dutyEvaluator(one, machine, pressurePa, evaluatorRoom(ONE_CELL), null);
  const off = evaluator.try(0, 1e-12);
  const coldShare = coldShareOf(machine, off.work.intakeC);
  if (coldShare === 0) return { outcome: 'too-cold', machine: off.work };
  evaluator.coldShare = coldShare;
  const found = seekDuty(evaluator, 0.05, 1e-7);
  return { outcome: found.outcome, machine: found.trial.work };
}

const ONE_CELL = [
  {
    graph: cellGraph({
      count: 1,
      column: new Int32Array(1),
      row: new Int32Array(1),
      faceA: new Int32Array(0),
      faceB: new Int32Array(0),
      faceAxis: new Uint8Array(0),
    }),
    down: null,
  },
];

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

function dutyEnding({ outcome, trial, trials }: DutyFound, within: number): Ending {
  const converged = trial.work.converged && (outcome !== 'holds' || Math.abs(trial.excess) <= 10 * within);
  return {
    converged,
    reason: converged ? 'tolerance-met' : 'stagnated',
    residual: outcome === 'holds' ? Math.abs(trial.excess) : 0,
    iterations: trials,
  };
}
