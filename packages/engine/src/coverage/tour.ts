import { seededRandom } from '../numerics/seeded-random.ts';
import { tourBoundM } from './tour-bound.ts';

/** An order of visits and how good it is. */
export interface Tour {
  /** Places 1 to n in the order of their visits; place 0 is the start. */
  readonly order: readonly number[];
  readonly lengthM: number;
  /** No order is shorter than this. */
  readonly lowerBoundM: number;
  /** True when no order is shorter. */
  readonly proven: boolean;
}

/** Up to this many visits the best order is found by trying all of them cleverly. */
export const EXACT_VISITS = 13;
/** Disturbances after which a long tour is left as it is: fewer where each takes longer. */
const KICK_WORK = 5000;
const MOST_KICKS = 300;

/**
 * A shortest order of visits from place 0 to all others, and back when `isRound`. Up to 13 visits exactly (dynamic
 * programming over subsets, Bellman 1962 and Held and Karp 1962, from memory); beyond that by exchanging and moving
 * stretches from several starts, with the lower bound of `tourBoundM`.
 * @param between distances between places, symmetric, m; finite
 */
export function shortestTour(between: readonly (readonly number[])[], isRound: boolean): Tour {
  const visits = between.length - 1;
  if (visits < 1) return { order: [], lengthM: 0, lowerBoundM: 0, proven: true };
  if (visits <= EXACT_VISITS) {
    const order = exactOrder(between, isRound);
    const lengthM = tourLengthM(between, order, isRound);
    return { order, lengthM, lowerBoundM: lengthM, proven: true };
  }
  const order = improvedOrder(between, isRound);
  const lengthM = tourLengthM(between, order, isRound);
  const lowerBoundM = Math.min(lengthM, tourBoundM(between, isRound, lengthM));
  return { order, lengthM, lowerBoundM, proven: lengthM - lowerBoundM <= 1e-9 * lengthM };
}

function tourLengthM(
  between: readonly (readonly number[])[],
  order: readonly number[],
  isRound: boolean,
): number {
  let sum = 0;
  let at = 0;
  for (const next of order) {
    sum += between[at]![next]!;
    at = next;
  }
  return isRound ? sum + between[at]![0]! : sum;
}

function exactOrder(between: readonly (readonly number[])[], isRound: boolean): number[] {
  const n = between.length - 1;
  const full = 1 << n;
  const best = new Float64Array(full * n).fill(Number.POSITIVE_INFINITY);
  const before = new Int8Array(full * n).fill(-1);
  for (let k = 0; k < n; k += 1) best[(1 << k) * n + k] = between[0]![k + 1]!;
  for (let set = 1; set < full; set += 1) {
    for (let last = 0; last < n; last += 1) {
      const sum = best[set * n + last]!;
      if (sum === Number.POSITIVE_INFINITY) continue;
      for (let next = 0; next < n; next += 1) {
        if ((set >> next) & 1) continue;
        const to = (set | (1 << next)) * n + next;
        const total = sum + between[last + 1]![next + 1]!;
        if (total >= best[to]!) continue;
        best[to] = total;
        before[to] = last;
      }
    }
  }
  let last = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let k = 0; k < n; k += 1) {
    const total = best[(full - 1) * n + k]! + (isRound ? between[k + 1]![0]! : 0);
    if (total >= least) continue;
    least = total;
    last = k;
  }
  const order: number[] = [];
  for (let set = full - 1; set > 0; ) {
    order.push(last + 1);
    const previous = before[set * n + last]!;
    set ^= 1 << last;
    last = previous;
  }
  return order.reverse();
}

function improvedOrder(between: readonly (readonly number[])[], isRound: boolean): number[] {
  let best = locallyBest(between, nearestFirst(between), isRound);
  let least = tourLengthM(between, best, isRound);
  const random = seededRandom(best.length);
  const kicks = Math.min(MOST_KICKS, Math.ceil(KICK_WORK / best.length));
  for (let kick = 0; kick < kicks; kick += 1) {
    // Three cuts, the two middle stretches change places: a change that the moves below do not undo.
    const cuts = [0, 1, 2].map(() => Math.floor(random() * (best.length + 1))).sort((a, b) => a - b);
    const [a, b, c] = cuts as [number, number, number];
    const kicked = [...best.slice(0, a), ...best.slice(b, c), ...best.slice(a, b), ...best.slice(c)];
    const order = locallyBest(between, kicked, isRound);
    const length = tourLengthM(between, order, isRound);
    if (length >= least - 1e-12) continue;
    best = order;
    least = length;
  }
  return best;
}

function nearestFirst(between: readonly (readonly number[])[]): number[] {
  const left = new Set(between.map((_, i) => i).slice(1));
  const order: number[] = [];
  for (let at = 0; left.size > 0; ) {
    let next = -1;
    for (const place of left) if (next < 0 || between[at]![place]! < between[at]![next]!) next = place;
    order.push(next);
    left.delete(next);
    at = next;
  }
  return order;
}

/** Turns stretches round (2-opt) and moves stretches of up to three visits (Or-opt) until neither helps. */
function locallyBest(
  between: readonly (readonly number[])[],
  start: readonly number[],
  isRound: boolean,
): number[] {
  let order = [...start];
  const n = order.length;
  const place = (i: number): number => (i < 0 ? 0 : order[i]!);
  /** From visit i to what comes after it; after the last one home, or nothing. */
  const hop = (from: number, i: number): number =>
    i < n ? between[from]![order[i]!]! : isRound ? between[from]![0]! : 0;
  for (let better = true; better; ) {
    better = false;
    for (let i = 0; i < n; i += 1) {
      for (let j = i + 1; j < n; j += 1) {
        const now = between[place(i - 1)]![order[i]!]! + hop(order[j]!, j + 1);
        const turned = between[place(i - 1)]![order[j]!]! + hop(order[i]!, j + 1);
        if (turned >= now - 1e-12) continue;
        order = [...order.slice(0, i), ...order.slice(i, j + 1).reverse(), ...order.slice(j + 1)];
        better = true;
      }
    }
    for (let size = 1; size <= 3; size += 1) {
      for (let i = 0; i + size <= n; i += 1) {
        const moved = bestMove(between, order, i, size, isRound);
        if (moved === null) continue;
        order = moved;
        better = true;
      }
    }
  }
  return order;
}

/** The order with visits i to i + size moved to where they cost least, or null when they stay. */
function bestMove(
  between: readonly (readonly number[])[],
  order: readonly number[],
  i: number,
  size: number,
  isRound: boolean,
): number[] | null {
  const stretch = order.slice(i, i + size);
  const left = order.length - size;
  /** The rest of the order, without the stretch. */
  const rest = (k: number): number => (k < i ? order[k]! : order[k + size]!);
  const first = stretch[0]!;
  const last = stretch[size - 1]!;
  const cost = (at: number, head: number, tail: number): number => {
    const from = at === 0 ? 0 : rest(at - 1);
    const to = at < left ? rest(at) : isRound ? 0 : -1;
    const after = to < 0 ? 0 : between[tail]![to]!;
    const without = to < 0 ? 0 : between[from]![to]!;
    return between[from]![head]! + after - without;
  };
  let least = cost(i, first, last) - 1e-12;
  let place = -1;
  let isTurned = false;
  for (let at = 0; at <= left; at += 1) {
    const extra = cost(at, first, last);
    const turned = cost(at, last, first);
    if (Math.min(extra, turned) >= least) continue;
    least = Math.min(extra, turned);
    place = at;
    isTurned = turned < extra;
  }
  if (place < 0) return null;
  const others = [...order.slice(0, i), ...order.slice(i + size)];
  return [...others.slice(0, place), ...(isTurned ? stretch.reverse() : stretch), ...others.slice(place)];
}
