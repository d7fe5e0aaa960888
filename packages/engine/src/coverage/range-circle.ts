import type { Point } from '../geometry/point.ts';

/** How far a chord may stay inside its arc, m: thinner than any line on a plan. */
const SAGITTA_M = 0.001;

/**
 * Adds an arc of the range about the eye, counter-clockwise, as chords at most a millimeter inside it.
 * @returns the area between eye and arc, m², exact
 */
export function addArc(polygon: Point[], eye: Point, rangeM: number, fromRad: number, toRad: number): number {
  let width = toRad - fromRad;
  while (width < 0) width += 2 * Math.PI;
  while (width > 2 * Math.PI) width -= 2 * Math.PI;
  const widest = 2 * Math.acos(1 - Math.min(1, SAGITTA_M / rangeM));
  const chords = Math.max(1, Math.ceil(width / widest));
  for (let i = 0; i <= chords; i += 1) {
    const rad = fromRad + (width * i) / chords;
    polygon.push({ xM: eye.xM + rangeM * Math.cos(rad), yM: eye.yM + rangeM * Math.sin(rad) });
  }
  return (rangeM * rangeM * width) / 2;
}

/** The part of p to q within range of the eye, as shares of the way; null when none of it is. */
export function chordInRange(
  eye: Point,
  p: Point,
  q: Point,
  rangeM: number,
): { from: number; to: number } | null {
  const range2 = rangeM * rangeM;
  const px = p.xM - eye.xM;
  const py = p.yM - eye.yM;
  const qx = q.xM - eye.xM;
  const qy = q.yM - eye.yM;
  const pIn = px * px + py * py <= range2;
  const qIn = qx * qx + qy * qy <= range2;
  if (pIn && qIn) return { from: 0, to: 1 };
  const dx = qx - px;
  const dy = qy - py;
  const length2 = dx * dx + dy * dy;
  const middle = -(px * dx + py * dy) / length2;
  const half2 = middle * middle - (px * px + py * py - range2) / length2;
  if (!(half2 > 0)) return null;
  const half = Math.sqrt(half2);
  const from = pIn ? 0 : middle - half;
  const to = qIn ? 1 : middle + half;
  return from < 1 && to > 0 && to > from ? { from: Math.max(0, from), to: Math.min(1, to) } : null;
}
