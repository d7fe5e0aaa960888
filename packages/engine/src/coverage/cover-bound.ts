import type { CoverLists } from './cover-lists.ts';

/** Prices of rows and what they tell. */
export interface PricedCover {
  /** No choice for the open rows has fewer candidates than this, up to rounding. */
  readonly bound: number;
  /** Price of each row; 0 for rows that are not open. */
  readonly prices: Float64Array;
  /** 1 less the prices of a candidate's open rows. */
  readonly reduced: Float64Array;
}

/** A price step that does not help for this long is halved. */
const PATIENCE = 15;
const SMALLEST_STEP = 0.002;

/**
 * Lower bound on the number of candidates that cover the open rows: each row pays a price, a candidate collects the
 * prices of its rows, and Σ prices + Σ min(0, 1 − collected) never exceeds the best choice (Lagrangian relaxation;
 * prices moved by the subgradient rule of Held, Wolfe and Crowder 1974, from memory). The best prices give the bound
 * of the linear program.
 * @param open rows that are still to be covered
 * @param usable whether a candidate may be chosen
 * @param target number of candidates of the best choice known for these rows; sets the length of the steps
 * @param start prices to begin with
 * @param visit called with the reduced costs now and then, for heuristics
 */
export function priceCover(
  lists: CoverLists,
  open: Int32Array,
  usable: Uint8Array,
  target: number,
  steps: number,
  start: Float64Array,
  visit?: (reduced: Float64Array) => void,
): PricedCover {
  const { rowStart, candidates, candidateStart, rows } = lists;
  const prices = new Float64Array(lists.rowCount);
  for (const row of open) prices[row] = start[row]!;
  const reduced = new Float64Array(lists.candidateCount);
  const slack = new Float64Array(lists.rowCount);
  const best = { bound: Number.NEGATIVE_INFINITY, prices: prices.slice(), reduced: reduced.slice() };
  let step = 2;
  let waited = 0;
  for (let k = 0; k <= steps && step > SMALLEST_STEP; k += 1) {
    reduced.fill(1);
    let value = 0;
    for (let i = 0; i < open.length; i += 1) {
      const row = open[i]!;
      const price = prices[row]!;
      slack[row] = 1;
      if (price === 0) continue;
      value += price;
      for (let m = rowStart[row]!; m < rowStart[row + 1]!; m += 1) reduced[candidates[m]!]! -= price;
    }
    for (let c = 0; c < reduced.length; c += 1) {
      if (usable[c] === 0 || reduced[c]! >= 0) continue;
      value += reduced[c]!;
      for (let m = candidateStart[c]!; m < candidateStart[c + 1]!; m += 1) slack[rows[m]!]! -= 1;
    }
    if (value > best.bound + 1e-9) {
      best.bound = value;
      best.prices.set(prices);
      best.reduced.set(reduced);
      waited = 0;
    } else {
      waited += 1;
      if (waited >= PATIENCE) {
        step /= 2;
        waited = 0;
      }
    }
    if (visit && k % 10 === 0) visit(reduced);
    if (Math.ceil(best.bound - 1e-6) >= target) break;
    let norm = 0;
    for (let i = 0; i < open.length; i += 1) {
      const row = open[i]!;
      // A price of nothing cannot fall; counting it would only shorten the step.
      if (prices[row] === 0 && slack[row]! < 0) slack[row] = 0;
      norm += slack[row]! ** 2;
    }
    if (norm === 0) break;
    const length = (step * (target - value)) / norm;
    for (let i = 0; i < open.length; i += 1) {
      const row = open[i]!;
      prices[row] = Math.max(0, prices[row]! + length * slack[row]!);
    }
  }
  return best;
}
