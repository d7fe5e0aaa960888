import { EngineError } from '../numerics/engine-error.ts';
import { type Point, requireFinitePoints } from './point.ts';

/**
 * Says to which class a piece of ground belongs, given for each ring whether the piece lies inside it. A negative
 * answer leaves the piece out. The array is reused between calls: read it, don't keep it.
 */
export type Classify = (inside: readonly boolean[]) => number;

/**
 * Cuts the plane along any number of rings and adds up the area of each class, m². One pass answers unions,
 * overlaps, differences and "the later zone wins" alike. Rings may be concave, run either way, touch, share edges
 * and cross themselves or each other; inside a ring that crosses itself is even-odd. Rings of no area count nothing.
 *
 * Exact up to rounding: the plane is cut into level bands at every corner and every crossing; within a band no edges
 * cross, so each piece between two edges is a trapezoid whose area is its middle width times the height of the band.
 * A crossing that rounding misplaces moves the result only by the sliver between two almost coincident edges.
 * Time grows with the square of the number of edges.
 * @param classCount number of classes; the answer has this many areas
 * @throws EngineError `not-finite` for a coordinate that is no finite number; `bad-input` when `classify` answers
 *   with a class that is not below `classCount`
 */
export function partitionAreas(
  rings: readonly (readonly Point[])[],
  classify: Classify,
  classCount: number,
): number[] {
  for (let i = 0; i < rings.length; i += 1) requireFinitePoints(`ring ${i}`, rings[i]!);
  const edges = gatherEdges(rings);
  const levels = bandLevels(edges);
  const areas = new Array<number>(classCount).fill(0);
  const inside = new Array<boolean>(rings.length).fill(false);
  const active: Edge[] = [];
  let next = 0;

  for (let k = 0; k + 1 < levels.length; k += 1) {
    const low = levels[k]!;
    const high = levels[k + 1]!;
    const middle = low + (high - low) / 2;
    let stay = 0;
    for (let i = 0; i < active.length; i += 1) {
      if (active[i]!.y1 > low) {
        active[stay] = active[i]!;
        stay += 1;
      }
    }
    active.length = stay;
    while (next < edges.length && edges[next]!.y0 <= low) {
      active.push(edges[next]!);
      next += 1;
    }
    for (let i = 0; i < active.length; i += 1) {
      const edge = active[i]!;
      edge.xMiddle = edge.x0 + (edge.dx * (middle - edge.y0)) / (edge.y1 - edge.y0);
    }
    sortByMiddle(active);
    inside.fill(false);
    for (let i = 0; i + 1 < active.length; i += 1) {
      const edge = active[i]!;
      inside[edge.ring] = !inside[edge.ring];
      const width = active[i + 1]!.xMiddle - edge.xMiddle;
      if (width === 0) continue;
      const found = classify(inside);
      if (found >= classCount) {
        throw new EngineError('bad-input', `class must be below ${classCount}; classify answered ${found}`);
      }
      if (found >= 0) areas[found]! += width * (high - low);
    }
  }
  return areas;
}

/** A side of a ring, from its lower to its upper end, about the middle of all rings. */
interface Edge {
  readonly ring: number;
  readonly x0: number;
  readonly y0: number;
  readonly y1: number;
  readonly dx: number;
  xMiddle: number;
}

/** Sides that rise at all, lowest start first. Coordinates are taken about one corner to keep their digits. */
function gatherEdges(rings: readonly (readonly Point[])[]): Edge[] {
  const origin = rings.find((ring) => ring.length > 0)?.[0] ?? { xM: 0, yM: 0 };
  const edges: Edge[] = [];
  for (let r = 0; r < rings.length; r += 1) {
    const ring = rings[r]!;
    for (let i = 0; i < ring.length; i += 1) {
      const a = ring[i]!;
      const b = ring[(i + 1) % ring.length]!;
      const [low, high] = a.yM <= b.yM ? [a, b] : [b, a];
      const x0 = low.xM - origin.xM;
      const y0 = low.yM - origin.yM;
      const y1 = high.yM - origin.yM;
      if (y1 > y0) edges.push({ ring: r, x0, y0, y1, dx: high.xM - origin.xM - x0, xMiddle: 0 });
    }
  }
  return edges.sort((p, q) => p.y0 - q.y0);
}

/** Heights of all corners and crossings, ascending. */
function bandLevels(edges: readonly Edge[]): number[] {
  const levels: number[] = [];
  for (let i = 0; i < edges.length; i += 1) {
    const p = edges[i]!;
    levels.push(p.y0, p.y1);
    const pMin = Math.min(p.x0, p.x0 + p.dx);
    const pMax = Math.max(p.x0, p.x0 + p.dx);
    const pRise = p.y1 - p.y0;
    for (let j = i + 1; j < edges.length && edges[j]!.y0 < p.y1; j += 1) {
      const q = edges[j]!;
      if (Math.min(q.x0, q.x0 + q.dx) > pMax || Math.max(q.x0, q.x0 + q.dx) < pMin) continue;
      const qRise = q.y1 - q.y0;
      const cross = p.dx * qRise - pRise * q.dx;
      if (cross === 0) continue;
      const t = ((q.x0 - p.x0) * qRise - (q.y0 - p.y0) * q.dx) / cross;
      const u = ((q.x0 - p.x0) * pRise - (q.y0 - p.y0) * p.dx) / cross;
      if (t > 0 && t < 1 && u > 0 && u < 1) levels.push(p.y0 + t * pRise);
    }
  }
  levels.sort((p, q) => p - q);
  return levels.filter((level, i) => i === 0 || level !== levels[i - 1]);
}

/** Insertion sort: from one band to the next the order hardly changes. */
function sortByMiddle(active: Edge[]): void {
  for (let i = 1; i < active.length; i += 1) {
    const edge = active[i]!;
    let j = i - 1;
    while (j >= 0 && active[j]!.xMiddle > edge.xMiddle) {
      active[j + 1] = active[j]!;
      j -= 1;
    }
    active[j + 1] = edge;
  }
}
