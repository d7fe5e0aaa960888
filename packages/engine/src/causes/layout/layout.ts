import { EngineError } from '../../numerics/engine-error.ts';
import { requireRange } from '../../numerics/require-range.ts';
import type { LayeredGraph, LayoutLink, LayoutNode } from './graph.ts';
import { slotMiddles } from './heights.ts';
import { inLayers } from './layers.ts';
import { crossings, fewCrossings, isOrderOf, type Order } from './order.ts';

/** A spot of the drawing, x to the right, y down. */
export interface LayoutSpot {
  readonly x: number;
  readonly y: number;
}

/** A box in its place. */
export interface PlacedBox {
  readonly id: string;
  /** 0 where the causes begin. */
  readonly layer: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** An arrow in its place. */
export interface PlacedArrow {
  readonly id: string;
  /** From the far side of the one box to the near side of the other, bends smoothed. */
  readonly points: readonly LayoutSpot[];
}

/** A chain as it is drawn, in the unit of the boxes, its upper left corner at 0, 0. */
export interface Layout {
  readonly width: number;
  readonly height: number;
  readonly boxes: readonly PlacedBox[];
  readonly arrows: readonly PlacedArrow[];
  /** Pairs of arrow pieces that cross. */
  readonly crossings: number;
  /** Order of boxes and passing arrows in their layers, to lay out the same graph again in other sizes. */
  readonly order: Order;
}

/** Least distances of a layout, in the unit of the boxes, and where it leads. */
export interface LayoutGaps {
  /** Between layers, where the arrows run. */
  readonly layerGap: number;
  /** Between boxes of a layer. */
  readonly nodeGap: number;
  /** Where causes lead: to the right (default) or down. */
  readonly direction?: 'right' | 'down';
  /** Of an earlier layout of the same boxes and arrows in the same sequence, whatever their sizes; it saves most of the time. */
  readonly order?: Order;
}

/** Arrows on one side of a box stand this much further apart than they are thick. */
const SPREAD = 8;

/** Points that stand for one bend. */
const BEND = 14;

/** From one spot to another, level at both ends. */
function bend(from: LayoutSpot, to: LayoutSpot): LayoutSpot[] {
  if (from.y === to.y) return [from, to];
  return Array.from({ length: BEND + 1 }, (_, i) => {
    const t = i / BEND;
    return { x: from.x + t * (to.x - from.x), y: from.y + t * t * (3 - 2 * t) * (to.y - from.y) };
  });
}

interface Columns {
  readonly left: readonly number[];
  readonly width: readonly number[];
}

function columnsOf(graph: LayeredGraph, layerGap: number): Columns {
  const width = new Array<number>(graph.layerCount).fill(0);
  graph.slots.forEach((slot, i) => {
    const layer = graph.layerOf[i] as number;
    width[layer] = Math.max(width[layer] as number, slot.width);
  });
  const left: number[] = [];
  width.forEach((_, i) => {
    left.push(i === 0 ? 0 : (left[i - 1] as number) + (width[i - 1] as number) + layerGap);
  });
  return { left, width };
}

/**
 * Where each arrow meets a side of its box: side by side in the order of their other ends, in the middle of the side, closer
 * together where the side is too short for them.
 */
function ports(
  graph: LayeredGraph,
  links: readonly LayoutLink[],
  middle: readonly number[],
  side: 'from' | 'to',
): Map<number, number> {
  const found = new Map<number, number>();
  const boxes = new Map<number, { link: number; toward: number }[]>();
  graph.runs.forEach((run, link) => {
    const [box, next] = side === 'from' ? [run[0], run[1]] : [run.at(-1), run.at(-2)];
    const list = boxes.get(box as number) ?? [];
    list.push({ link, toward: middle[next as number] as number });
    boxes.set(box as number, list);
  });
  for (const [box, list] of boxes) {
    list.sort((a, b) => a.toward - b.toward || a.link - b.link);
    const thickness = list.map((entry) => (links[entry.link] as LayoutLink).thickness);
    const room = (graph.slots[box]?.height ?? 0) * 0.84;
    const sum = thickness.reduce((a, b) => a + b, 0);
    const gap =
      list.length < 2
        ? 0
        : Math.max(0, Math.min(sum / list.length + SPREAD, (room - sum) / (list.length - 1)));
    const whole = sum + gap * (list.length - 1);
    const squeeze = whole > room && whole > 0 ? room / whole : 1;
    let at = -whole / 2;
    list.forEach((entry, i) => {
      const own = thickness[i] as number;
      found.set(entry.link, (middle[box] as number) + (at + own / 2) * squeeze);
      at += own + gap;
    });
  }
  return found;
}

function arrowPoints(
  run: readonly number[],
  graph: LayeredGraph,
  columns: Columns,
  middle: readonly number[],
  start: number,
  end: number,
): LayoutSpot[] {
  const points: LayoutSpot[] = [];
  const layer = (slot: number) => graph.layerOf[slot] as number;
  const rightOf = (slot: number) => {
    const own =
      graph.slots[slot]?.node === -1
        ? (columns.width[layer(slot)] as number)
        : (graph.slots[slot]?.width ?? 0);
    return (columns.left[layer(slot)] as number) + own;
  };
  for (let i = 1; i < run.length; i += 1) {
    const [a, b] = [run[i - 1] as number, run[i] as number];
    const from = { x: rightOf(a), y: i === 1 ? start : (middle[a] as number) };
    const to = { x: columns.left[layer(b)] as number, y: i === run.length - 1 ? end : (middle[b] as number) };
    points.push(...bend(from, to));
  }
  return points;
}

const turnedSpot = ({ x, y }: LayoutSpot): LayoutSpot => ({ x: y, y: x });

/** A layout to the right made one that leads down, or back. */
function turned(layout: Layout): Layout {
  return {
    ...layout,
    width: layout.height,
    height: layout.width,
    boxes: layout.boxes.map((b) => ({ ...b, x: b.y, y: b.x, width: b.height, height: b.width })),
    arrows: layout.arrows.map((a) => ({ ...a, points: a.points.map(turnedSpot) })),
  };
}

/**
 * Draws a directed graph without circles in layers: causes left, what follows from them right, or from top to bottom. Every
 * arrow runs from a layer to a later one; few of them cross; boxes of a layer keep their gap. Pure and repeatable: the
 * same input gives the same drawing.
 * @throws EngineError `bad-input` for arrows in a circle or to boxes that are not there, an order of another graph,
 * `out-of-range` for gaps below 0
 */
export function layoutChain(
  nodes: readonly LayoutNode[],
  links: readonly LayoutLink[],
  { layerGap, nodeGap, direction = 'right', order: known }: LayoutGaps,
): Layout {
  if (direction === 'down') {
    const lying = nodes.map((n) => ({ ...n, width: n.height, height: n.width }));
    const gaps = { layerGap, nodeGap, ...(known === undefined ? {} : { order: known }) };
    return turned(layoutChain(lying, links, gaps));
  }
  requireRange('gap between layers', layerGap, 0, 1e6);
  requireRange('gap between boxes', nodeGap, 0, 1e6);
  const graph = inLayers(nodes, links);
  if (known !== undefined && !isOrderOf(graph, known)) {
    throw new EngineError('bad-input', 'the order given is that of other boxes and arrows');
  }
  const order = known ?? fewCrossings(graph);
  const raw = slotMiddles(graph, order, nodeGap);
  const edges = graph.slots.map((slot, i) => (raw[i] as number) - slot.height / 2);
  const top = edges.length === 0 ? 0 : Math.min(...edges);
  const middle = raw.map((m) => m - top);
  const columns = columnsOf(graph, layerGap);
  const starts = ports(graph, links, middle, 'from');
  const ends = ports(graph, links, middle, 'to');
  return {
    width: columns.left.length === 0 ? 0 : (columns.left.at(-1) as number) + (columns.width.at(-1) as number),
    height: Math.max(0, ...graph.slots.map((slot, i) => (middle[i] as number) + slot.height / 2)),
    boxes: nodes.map((node, i) => ({
      id: node.id,
      layer: graph.layerOf[i] as number,
      x: columns.left[graph.layerOf[i] as number] as number,
      y: (middle[i] as number) - node.height / 2,
      width: node.width,
      height: node.height,
    })),
    arrows: links.map((link, l) => ({
      id: link.id,
      points: arrowPoints(
        graph.runs[l] as readonly number[],
        graph,
        columns,
        middle,
        starts.get(l) as number,
        ends.get(l) as number,
      ),
    })),
    crossings: crossings(graph, order),
    order,
  };
}
