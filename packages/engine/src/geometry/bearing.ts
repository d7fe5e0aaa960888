import type { Point } from './point.ts';

const DEGREES_PER_RADIAN = 180 / Math.PI;

/** Brings an angle in degrees into 0 (included) to 360 (left out). NaN and infinities give NaN. */
export function wrapDeg(angleDeg: number): number {
  const wrapped = angleDeg % 360;
  // Adding 360 to a tiny negative angle rounds to 360 itself.
  const positive = wrapped < 0 ? wrapped + 360 : wrapped;
  return positive === 360 ? 0 : positive + 0;
}

/** Smallest turn, degrees 0..180, between two directions. */
export function angleBetweenDeg(aDeg: number, bDeg: number): number {
  const turn = wrapDeg(bDeg - aDeg);
  return turn > 180 ? 360 - turn : turn;
}

/**
 * Sine of an angle in degrees, exactly 0 or ±1 at whole quarter turns: walls at right angles then have departures
 * and latitudes of exactly nothing, and stay at right angles when a traverse is adjusted.
 */
export function sinDeg(angleDeg: number): number {
  const a = wrapDeg(angleDeg);
  if (a === 0 || a === 180) return 0;
  if (a === 90) return 1;
  if (a === 270) return -1;
  return Math.sin(a / DEGREES_PER_RADIAN);
}

/** Cosine of an angle in degrees, exactly 0 or ±1 at whole quarter turns. */
export function cosDeg(angleDeg: number): number {
  const a = wrapDeg(angleDeg);
  if (a === 90 || a === 270) return 0;
  if (a === 0) return 1;
  if (a === 180) return -1;
  return Math.cos(a / DEGREES_PER_RADIAN);
}

/** Direction of a step, degrees clockwise from +y, 0 (included) to 360; null for a step of no length. */
export function directionDeg(dxM: number, dyM: number): number | null {
  if (dxM === 0 && dyM === 0) return null;
  return wrapDeg(Math.atan2(dxM, dyM) * DEGREES_PER_RADIAN);
}

/** Bearing from one point to another in the plan's axes, degrees clockwise from +y; null when they are one point. */
export function bearingDeg(from: Point, to: Point): number | null {
  return directionDeg(to.xM - from.xM, to.yM - from.yM);
}
