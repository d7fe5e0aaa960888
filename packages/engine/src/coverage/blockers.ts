import { distanceM, type Point, SAME_PLACE_M } from '../geometry/point.ts';
import { segmentMeeting } from '../geometry/segment-intersection.ts';
import { isInsideRing } from './rings.ts';
import type { SolidEdge, Solids } from './solids.ts';

/**
 * The border of the open floor, cut where surfaces cross, as flat arrays for the sweep. Walking from a to b the open
 * floor lies on the left, so a viewer on the left of a piece sees its front.
 */
export interface Blockers {
  readonly count: number;
  readonly ax: Float64Array;
  readonly ay: Float64Array;
  readonly bx: Float64Array;
  readonly by: Float64Array;
  /** Face of each piece, -1 for none, and where its ends lie along that face [m]. */
  readonly face: Int32Array;
  readonly uA: Float64Array;
  readonly uB: Float64Array;
}

/** How far beside a piece it is tested whether the floor there is open, m: above rounding, below any gap of use. */
const BESIDE_M = 1e-6;

/** Whether a place is inside the outline and in nothing solid; on a surface, either answer. */
export function isOpenFloor(solids: Solids, xM: number, yM: number): boolean {
  if (!isInsideRing(xM, yM, solids.outline)) return false;
  for (const { ring, box } of solids.rings) {
    if (xM < box.minXM || xM > box.maxXM || yM < box.minYM || yM > box.maxYM) continue;
    if (isInsideRing(xM, yM, ring)) return false;
  }
  return true;
}

/**
 * Cuts all surfaces where they meet and keeps the pieces with open floor on their left: the rest is inside something
 * solid, outside the walls, or flush against another surface. What remains is closed around the open floor, so the
 * first thing that any line of sight meets is one of these pieces, seen from its front.
 */
export function blockersOf(solids: Solids): Blockers {
  const pieces: SolidEdge[] = [];
  const cuts = cutPlaces(solids.edges);
  solids.edges.forEach((edge, i) => {
    const places = cuts[i]!;
    places.sort((p, q) => p.share - q.share);
    let before = { share: 0, at: edge.a };
    for (const place of [...places, { share: 1, at: edge.b }]) {
      if (distanceM(before.at, place.at) <= SAME_PLACE_M) continue;
      const piece = {
        a: before.at,
        b: place.at,
        face: edge.face,
        uA: edge.uA + before.share * (edge.uB - edge.uA),
        uB: edge.uA + place.share * (edge.uB - edge.uA),
      };
      if (hasOpenFloorOnLeft(solids, piece)) pieces.push(piece);
      before = place;
    }
  });
  return {
    count: pieces.length,
    ax: Float64Array.from(pieces, (p) => p.a.xM),
    ay: Float64Array.from(pieces, (p) => p.a.yM),
    bx: Float64Array.from(pieces, (p) => p.b.xM),
    by: Float64Array.from(pieces, (p) => p.b.yM),
    face: Int32Array.from(pieces, (p) => p.face),
    uA: Float64Array.from(pieces, (p) => p.uA),
    uB: Float64Array.from(pieces, (p) => p.uB),
  };
}

function hasOpenFloorOnLeft(solids: Solids, { a, b }: SolidEdge): boolean {
  const dx = b.xM - a.xM;
  const dy = b.yM - a.yM;
  const step = BESIDE_M / Math.hypot(dx, dy);
  return isOpenFloor(solids, (a.xM + b.xM) / 2 - dy * step, (a.yM + b.yM) / 2 + dx * step);
}

interface Cut {
  readonly share: number;
  readonly at: Point;
}

/** For each edge the places where others cross or touch it away from its ends. */
function cutPlaces(edges: readonly SolidEdge[]): Cut[][] {
  const cuts: Cut[][] = edges.map(() => []);
  const order = edges.map((_, i) => i);
  const left = edges.map(({ a, b }) => Math.min(a.xM, b.xM) - SAME_PLACE_M);
  const right = edges.map(({ a, b }) => Math.max(a.xM, b.xM));
  order.sort((i, j) => left[i]! - left[j]! || i - j);
  for (let m = 0; m < order.length; m += 1) {
    const i = order[m]!;
    const p = edges[i]!;
    for (let n = m + 1; n < order.length && left[order[n]!]! <= right[i]!; n += 1) {
      const j = order[n]!;
      const q = edges[j]!;
      if (Math.max(p.a.yM, p.b.yM) + SAME_PLACE_M < Math.min(q.a.yM, q.b.yM)) continue;
      if (Math.max(q.a.yM, q.b.yM) + SAME_PLACE_M < Math.min(p.a.yM, p.b.yM)) continue;
      const meeting = segmentMeeting(p.a, p.b, q.a, q.b);
      if (meeting.kind === 'none') continue;
      const places = meeting.kind === 'overlap' ? [meeting.from, meeting.to] : [meeting.at];
      for (const at of places) {
        addCut(cuts[i]!, p, at);
        addCut(cuts[j]!, q, at);
      }
    }
  }
  return cuts;
}

function addCut(cuts: Cut[], { a, b }: SolidEdge, at: Point): void {
  if (distanceM(a, at) <= SAME_PLACE_M || distanceM(b, at) <= SAME_PLACE_M) return;
  const dx = b.xM - a.xM;
  const dy = b.yM - a.yM;
  cuts.push({ share: ((at.xM - a.xM) * dx + (at.yM - a.yM) * dy) / (dx * dx + dy * dy), at });
}
