import type { Ending } from '../numerics/solution.ts';
import type { LaneOperator } from './lane-operator.ts';
import { dots, laneSums, rest, shift, step, turn } from './lane-vectors.ts';
import { LANES } from './lanes.ts';
import { applyOperator, cycle } from './multigrid-cycle.ts';

/** Room for one solution at a time on grids of one size. */
export interface SolverRoom {
  readonly size: number;
  readonly residual: Float64Array;
  readonly shadow: Float64Array;
  readonly direction: Float64Array;
  readonly directionImage: Float64Array;
  readonly correction: Float64Array;
  readonly correctionImage: Float64Array;
  readonly search: Float64Array;
}

export function solverRoom(cells: number): SolverRoom {
  const size = LANES * cells;
  const array = () => new Float64Array(size);
  return {
    size,
    residual: array(),
    shadow: array(),
    direction: array(),
    directionImage: array(),
    correction: array(),
    correctionImage: array(),
    search: array(),
  };
}

/** Steps after which a solution that does not come nearer is given up. */
const PATIENCE = 40;
/** Steps in all before it is given up. */
const MOST_STEPS = 400;
/** Times that the true residual is taken before its rounding is taken for the end. */
const MOST_LOOKS = 4;

/**
 * Solves A x = b for all lanes at once, from the x that is given, by stabilized bi-conjugate gradients with the
 * multigrid cycle as preconditioner (van der Vorst 1992, from memory). A lane with b = 0 gets x = 0; one that has
 * reached the tolerance waits for the others. In the end x is shifted by one number for each lane, so that what all
 * cells lose together is what all are given: balances then close to rounding.
 * @param tolerance norm of b − A x over the norm of b, by lane
 * @returns how it ended, with the greatest residual of the lanes, relative to b
 */
export function solveLanes(
  operator: LaneOperator,
  b: Float64Array,
  x: Float64Array,
  room: SolverRoom,
  tolerance: number,
): Ending {
  const finest = operator.levels[0]!;
  const { residual: r, shadow, direction: p, directionImage: v } = room;
  const { correction: t, correctionImage: image, search } = room;
  const size = room.size;
  const norm = new Float64Array(LANES);
  const rho = new Float64Array(LANES);
  const alpha = new Float64Array(LANES);
  const omega = new Float64Array(LANES);
  const sums = new Float64Array(LANES);
  const others = new Float64Array(LANES);
  const active = new Uint8Array(LANES);
  dots(b, b, norm);
  for (let lane = 0; lane < LANES; lane += 1) {
    norm[lane] = Math.sqrt(norm[lane]!);
    if (norm[lane] === 0) for (let i = lane; i < size; i += LANES) x[i] = 0;
  }
  let steps = 0;
  let worst = 0;
  let best = Number.POSITIVE_INFINITY;
  let bestAt = 0;
  let restart = true;
  let looks = 0;
  let reason: Ending['reason'] = 'iteration-limit';
  for (; steps <= MOST_STEPS; steps += 1) {
    if (restart) {
      applyOperator(finest, x, image);
      rest(b, image, r);
      shadow.set(r);
      p.fill(0);
      v.fill(0);
      rho.fill(1);
      alpha.fill(1);
      omega.fill(1);
      for (let lane = 0; lane < LANES; lane += 1) active[lane] = norm[lane]! > 0 ? 1 : 0;
    }
    dots(r, r, sums);
    worst = 0;
    let busy = false;
    for (let lane = 0; lane < LANES; lane += 1) {
      if (norm[lane] === 0) continue;
      const left = Math.sqrt(sums[lane]!) / norm[lane]!;
      if (left > worst || Number.isNaN(left)) worst = left;
      if (!(left > tolerance)) active[lane] = 0;
      else if (active[lane] === 1) busy = true;
    }
    if (!busy) {
      if (restart) {
        reason = 'tolerance-met';
        break;
      }
      // The residual was carried along; look at the true one before believing it.
      restart = true;
      looks += 1;
      if (looks <= MOST_LOOKS) continue;
      reason = 'stagnated';
      break;
    }
    restart = false;
    if (worst < 0.9 * best) {
      best = worst;
      bestAt = steps;
    } else if (steps - bestAt > PATIENCE) {
      reason = 'stagnated';
      break;
    }
    dots(shadow, r, sums);
    for (let lane = 0; lane < LANES; lane += 1) {
      const now = sums[lane]!;
      const beta = active[lane] === 1 ? (now / rho[lane]!) * (alpha[lane]! / omega[lane]!) : 0;
      if (!Number.isFinite(beta)) restart = true;
      others[lane] = beta;
      rho[lane] = now;
    }
    if (restart) continue;
    turn(r, p, v, others, omega);
    cycle(operator, p, search);
    applyOperator(finest, search, v);
    dots(shadow, v, sums);
    for (let lane = 0; lane < LANES; lane += 1) {
      alpha[lane] = active[lane] === 1 && sums[lane] !== 0 ? rho[lane]! / sums[lane]! : 0;
    }
    step(x, search, r, v, alpha);
    cycle(operator, r, t);
    applyOperator(finest, t, image);
    dots(image, r, sums);
    dots(image, image, others);
    for (let lane = 0; lane < LANES; lane += 1) {
      omega[lane] = active[lane] === 1 && others[lane]! > 0 ? sums[lane]! / others[lane]! : 0;
    }
    step(x, t, r, image, omega);
  }
  shiftToBalance(operator, b, x);
  return { converged: reason === 'tolerance-met', reason, residual: worst, iterations: Math.max(0, steps) };
}

/**
 * Adds to each lane the number that makes what all cells lose by themselves what they are given: through faces nothing is
 * lost. Two rounds, as the first leaves the rounding of a long sum.
 */
function shiftToBalance(operator: LaneOperator, b: Float64Array, x: Float64Array): void {
  const { loss } = operator.levels[0]!;
  const given = new Float64Array(LANES);
  const taken = new Float64Array(LANES);
  const by = new Float64Array(LANES);
  laneSums(b, given);
  for (let round = 0; round < 2; round += 1) {
    dots(loss, x, taken);
    for (let lane = 0; lane < LANES; lane += 1) {
      const total = operator.totalLoss[lane]!;
      by[lane] = total > 0 && given[lane] !== 0 ? (given[lane]! - taken[lane]!) / total : 0;
    }
    shift(x, by);
  }
}
