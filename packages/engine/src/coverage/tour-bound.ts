/** Moves of the prices. */
const STEPS = 300;

/**
 * A length that no order of visits can beat, m: the shortest tree over all places, with prices on the places that
 * push each toward the number of ways that a tour has there (Held and Karp, Operations Research 18, 1970, from
 * memory). For a tour back to the start, a tree over the visits and the two cheapest ways from the start; for one
 * that ends anywhere, a tree over all places.
 * @param known length of a tour that is known; sets the steps
 */
export function tourBoundM(between: readonly (readonly number[])[], isRound: boolean, known: number): number {
  const n = between.length;
  const prices = new Float64Array(n);
  const ways = new Int32Array(n);
  let best = 0;
  let step = 1;
  let waited = 0;
  for (let k = 0; k < STEPS; k += 1) {
    const tree = pricedTree(between, prices, isRound ? 1 : 0, ways);
    let value = tree;
    if (isRound) {
      value += twoFromStart(between, prices, ways);
      for (let i = 0; i < n; i += 1) value -= 2 * prices[i]!;
    } else {
      // One way at the start, one at the end, wherever that is, two elsewhere.
      let least = Number.POSITIVE_INFINITY;
      for (let i = 1; i < n; i += 1) {
        value -= 2 * prices[i]!;
        least = Math.min(least, prices[i]!);
      }
      value += least - prices[0]!;
    }
    if (value > best + 1e-9) {
      best = value;
      waited = 0;
    } else {
      waited += 1;
      if (waited >= 10) {
        step /= 2;
        waited = 0;
      }
    }
    let norm = 0;
    for (let i = 0; i < n; i += 1) norm += (ways[i]! - wanted(i, isRound)) ** 2;
    if (norm === 0) break;
    const length = (step * Math.max(known - value, 1e-6 * known)) / norm;
    for (let i = 0; i < n; i += 1) prices[i]! += length * (ways[i]! - wanted(i, isRound));
  }
  return best;
}

function wanted(place: number, isRound: boolean): number {
  return place === 0 && !isRound ? 1 : 2;
}

/** Length of the shortest tree over the places from `first` on, with prices; counts the ways at each place. */
function pricedTree(
  between: readonly (readonly number[])[],
  prices: Float64Array,
  first: number,
  ways: Int32Array,
): number {
  const n = between.length;
  const away = new Float64Array(n).fill(Number.POSITIVE_INFINITY);
  const link = new Int32Array(n).fill(-1);
  const inTree = new Uint8Array(n);
  ways.fill(0);
  away[first] = 0;
  let sum = 0;
  for (let added = first; added < n; added += 1) {
    let next = -1;
    for (let i = first; i < n; i += 1) {
      if (inTree[i] === 0 && (next < 0 || away[i]! < away[next]!)) next = i;
    }
    inTree[next] = 1;
    if (link[next]! >= 0) {
      sum += away[next]!;
      ways[next]! += 1;
      ways[link[next]!]! += 1;
    }
    for (let i = first; i < n; i += 1) {
      const priced = between[next]![i]! + prices[next]! + prices[i]!;
      if (inTree[i] === 1 || priced >= away[i]!) continue;
      away[i] = priced;
      link[i] = next;
    }
  }
  return sum;
}

/** Length of the two cheapest priced ways from the start; counts them. */
function twoFromStart(
  between: readonly (readonly number[])[],
  prices: Float64Array,
  ways: Int32Array,
): number {
  const order = between.map((_, i) => i).slice(1);
  const priced = (i: number): number => between[0]![i]! + prices[0]! + prices[i]!;
  order.sort((a, b) => priced(a) - priced(b) || a - b);
  // With one visit the tour goes there and back by the same way.
  const two = [order[0]!, order[1] ?? order[0]!];
  for (const i of two) ways[i]! += 1;
  ways[0] = 2;
  return priced(two[0]!) + priced(two[1]!);
}
