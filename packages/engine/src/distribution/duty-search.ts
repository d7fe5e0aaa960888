import type { DutyEvaluator, DutyTrial } from './duty-evaluator.ts';

/** A duty at which the humidistat reads its set-point, or the reason why there is none. */
export interface DutyFound {
  readonly outcome: 'holds' | 'undersized' | 'idle';
  readonly duty: number;
  readonly trial: DutyTrial;
  /** Change of the reading with the duty near it; NaN where it is not known. */
  readonly slope: number;
  readonly trials: number;
}

/** Solutions while a duty is sought stop here at the latest. */
const SEEKING_TOLERANCE = 3e-5;
/** Error of a solution, over how near the reading is to come. */
const SOLVED_SHARE = 0.1;
/** From one duty tried to the next. */
const STRIDE = 1.8;
/** Below this a machine does not run, share of the time. */
const LEAST_DUTY = 1e-5;
const MOST_TRIALS = 60;

/**
 * The least duty at which the humidistat reads its set-point, looked for from below: as the duty grows the reading falls,
 * but a machine that runs much also draws far, damp air to its intake, and the reading may rise again. The machine stops
 * at the first.
 * @param guess a duty to start from
 * @param within how near to the set-point the reading must come, fraction
 * @param off the trial of no duty, where it was made before
 */
export function seekDuty(
  evaluator: DutyEvaluator,
  guess: number,
  within: number,
  off: DutyTrial = evaluator.try(0, SEEKING_TOLERANCE),
): DutyFound {
  let trials = 1;
  const look = (duty: number): DutyTrial => {
    trials += 1;
    return evaluator.try(duty, Math.min(SEEKING_TOLERANCE, within * SOLVED_SHARE));
  };
  if (off.excess <= 0) return { outcome: 'idle', duty: 0, trial: off, slope: Number.NaN, trials };

  let low = 0;
  let lowTrial = off;
  let high = Math.min(1, Math.max(LEAST_DUTY, guess));
  let highTrial = look(high);
  // Down until the reading is above the set-point, so that no smaller answer is left out.
  while (highTrial.excess <= 0 && high > LEAST_DUTY) {
    const lower = high / (STRIDE * STRIDE);
    const lowerTrial = look(lower);
    if (lowerTrial.excess > 0) {
      low = lower;
      lowTrial = lowerTrial;
      break;
    }
    high = lower;
    highTrial = lowerTrial;
  }
  while (highTrial.excess > 0) {
    if (high >= 1) return { outcome: 'undersized', duty: 1, trial: highTrial, slope: Number.NaN, trials };
    low = high;
    lowTrial = highTrial;
    high = Math.min(1, high * STRIDE);
    highTrial = look(high);
  }
  return between(look, { low, high, lowExcess: lowTrial.excess, highTrial }, within, () => trials);
}

interface Bracket {
  readonly low: number;
  readonly high: number;
  readonly lowExcess: number;
  readonly highTrial: DutyTrial;
}

/** False position with the weight of an end halved that stays twice (Illinois, from memory). */
function between(
  look: (duty: number) => DutyTrial,
  bracket: Bracket,
  within: number,
  trials: () => number,
): DutyFound {
  let { low, high, lowExcess } = bracket;
  let trial = bracket.highTrial;
  let highExcess = trial.excess;
  let duty = high;
  let slope = (highExcess - lowExcess) / (high - low);
  let last = 0;
  while (Math.abs(trial.excess) > within && high - low > 1e-12 && trials() < MOST_TRIALS) {
    duty = (low * highExcess - high * lowExcess) / (highExcess - lowExcess);
    trial = look(duty);
    if (trial.excess > 0) {
      slope = (trial.excess - highExcess) / (duty - high);
      low = duty;
      lowExcess = trial.excess;
      if (last === 1) highExcess /= 2;
      last = 1;
    } else {
      slope = (trial.excess - lowExcess) / (duty - low);
      high = duty;
      highExcess = trial.excess;
      if (last === -1) lowExcess /= 2;
      last = -1;
    }
  }
  return { outcome: 'holds', duty, trial, slope, trials: trials() };
}

/** The first solution near a known duty stops here; each next one at this share of what the reading was off. */
const FIRST_TOLERANCE = 3e-4;
const NEXT_SHARE = 1e-2;
/** Trials near a known duty before it is sought anew. */
const MOST_REFINING = 8;

/**
 * Takes a duty that a coarser grid gave to this one: secant steps from there with the slope that was found, else a
 * search of its own.
 */
export function refineDuty(evaluator: DutyEvaluator, coarse: DutyFound, within: number): DutyFound {
  const { outcome } = coarse;
  if (outcome === 'idle') {
    const off = evaluator.try(0, SEEKING_TOLERANCE);
    return off.excess <= 0
      ? { outcome, duty: 0, trial: off, slope: Number.NaN, trials: 1 }
      : seekDuty(evaluator, 10 * LEAST_DUTY, within);
  }
  if (outcome === 'undersized') {
    const full = evaluator.try(1, SEEKING_TOLERANCE);
    return full.excess > 0
      ? { outcome, duty: 1, trial: full, slope: Number.NaN, trials: 1 }
      : seekDuty(evaluator, 0.5, within);
  }
  let duty = coarse.duty;
  let slope = coarse.slope;
  let trials = 0;
  let before: { readonly duty: number; readonly excess: number } | null = null;
  let tolerance = FIRST_TOLERANCE;
  while (trials < MOST_REFINING) {
    const trial = evaluator.try(duty, tolerance);
    trials += 1;
    if (before !== null && duty !== before.duty) {
      const found = (trial.excess - before.excess) / (duty - before.duty);
      if (found < 0) slope = found;
    }
    if (Math.abs(trial.excess) <= within && tolerance <= within)
      return { outcome, duty, trial, slope, trials };
    before = { duty, excess: trial.excess };
    if (!(slope < 0)) break;
    const next = Math.min(2 * duty, Math.max(duty / 2, duty - trial.excess / slope));
    if (next >= 1 && duty >= 1) break;
    duty = Math.min(1, next);
    tolerance = Math.min(tolerance, Math.max(within * SOLVED_SHARE, Math.abs(trial.excess) * NEXT_SHARE));
  }
  return seekDuty(evaluator, coarse.duty / STRIDE, within);
}
