import { EngineError } from '../../numerics/engine-error.ts';
import type { LayeredGraph, LayoutLink, LayoutNode, Piece, Slot } from './graph.ts';

/** Longest way from any box that nothing points at, by index of the box. */
function longestPaths(count: number, from: readonly number[], to: readonly number[]): number[] {
  const layer = new Array<number>(count).fill(0);
  for (let round = 0; round <= count; round += 1) {
    let moved = false;
    for (let i = 0; i < from.length; i += 1) {
      const least = (layer[from[i] as number] as number) + 1;
      if ((layer[to[i] as number] as number) < least) {
        layer[to[i] as number] = least;
        moved = true;
      }
    }
    if (!moved) return layer;
  }
  throw new EngineError('bad-input', 'the arrows run in a circle, so there is no first layer');
}

/** Boxes that nothing points at move next to the first box that they point at, so that their arrows are short. */
function pullSources(layer: number[], from: readonly number[], to: readonly number[]): void {
  const hasSource = new Set(to);
  for (let node = 0; node < layer.length; node += 1) {
    if (hasSource.has(node)) continue;
    const targets = to.filter((_, i) => from[i] === node).map((t) => layer[t] as number);
    if (targets.length > 0) layer[node] = Math.min(...targets) - 1;
  }
}

/**
 * Puts boxes into layers and breaks arrows that skip layers into pieces.
 *
 * Source: K. Sugiyama, S. Tagawa, M. Toda, 1981, steps 1 and 2 (from memory).
 * @throws EngineError `bad-input` for arrows in a circle, from a box to itself, or to a box that is not there
 */
export function inLayers(nodes: readonly LayoutNode[], links: readonly LayoutLink[]): LayeredGraph {
  const index = new Map(nodes.map((node, i) => [node.id, i]));
  const end = (id: string, link: LayoutLink): number => {
    const found = index.get(id);
    if (found === undefined || link.from === link.to) {
      throw new EngineError(
        'bad-input',
        `arrow ${link.id} needs two different boxes that are there; got ${link.from}, ${link.to}`,
      );
    }
    return found;
  };
  const from = links.map((link) => end(link.from, link));
  const to = links.map((link) => end(link.to, link));
  const layer = longestPaths(nodes.length, from, to);
  pullSources(layer, from, to);
  const slots: Slot[] = nodes.map((node, i) => ({ node: i, height: node.height, width: node.width }));
  const layerOf = [...layer];
  const pieces: Piece[] = [];
  const runs = links.map((link, l) => {
    const run = [from[l] as number];
    for (
      let at = (layer[from[l] as number] as number) + 1;
      at < (layer[to[l] as number] as number);
      at += 1
    ) {
      run.push(slots.length);
      slots.push({ node: -1, height: link.thickness, width: 0 });
      layerOf.push(at);
    }
    run.push(to[l] as number);
    for (let i = 1; i < run.length; i += 1) {
      pieces.push({ link: l, from: run[i - 1] as number, to: run[i] as number });
    }
    return run;
  });
  return { slots, layerOf, layerCount: Math.max(-1, ...layerOf) + 1, pieces, runs };
}
