import type { Point } from '../geometry/point.ts';
import type { Bar } from './bars.ts';
import { convexHull, isInsideRing } from './rings.ts';

/** Farther than this many times the distance to a bar nothing is looked at; stands for "without end". */
const WITHOUT_END = 1e5;

/**
 * How many times as far as a bar itself lies what it hides: from `near` to `far` times, or null when it hides nothing.
 *
 * A line from the eye to a target straight over a level floor changes height evenly with distance. It meets the bar
 * where its height lies between underside and top, which is a range of shares of the whole way, and the target is
 * hidden when the bar stands at such a share. A duct whose underside is above the lamp so hides no floor at all; one
 * lower than the lamp lets the floor behind it be seen as far as the lamp reaches under it; a low pile hides a strip.
 */
export function hiddenBehind(
  eyeM: number,
  targetM: number,
  undersideM: number,
  topM: number,
): { near: number; far: number } | null {
  const rise = targetM - eyeM;
  let from: number;
  let to: number;
  if (rise === 0) {
    if (eyeM <= undersideM || eyeM >= topM) return null;
    from = 0;
    to = 1;
  } else if (rise > 0) {
    from = Math.max(0, (undersideM - eyeM) / rise);
    to = Math.min(1, (topM - eyeM) / rise);
  } else {
    from = Math.max(0, (eyeM - topM) / -rise);
    to = Math.min(1, (eyeM - undersideM) / -rise);
  }
  if (!(to > from)) return null;
  return { near: 1 / to, far: Math.min(WITHOUT_END, 1 / from) };
}

/**
 * Rings that together hold every place at the height `targetM` that the bars hide from a viewer, not counting what
 * solid things hide. A bar at whose very place and height the viewer is must leave room for a person, so it is passed
 * over. Rings may overlap and reach far outside the space.
 * @param rangeM nothing is asked about places farther than this
 */
export function shadowRings(
  bars: readonly Bar[],
  viewer: Point,
  eyeM: number,
  targetM: number,
  rangeM: number,
): Point[][] {
  const rings: Point[][] = [];
  for (const bar of bars) {
    const hidden = hiddenBehind(eyeM, targetM, bar.undersideM, bar.topM);
    if (hidden === null || isBeyond(bar, viewer, rangeM / hidden.near)) continue;
    if (eyeM > bar.undersideM && eyeM < bar.topM && isInsideRing(viewer.xM, viewer.yM, bar.ring)) continue;
    const near = bar.ring.map((p) => scaled(p, viewer, hidden.near));
    const far = bar.ring.map((p) => scaled(p, viewer, hidden.far));
    if (bar.convex) {
      rings.push(convexHull([...near, ...far]));
      continue;
    }
    // What a growing outline passes over is its smallest form and what each of its sides sweeps.
    rings.push(near);
    for (let i = 0; i < near.length; i += 1) {
      const j = (i + 1) % near.length;
      rings.push(convexHull([near[i]!, near[j]!, far[i]!, far[j]!]));
    }
  }
  return rings;
}

function scaled(p: Point, from: Point, factor: number): Point {
  return { xM: from.xM + factor * (p.xM - from.xM), yM: from.yM + factor * (p.yM - from.yM) };
}

function isBeyond({ box }: Bar, { xM, yM }: Point, rangeM: number): boolean {
  const dx = Math.max(box.minXM - xM, 0, xM - box.maxXM);
  const dy = Math.max(box.minYM - yM, 0, yM - box.maxYM);
  return Math.hypot(dx, dy) > rangeM;
}
