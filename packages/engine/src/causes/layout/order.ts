import { seededRandom } from '../../numerics/seeded-random.ts';
import type { LayeredGraph, Piece } from './graph.ts';

/** Slots of each layer from top to bottom. */
export type Order = readonly (readonly number[])[];

/** True where an order holds every slot of a graph once, each in its layer. */
export function isOrderOf(graph: LayeredGraph, order: Order): boolean {
  const seen = new Set(order.flat());
  if (order.length !== graph.layerCount || order.flat().length !== graph.slots.length) return false;
  return (
    seen.size === graph.slots.length &&
    order.every((layer, l) => layer.every((slot) => graph.layerOf[slot] === l))
  );
}

/** Number of pairs of pieces that cross. */
export function crossings(graph: LayeredGraph, order: Order): number {
  const place = placesOf(graph, order);
  let count = 0;
  for (let layer = 0; layer + 1 < graph.layerCount; layer += 1) {
    const here = graph.pieces.filter((p) => graph.layerOf[p.from] === layer);
    for (let i = 0; i < here.length; i += 1) {
      for (let j = i + 1; j < here.length; j += 1) {
        const [a, b] = [here[i] as Piece, here[j] as Piece];
        const left = (place[a.from] as number) - (place[b.from] as number);
        const right = (place[a.to] as number) - (place[b.to] as number);
        if (left * right < 0) count += 1;
      }
    }
  }
  return count;
}

function placesOf(graph: LayeredGraph, order: Order): number[] {
  const place = new Array<number>(graph.slots.length).fill(0);
  for (const layer of order)
    layer.forEach((slot, i) => {
      place[slot] = i;
    });
  return place;
}

/** Slots at the other ends of the pieces of each slot, on one side. */
type Neighbors = readonly (readonly number[])[];

/** Sorts a layer by the mean place of its neighbors on one side; slots without any stay where they are. */
function byNeighbors(layer: readonly number[], neighbors: Neighbors, place: readonly number[]): number[] {
  const wish = layer.map((slot, i) => {
    const around = neighbors[slot] as readonly number[];
    if (around.length === 0) return i;
    return around.reduce((sum, n) => sum + (place[n] as number), 0) / around.length;
  });
  return layer
    .map((slot, i) => ({ slot, i, wish: wish[i] as number }))
    .sort((a, b) => a.wish - b.wish || a.i - b.i)
    .map((entry) => entry.slot);
}

/** Crossings between the pieces of two slots of one layer on one side, the first slot above the second. */
function crossingsOfTwo(
  above: readonly number[],
  below: readonly number[],
  place: readonly number[],
): number {
  let count = 0;
  for (const a of above) for (const b of below) if ((place[a] as number) > (place[b] as number)) count += 1;
  return count;
}

/** Exchanges neighbors of a layer while that takes crossings away. Only pieces of the two that change places can gain. */
function exchange(order: number[][], sides: readonly Neighbors[], place: number[]): void {
  for (let round = 0; round < 12; round += 1) {
    let better = false;
    for (const layer of order) {
      for (let i = 0; i + 1 < layer.length; i += 1) {
        const [a, b] = [layer[i] as number, layer[i + 1] as number];
        let gain = 0;
        for (const side of sides) {
          const [ofA, ofB] = [side[a] as readonly number[], side[b] as readonly number[]];
          gain += crossingsOfTwo(ofA, ofB, place) - crossingsOfTwo(ofB, ofA, place);
        }
        if (gain <= 0) continue;
        [layer[i], layer[i + 1]] = [b, a];
        [place[a], place[b]] = [i + 1, i];
        better = true;
      }
    }
    if (!better) return;
  }
}

/** How often layers are sorted there and back. */
const SWEEPS = 4;
/** Shuffled orders that are tried beside the one given, where arrows still cross. */
const STARTS = 16;

function shuffled(order: readonly (readonly number[])[], random: () => number): number[][] {
  return order.map((layer) => {
    const mixed = [...layer];
    for (let i = mixed.length - 1; i > 0; i -= 1) {
      const j = Math.floor(random() * (i + 1));
      [mixed[i], mixed[j]] = [mixed[j] as number, mixed[i] as number];
    }
    return mixed;
  });
}

/**
 * An order of the slots in their layers with few crossings: each layer in turn by the mean place of its neighbors, there and
 * back, then neighbors exchanged; the best of that from the order given and from some shuffled ones. Not always the least
 * possible. The same graph gives the same order: the shuffles have a fixed seed.
 *
 * Source: Sugiyama, Tagawa, Toda 1981 for the sweeps, Gansner and others 1993 for the exchange (both from memory).
 */
export function fewCrossings(graph: LayeredGraph): Order {
  const before = graph.slots.map(() => [] as number[]);
  const after = graph.slots.map(() => [] as number[]);
  for (const { from, to } of graph.pieces) {
    before[to]?.push(from);
    after[from]?.push(to);
  }
  const start = Array.from({ length: graph.layerCount }, (_, layer) =>
    graph.slots.map((_, slot) => slot).filter((slot) => graph.layerOf[slot] === layer),
  );
  let best: number[][] = start;
  let fewest = Number.POSITIVE_INFINITY;
  const keep = (order: readonly (readonly number[])[]) => {
    const tried = order.map((layer) => [...layer]);
    exchange(tried, [before, after], placesOf(graph, tried));
    const count = crossings(graph, tried);
    if (count < fewest) [best, fewest] = [tried, count];
  };
  const random = seededRandom(1);
  for (let s = 0; s <= STARTS && fewest > 0; s += 1) {
    const order = s === 0 ? start.map((layer) => [...layer]) : shuffled(start, random);
    keep(order);
    for (let sweep = 0; sweep < SWEEPS && fewest > 0; sweep += 1) {
      for (let layer = 1; layer < order.length; layer += 1) {
        order[layer] = byNeighbors(order[layer] as number[], before, placesOf(graph, order));
      }
      for (let layer = order.length - 2; layer >= 0; layer -= 1) {
        order[layer] = byNeighbors(order[layer] as number[], after, placesOf(graph, order));
      }
      keep(order);
    }
  }
  return best;
}
