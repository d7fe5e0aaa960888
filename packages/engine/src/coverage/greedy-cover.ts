import { seededRandom } from '../numerics/seeded-random.ts';
import type { CoverLists } from './cover-lists.ts';

/**
 * A choice made one candidate at a time, each time the one with the least cost for each row it newly covers, then
 * without those that turn out needless. Null when some open row has no usable candidate.
 * @param open rows to cover
 * @param kept candidates chosen before the first step
 */
export function greedyCover(
  lists: CoverLists,
  open: Int32Array,
  usable: Uint8Array,
  costs: Float64Array,
  kept: readonly number[] = [],
): number[] | null {
  const { rowStart, candidates, candidateStart, rows } = lists;
  const news = new Int32Array(lists.candidateCount);
  const isOpen = new Uint8Array(lists.rowCount);
  for (const row of open) {
    isOpen[row] = 1;
    for (let m = rowStart[row]!; m < rowStart[row + 1]!; m += 1)
      news[candidates[m]!]! += usable[candidates[m]!]!;
  }
  const chosen: number[] = [];
  let left = open.length;
  const take = (pick: number): void => {
    chosen.push(pick);
    for (let k = candidateStart[pick]!; k < candidateStart[pick + 1]!; k += 1) {
      const row = rows[k]!;
      if (isOpen[row] === 0) continue;
      isOpen[row] = 0;
      left -= 1;
      for (let m = rowStart[row]!; m < rowStart[row + 1]!; m += 1) {
        news[candidates[m]!]! -= usable[candidates[m]!]!;
      }
    }
  };
  for (const c of kept) take(c);
  while (left > 0) {
    let pick = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let c = 0; c < news.length; c += 1) {
      if (news[c]! <= 0) continue;
      // A cost of nothing or less makes a candidate a bargain; the more it covers the better.
      const cost = Math.max(costs[c]!, 1e-3) / news[c]!;
      if (cost >= least) continue;
      least = cost;
      pick = c;
    }
    if (pick < 0) return null;
    take(pick);
  }
  return withoutNeedless(lists, open, chosen);
}

/** Leaves out what the others cover too, the last chosen first. */
function withoutNeedless(lists: CoverLists, open: Int32Array, chosen: readonly number[]): number[] {
  const { candidateStart, rows } = lists;
  const times = new Int32Array(lists.rowCount);
  const isOpen = new Uint8Array(lists.rowCount);
  for (const row of open) isOpen[row] = 1;
  const add = (c: number, by: number): void => {
    for (let m = candidateStart[c]!; m < candidateStart[c + 1]!; m += 1) times[rows[m]!]! += by;
  };
  for (const c of chosen) add(c, 1);
  const needed: number[] = [];
  for (const c of [...chosen].reverse()) {
    let needless = true;
    for (let m = candidateStart[c]!; m < candidateStart[c + 1]! && needless; m += 1) {
      needless = isOpen[rows[m]!] === 0 || times[rows[m]!]! > 1;
    }
    if (needless) add(c, -1);
    else needed.push(c);
  }
  return needed;
}

/** Share of a choice that is thrown away before it is made anew. */
const THROWN_AWAY = 0.3;

/**
 * Makes a choice smaller by throwing part of it away and completing the rest anew, again and again; the dice are
 * seeded, so that the same problem gives the same choice.
 * @param costs what draws the completion toward some candidates; reduced costs do well
 */
export function shrinkCover(
  lists: CoverLists,
  open: Int32Array,
  usable: Uint8Array,
  costs: Float64Array,
  start: readonly number[],
  rounds: number,
): number[] {
  const random = seededRandom(lists.rowCount + 31 * start.length);
  let now = [...start];
  let best = now;
  const shaken = new Float64Array(costs.length);
  for (let round = 0; round < rounds; round += 1) {
    const kept = now.filter(() => random() >= THROWN_AWAY);
    for (let c = 0; c < shaken.length; c += 1)
      shaken[c] = (0.5 + Math.max(0, costs[c]!)) * (0.7 + 0.6 * random());
    const next = greedyCover(lists, open, usable, shaken, kept);
    if (next === null || next.length > now.length) continue;
    now = next;
    if (now.length < best.length) best = now;
  }
  return best;
}
