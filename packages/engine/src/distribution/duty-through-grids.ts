import type { Ending } from '../numerics/solution.ts';
import type { FieldMachine } from './arrangement.ts';
import { carriedDown, carriedUp } from './carry-lanes.ts';
import { type DutyEvaluator, dutyEvaluator } from './duty-evaluator.ts';
import { type DutyFound, refineDuty, seekDuty } from './duty-search.ts';
import type { FieldModel } from './field-model.ts';
import { coarserSystem, type FieldSystem } from './field-system.ts';
import { coldShareOf, type MachineAtWork } from './machine-closure.ts';
import type { MachineOutcome, SteadyField } from './steady-state.ts';

/** How closely a state is solved. */
export type Accuracy = 'final' | 'ranking';

/** A state to start from. */
export type NearState = Pick<SteadyField, 'lanes' | 'machine'> | undefined;

/** The grids on which a duty is first looked for are at least so coarse, m, and have at least so many cells. */
const SEEKING_CELL_M = 0.8;
const SEEKING_CELLS = 60;
/** How near the reading comes to the set-point, fraction: on coarse grids, on the finest, and for a ranking. */
const WITHIN = { coarse: 3e-4, final: 1e-6, ranking: 5e-5 } as const;
/** How closely the systems are solved, relative to what they are given. */
export const SOLVED = { final: 1e-9, ranking: 1e-5 } as const;
/** The state with the machine off, where only the sign of the reading and the cold limit matter. */
const OFF_SEEKING = 1e-4;

/** The system on the finest grid and on coarser ones, as far as they serve to look for a duty. */
export function systemsDown({ mesh }: FieldModel, finest: FieldSystem): FieldSystem[] {
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

/** A duty with the lanes that go with it. */
export interface Sought {
  readonly outcome: MachineOutcome;
  readonly duty: DutyFound;
  readonly evaluator: DutyEvaluator;
}

/** Looks for the duty from the coarsest grid to the finest. */
export function seekThrough(
  model: FieldModel,
  machine: FieldMachine,
  systems: readonly FieldSystem[],
  accuracy: Accuracy,
  guess: number,
  near: NearState,
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

/** The state at a duty that is known. */
export function atDuty(
  model: FieldModel,
  machine: FieldMachine,
  system: FieldSystem,
  accuracy: Accuracy,
  duty: number,
): Sought {
  const evaluator = dutyEvaluator(system, machine, model.pressurePa, model.room(0), null);
  const off = evaluator.try(0, OFF_SEEKING);
  evaluator.coldShare = coldShareOf(machine, off.work.intakeC);
  const trial = evaluator.try(duty, SOLVED[accuracy]);
  const outcome = evaluator.coldShare === 0 ? 'too-cold' : duty === 0 ? 'idle' : 'given';
  return {
    outcome,
    duty: { outcome: 'undersized', duty, trial, slope: Number.NaN, trials: 2 },
    evaluator,
  };
}

/** Solves once more at the duty that was found, as closely as asked, and mends the duty by what that changed. */
function finish(evaluator: DutyEvaluator, found: DutyFound, accuracy: Accuracy): DutyFound {
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
export function firstGuess(mixed: MachineAtWork, near: NearState): number {
  if (near?.machine != null && near.machine.duty > 0) return 0.8 * near.machine.duty;
  return 0.5 * Math.max(0.02, mixed.duty);
}

/** How the search for a duty ended: residual is the humidity at the humidistat that is left. */
export function dutyEnding({ outcome, trial, trials }: DutyFound, accuracy: Accuracy): Ending {
  const converged =
    trial.work.converged && (outcome !== 'holds' || Math.abs(trial.excess) <= 10 * WITHIN[accuracy]);
  return {
    converged,
    reason: converged ? 'tolerance-met' : 'stagnated',
    residual: outcome === 'holds' ? Math.abs(trial.excess) : 0,
    iterations: trials,
  };
}
