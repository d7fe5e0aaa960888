import type { Point } from '../geometry/point.ts';
import { isInsideRing } from './rings.ts';

/** A stretch along a line, from one distance to another [m]. */
export interface Interval {
  readonly fromM: number;
  readonly toM: number;
}

/** Stretches nearer to each other than this run on, m: rounding, not a gap. */
const JOINED_M = 1e-9;

/** The places covered by at least one of the stretches, as stretches in order that do not touch. */
export function unite(stretches: readonly Interval[]): Interval[] {
  const sorted = stretches.filter((s) => s.toM > s.fromM).sort((a, b) => a.fromM - b.fromM || a.toM - b.toM);
  const united: { fromM: number; toM: number }[] = [];
  for (const { fromM, toM } of sorted) {
    const last = united.at(-1);
    if (last && fromM <= last.toM + JOINED_M) last.toM = Math.max(last.toM, toM);
    else united.push({ fromM, toM });
  }
  return united;
}

/** What is left of some stretches where others are taken off; both as `unite` gives them. */
export function subtract(stretches: readonly Interval[], off: readonly Interval[]): Interval[] {
  const left: Interval[] = [];
  for (const { fromM, toM } of stretches) {
    let at = fromM;
    for (const cut of off) {
      if (cut.toM <= at || cut.fromM >= toM) continue;
      if (cut.fromM - at > JOINED_M) left.push({ fromM: at, toM: cut.fromM });
      at = cut.toM;
    }
    if (toM - at > JOINED_M) left.push({ fromM: at, toM });
  }
  return left;
}

/** What two lists of stretches have in common; both as `unite` gives them. */
export function common(a: readonly Interval[], b: readonly Interval[]): Interval[] {
  const shared: Interval[] = [];
  for (const p of a) {
    for (const q of b) {
      const fromM = Math.max(p.fromM, q.fromM);
      const toM = Math.min(p.toM, q.toM);
      if (toM - fromM > JOINED_M) shared.push({ fromM, toM });
    }
  }
  return shared;
}

/** Length of stretches that do not overlap, m. */
export function lengthOf(stretches: readonly Interval[]): number {
  let sum = 0;
  for (const { fromM, toM } of stretches) sum += toM - fromM;
  return sum;
}

/** The part of the way from a to b that lies inside at least one of the rings, measured from `startM` to `endM`. */
export function insideRings(
  a: Point,
  b: Point,
  startM: number,
  endM: number,
  rings: readonly (readonly Point[])[],
): Interval[] {
  const found: Interval[] = [];
  for (const ring of rings) {
    const shares = [0, 1];
    for (let i = 0, j = ring.length - 1; i < ring.length; j = i, i += 1) {
      const share = crossingShare(a, b, ring[j]!, ring[i]!);
      if (share > 0 && share < 1) shares.push(share);
    }
    shares.sort((p, q) => p - q);
    for (let k = 0; k + 1 < shares.length; k += 1) {
      const middle = (shares[k]! + shares[k + 1]!) / 2;
      if (!isInsideRing(a.xM + middle * (b.xM - a.xM), a.yM + middle * (b.yM - a.yM), ring)) continue;
      found.push({
        fromM: startM + shares[k]! * (endM - startM),
        toM: startM + shares[k + 1]! * (endM - startM),
      });
    }
  }
  return unite(found);
}

/** Where the way from a to b meets the segment c to d, as a share of the way; NaN where it does not. */
function crossingShare(a: Point, b: Point, c: Point, d: Point): number {
  const sideC = (b.xM - a.xM) * (c.yM - a.yM) - (b.yM - a.yM) * (c.xM - a.xM);
  const sideD = (b.xM - a.xM) * (d.yM - a.yM) - (b.yM - a.yM) * (d.xM - a.xM);
  if (sideC > 0 === sideD > 0) return Number.NaN;
  const ex = d.xM - c.xM;
  const ey = d.yM - c.yM;
  return ((c.xM - a.xM) * ey - (c.yM - a.yM) * ex) / ((b.xM - a.xM) * ey - (b.yM - a.yM) * ex);
}
