import type { LayeredGraph } from './graph.ts';
import type { Order } from './order.ts';

/** Pieces between two passing places pull this much harder, so that long arrows run straight. */
const STRAIGHT = 6;

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
  const middle = new Array<number>(slots.length).fill(0);
  const gapsOf = (layer: readonly number[]) =>
    layer.slice(1).map((slot, i) => {
      const [a, b] = [
        slots[layer[i] as number] as { height: number; node: number },
        slots[slot] as { height: number; node: number },
      ];
      return (a.height + b.height) / 2 + (a.node < 0 && b.node < 0 ? nodeGap / 2 : nodeGap);
    });
  for (const layer of order) {
    const gaps = gapsOf(layer);
    const whole = gaps.reduce((a, b) => a + b, 0);
    let at = -whole / 2;
    layer.forEach((slot, i) => {
      middle[slot] = at;
      at += gaps[i] ?? 0;
    });
  }
  const neighbors = slots.map(() => [] as { readonly slot: number; readonly pull: number }[]);
  for (const { from, to } of pieces) {
    const pull = (slots[from]?.node ?? 0) < 0 && (slots[to]?.node ?? 0) < 0 ? STRAIGHT : 1;
    neighbors[from]?.push({ slot: to, pull });
    neighbors[to]?.push({ slot: from, pull });
  }
  const settle = (layer: readonly number[], near: (a: number, b: number) => boolean) => {
    const wishes = layer.map((slot) => {
      const around = (neighbors[slot] ?? []).filter((n) =>
        near(graph.layerOf[n.slot] as number, graph.layerOf[slot] as number),
      );
      const pull = around.reduce((sum, n) => sum + n.pull, 0);
      if (pull === 0) return { at: middle[slot] as number, pull: 0.1 };
      return { at: around.reduce((sum, n) => sum + n.pull * (middle[n.slot] as number), 0) / pull, pull };
    });
    const places = spacedApart(
      wishes.map((w) => w.at),
      wishes.map((w) => w.pull),
      gapsOf(layer),
    );
    layer.forEach((slot, i) => {
      middle[slot] = places[i] as number;
    });
  };
  for (let round = 0; round < 8; round += 1) {
    for (const layer of order) settle(layer, (other, own) => other < own);
    for (const layer of [...order].reverse()) settle(layer, (other, own) => other > own);
  }
  for (const layer of order) settle(layer, () => true);
  return middle;
}
