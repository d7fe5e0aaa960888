import type { LayeredGraph } from './graph.ts';
import type { Order } from './order.ts';

/** Pieces between two passing places pull this much harder, so that long arrows run straight. */
const STRAIGHT = 6;

/** How often the layers are moved toward their neighbors, there and back. */
const ROUNDS = 6;

/** A slot of a neighboring layer, and how hard it pulls. */
interface Pull {
  readonly slot: number;
  readonly pull: number;
}

/**
 * Places as near to their wishes as the least gaps between them allow, in the order given: least squares with pooled
 * neighbors.
 *
 * Source: M. Ayer and others, An Empirical Distribution Function for Sampling with Incomplete Information, 1955 (from memory).
 * @param wish where each wants its middle
 * @param weight how much each wish counts, over 0
 * @param gap least distance between the middles of each and the next
 */
export function spacedApart(
  wish: readonly number[],
  weight: readonly number[],
  gap: readonly number[],
): number[] {
  const shift: number[] = [];
  wish.forEach((_, i) => {
    shift.push(i === 0 ? 0 : (shift[i - 1] as number) + (gap[i - 1] as number));
  });
  const pools: { mean: number; weight: number; count: number }[] = [];
  wish.forEach((one, i) => {
    pools.push({ mean: one - (shift[i] as number), weight: weight[i] as number, count: 1 });
    while (pools.length > 1) {
      const [upper, lower] = pools.slice(-2) as [(typeof pools)[number], (typeof pools)[number]];
      if (upper.mean <= lower.mean) break;
      const sum = upper.weight + lower.weight;
      pools.splice(-2, 2, {
        mean: (upper.mean * upper.weight + lower.mean * lower.weight) / sum,
        weight: sum,
        count: upper.count + lower.count,
      });
    }
  });
  const places = pools.flatMap((pool) => new Array<number>(pool.count).fill(pool.mean));
  return places.map((place, i) => place + (shift[i] as number));
}

/**
 * Middle of every slot across the layers. Layers are moved in turn toward the middles of their neighbors, there and back;
 * least gaps hold throughout.
 */
export function slotMiddles(graph: LayeredGraph, order: Order, nodeGap: number): number[] {
  const { slots, pieces } = graph;
  const passes = (slot: number) => slots[slot]?.node === -1;
  const gapAfter = (upper: number, lower: number) =>
    ((slots[upper]?.height ?? 0) + (slots[lower]?.height ?? 0)) / 2 +
    (passes(upper) && passes(lower) ? nodeGap / 2 : nodeGap);
  const gaps = order.map((layer) => layer.slice(1).map((slot, i) => gapAfter(layer[i] as number, slot)));
  const middle = new Array<number>(slots.length).fill(0);
  order.forEach((layer, l) => {
    const own = gaps[l] as readonly number[];
    let at = -own.reduce((a, b) => a + b, 0) / 2;
    layer.forEach((slot, i) => {
      middle[slot] = at;
      at += own[i] ?? 0;
    });
  });
  const before = slots.map(() => [] as Pull[]);
  const after = slots.map(() => [] as Pull[]);
  for (const { from, to } of pieces) {
    const pull = passes(from) && passes(to) ? STRAIGHT : 1;
    before[to]?.push({ slot: from, pull });
    after[from]?.push({ slot: to, pull });
  }
  const both = slots.map((_, i) => [...(before[i] as Pull[]), ...(after[i] as Pull[])]);
  const settle = (l: number, neighbors: readonly (readonly Pull[])[]) => {
    const layer = order[l] as readonly number[];
    const wish: number[] = [];
    const weight: number[] = [];
    for (const slot of layer) {
      let [sum, whole] = [0, 0];
      for (const { slot: other, pull } of neighbors[slot] as readonly Pull[]) {
        sum += pull * (middle[other] as number);
        whole += pull;
      }
      wish.push(whole === 0 ? (middle[slot] as number) : sum / whole);
      weight.push(whole === 0 ? 0.1 : whole);
    }
    const places = spacedApart(wish, weight, gaps[l] as readonly number[]);
    layer.forEach((slot, i) => {
      middle[slot] = places[i] as number;
    });
  };
  for (let round = 0; round < ROUNDS; round += 1) {
    for (let l = 0; l < order.length; l += 1) settle(l, before);
    for (let l = order.length - 1; l >= 0; l -= 1) settle(l, after);
  }
  for (let l = 0; l < order.length; l += 1) settle(l, both);
  return middle;
}
