import { distanceM, type Point, requireFinitePoints, SAME_PLACE_M } from './point.ts';
import { segmentMeeting } from './segment-intersection.ts';

/** A place where a polygon's line meets itself. Edges carry the index of the corner where they start. */
export interface PolygonContact {
  readonly edgeA: number;
  readonly edgeB: number;
  /** `cross`: the line runs through itself; `touch`: it meets itself in a point; `overlap`: along a stretch. */
  readonly kind: 'cross' | 'touch' | 'overlap';
  /** Where; for an overlap, one end of the stretch. */
  readonly at: Point;
}

/**
 * Every place where the closed line of a polygon crosses, touches or runs back over itself; an empty list for a
 * simple polygon. Neighboring sides meet in their common corner, which is no contact, unless one folds back over the
 * other. A touch in one place is listed once, though several sides end there. Repeated corners are passed over;
 * fewer than three different corners give an empty list.
 * @param toleranceM how near is "on", m
 * @throws EngineError `not-finite` for a coordinate that is no finite number
 */
export function polygonContacts(ring: readonly Point[], toleranceM: number = SAME_PLACE_M): PolygonContact[] {
  requireFinitePoints('polygon', ring);
  const n = ring.length;
  const edges: number[] = [];
  for (let i = 0; i < n; i += 1) {
    if (distanceM(ring[i]!, ring[(i + 1) % n]!) > toleranceM) edges.push(i);
  }
  const contacts: PolygonContact[] = [];
  if (edges.length < 3) return contacts;
  for (let i = 0; i < edges.length; i += 1) {
    for (let j = i + 1; j < edges.length; j += 1) {
      const edgeA = edges[i]!;
      const edgeB = edges[j]!;
      const [a, b] = [ring[edgeA]!, ring[(edgeA + 1) % n]!];
      const [c, d] = [ring[edgeB]!, ring[(edgeB + 1) % n]!];
      if (boxesApart(a, b, c, d, toleranceM)) continue;
      const meeting = segmentMeeting(a, b, c, d, toleranceM);
      const neighbors = j === i + 1 || (i === 0 && j === edges.length - 1);
      if (meeting.kind === 'none' || (neighbors && meeting.kind !== 'overlap')) continue;
      const at = meeting.kind === 'overlap' ? meeting.from : meeting.at;
      const known = contacts.some((k) => k.kind === 'touch' && distanceM(k.at, at) <= 2 * toleranceM);
      if (meeting.kind === 'touch' && known) continue;
      contacts.push({ edgeA, edgeB, kind: meeting.kind, at });
    }
  }
  return contacts;
}

function boxesApart(a: Point, b: Point, c: Point, d: Point, toleranceM: number): boolean {
  return (
    Math.max(a.xM, b.xM) + toleranceM < Math.min(c.xM, d.xM) ||
    Math.max(c.xM, d.xM) + toleranceM < Math.min(a.xM, b.xM) ||
    Math.max(a.yM, b.yM) + toleranceM < Math.min(c.yM, d.yM) ||
    Math.max(c.yM, d.yM) + toleranceM < Math.min(a.yM, b.yM)
  );
}
