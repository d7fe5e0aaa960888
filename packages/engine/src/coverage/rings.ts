import type { Point } from '../geometry/point.ts';

/** Corners of the strip of some width along a line, counter-clockwise; a line of no length gives null. */
export function stripRing(from: Point, to: Point, widthM: number): Point[] | null {
  const length = Math.hypot(to.xM - from.xM, to.yM - from.yM);
  if (length === 0) return null;
  const nx = ((from.yM - to.yM) / length) * (widthM / 2);
  const ny = ((to.xM - from.xM) / length) * (widthM / 2);
  return [
    { xM: from.xM - nx, yM: from.yM - ny },
    { xM: to.xM - nx, yM: to.yM - ny },
    { xM: to.xM + nx, yM: to.yM + ny },
    { xM: from.xM + nx, yM: from.yM + ny },
  ];
}

/** The place at some distance from the start of a line on its way to the end. */
export function alongLine(from: Point, to: Point, offsetM: number): Point {
  const length = Math.hypot(to.xM - from.xM, to.yM - from.yM);
  const share = length === 0 ? 0 : offsetM / length;
  return { xM: from.xM + share * (to.xM - from.xM), yM: from.yM + share * (to.yM - from.yM) };
}

/** Corners of the smallest convex polygon around some points, counter-clockwise (monotone chain, Andrew 1979). */
export function convexHull(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((a, b) => a.xM - b.xM || a.yM - b.yM);
  const half = (ordered: readonly Point[]): Point[] => {
    const chain: Point[] = [];
    for (const p of ordered) {
      while (chain.length > 1 && leftTurn(chain.at(-2)!, chain.at(-1)!, p) <= 0) chain.pop();
      chain.push(p);
    }
    chain.pop();
    return chain;
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

function leftTurn(a: Point, b: Point, c: Point): number {
  return (b.xM - a.xM) * (c.yM - a.yM) - (b.yM - a.yM) * (c.xM - a.xM);
}

/** Whether a place lies inside a ring (even-odd), without checks or allowance: for inner loops over checked rings. */
export function isInsideRing(xM: number, yM: number, ring: readonly Point[]): boolean {
  let inside = false;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i, i += 1) {
    const a = ring[j]!;
    const b = ring[i]!;
    if (a.yM > yM === b.yM > yM) continue;
    if (xM < a.xM + ((yM - a.yM) * (b.xM - a.xM)) / (b.yM - a.yM)) inside = !inside;
  }
  return inside;
}
