import { priceCover } from './cover-bound.ts';
import { coverLists } from './cover-lists.ts';
import type { CoverProblem } from './cover-problem.ts';
import { greedyCover, shrinkCover } from './greedy-cover.ts';

/** Price steps at the start, and in each branch. */
const FIRST_STEPS = 600;
const BRANCH_STEPS = 20;
/** Rounds of making the first choice smaller: fewer where each is longer. */
const SHRINK_WORK = 4e6;
const MOST_SHRINK_ROUNDS = 400;
/** What the search may do unless asked otherwise: branches times entries of the problem, about a second. */
const USUAL_WORK = 2e6;

/**
 * Smallest choice by branch and bound: a row with few candidates is covered by each of them in turn, and a branch is
 * left when its bound (`priceCover`) shows that it cannot beat the best choice so far. Candidates that no better
 * choice can hold are dropped by their reduced cost.
 * @param nodeLimit branches after which the search stops with the best choice so far; by default 2,000,000 over the
 *   number of entries in the rows
 * @returns the choice, the bound proven for it, and the branches looked into
 */
export function searchCover(
  problem: CoverProblem,
  nodeLimit?: number,
): { chosen: number[]; lowerBound: number; nodes: number } {
  if (problem.rows.length === 0) return { chosen: [], lowerBound: 0, nodes: 0 };
  const lists = coverLists(problem);
  const { candidateStart, rows: rowsOf } = lists;
  const all = Int32Array.from(problem.rows, (_, i) => i);
  const anyone = new Uint8Array(problem.candidateCount).fill(1);
  let best = greedyCover(lists, all, anyone, new Float64Array(problem.candidateCount).fill(1))!;
  const improve = (
    taken: readonly number[],
    open: Int32Array,
    usable: Uint8Array,
    costs: Float64Array,
  ): void => {
    const found = greedyCover(lists, open, usable, costs);
    if (found !== null && taken.length + found.length < best.length) best = [...taken, ...found];
  };

  const start = Float64Array.from(problem.rows, (row) =>
    row.reduce((least, c) => Math.min(least, 1 / (candidateStart[c + 1]! - candidateStart[c]!)), 1),
  );
  const root = priceCover(lists, all, anyone, best.length, FIRST_STEPS, start, (reduced) =>
    improve([], all, anyone, reduced),
  );
  const rounds = Math.min(MOST_SHRINK_ROUNDS, Math.ceil(SHRINK_WORK / rowsOf.length));
  const mostNodes = nodeLimit ?? Math.ceil(USUAL_WORK / rowsOf.length);
  const rootBound = Math.ceil(root.bound - 1e-6);
  if (rootBound < best.length) best = shrinkCover(lists, all, anyone, root.reduced, best, rounds);

  let nodes = 0;
  let stopped = false;
  const branch = (
    taken: readonly number[],
    open: Int32Array,
    usable: Uint8Array,
    prices: Float64Array,
  ): void => {
    if (open.length === 0) {
      if (taken.length < best.length) best = [...taken];
      return;
    }
    if (stopped || taken.length + 1 >= best.length) return;
    if (nodes >= mostNodes) {
      stopped = true;
      return;
    }
    nodes += 1;
    const target = best.length - taken.length;
    const priced = priceCover(lists, open, usable, target, BRANCH_STEPS, prices);
    if (Math.ceil(priced.bound - 1e-6) >= target) return;
    improve(taken, open, usable, priced.reduced);
    const mayTake = usable.slice();
    const room = best.length - taken.length - 1 + 1e-6;
    for (let c = 0; c < mayTake.length; c += 1) if (priced.bound + priced.reduced[c]! > room) mayTake[c] = 0;
    const options = problem.rows[narrowest(problem.rows, open, mayTake)]!.filter((c) => mayTake[c] === 1);
    options.sort((a, b) => priced.reduced[a]! - priced.reduced[b]! || a - b);
    for (const c of options) {
      const covered = new Set(rowsOf.subarray(candidateStart[c]!, candidateStart[c + 1]!));
      branch(
        [...taken, c],
        open.filter((i) => !covered.has(i)),
        mayTake,
        priced.prices,
      );
      // The other branches do without it.
      mayTake[c] = 0;
    }
  };
  if (rootBound < best.length) branch([], all, anyone, root.prices);
  const chosen = best.sort((a, b) => a - b);
  return { chosen, lowerBound: stopped ? Math.min(chosen.length, rootBound) : chosen.length, nodes };
}

/** The open row with the fewest candidates that may be taken; the first of equals. */
function narrowest(rows: CoverProblem['rows'], open: Int32Array, mayTake: Uint8Array): number {
  let found = open[0]!;
  let least = Number.POSITIVE_INFINITY;
  for (const i of open) {
    let count = 0;
    for (const c of rows[i]!) count += mayTake[c]!;
    if (count >= least) continue;
    least = count;
    found = i;
  }
  return found;
}
