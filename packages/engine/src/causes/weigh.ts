import { EngineError } from '../numerics/engine-error.ts';

/** A rival explanation: how often it is the one before anything is known, and what the evidence adds. */
export interface Rival {
  /** Over 0; priors need not sum to 1. */
  readonly prior: number;
  /** Natural logarithm of the likelihood ratio of all its evidence. */
  readonly logRatio: number;
}

/**
 * Weights of rival explanations of which one is the main one: prior times likelihood ratio, scaled to sum to 1. Bayes'
 * rule for exclusive hypotheses; the ratios compare "this is it" with "it is another".
 *
 * Source: I. J. Good, Probability and the Weighing of Evidence, 1950.
 * @returns one weight for each rival, each over 0 and at most 1; empty for no rival
 * @throws EngineError `out-of-range` for a prior that is not over 0, `not-finite` for a ratio that is no number
 */
export function rivalWeights(rivals: readonly Rival[]): number[] {
  const scores = rivals.map(({ prior, logRatio }) => {
    if (!(prior > 0) || !Number.isFinite(prior)) {
      throw new EngineError('out-of-range', `the prior of an explanation must be over 0; got ${prior}`);
    }
    if (!Number.isFinite(logRatio)) {
      throw new EngineError('not-finite', `the evidence of an explanation must be a number; got ${logRatio}`);
    }
    return Math.log(prior) + logRatio;
  });
  const highest = Math.max(...scores);
  const parts = scores.map((score) => Math.exp(score - highest));
  const sum = parts.reduce((a, b) => a + b, 0);
  return parts.map((part) => part / sum);
}

/**
 * Entropy of weights that sum to 1 [bits]: how open the question is. Zero where one explanation has all the weight.
 * Source: C. E. Shannon, A Mathematical Theory of Communication, 1948 (from memory).
 */
export function entropyBits(weights: readonly number[]): number {
  let sum = 0;
  for (const w of weights) if (w > 0) sum -= w * Math.log2(w);
  return Math.max(0, sum);
}
