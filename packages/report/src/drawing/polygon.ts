import type { Spot } from './display-list.ts';

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export function boxOf(points: Iterable<Spot>): Box {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  return { left, top, right, bottom };
}

export const boxAt = (x: number, y: number, width: number, height: number): Box => ({
  left: x,
  top: y,
  right: x + width,
  bottom: y + height,
});

export const around = (at: Spot, reach: number): Box => ({
  left: at.x - reach,
  top: at.y - reach,
  right: at.x + reach,
  bottom: at.y + reach,
});

/** Twice the area, positive where the corners run clockwise as seen on the sheet (y down). */
function turningArea(points: readonly Spot[]): number {
  let sum = 0;
  points.forEach((p, i) => {
    const q = points[(i + 1) % points.length];
    sum += p.x * q.y - q.x * p.y;
  });
  return sum;
}

export const isClockwise = (points: readonly Spot[]): boolean => turningArea(points) > 0;

export function isInside({ x, y }: Spot, outline: readonly Spot[]): boolean {
  let inside = false;
  for (let i = 0, j = outline.length - 1; i < outline.length; j = i++) {
    const a = outline[i];
    const b = outline[j];
    if (a.y > y !== b.y > y && x < ((b.x - a.x) * (y - a.y)) / (b.y - a.y) + a.x) inside = !inside;
  }
  return inside;
}

/** Point a share of the way from one spot to another. */
export const along = (from: Spot, to: Spot, share: number): Spot => ({
  x: from.x + (to.x - from.x) * share,
  y: from.y + (to.y - from.y) * share,
});

export const distance = (a: Spot, b: Spot): number => Math.hypot(a.x - b.x, a.y - b.y);

/** Unit vector from one spot to another; to the right where they coincide. */
export function heading(from: Spot, to: Spot): Spot {
  const length = distance(from, to);
  return length === 0 ? { x: 1, y: 0 } : { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

/** A quarter turn to the left of a direction, as seen on the sheet. */
export const leftOf = ({ x, y }: Spot): Spot => ({ x: y, y: -x });

export const shift = (p: Spot, direction: Spot, by: number): Spot => ({
  x: p.x + direction.x * by,
  y: p.y + direction.y * by,
});

/** A four-sided figure about a center, its first axis along `direction`. */
export function turnedRectangle(center: Spot, direction: Spot, length: number, width: number): Spot[] {
  const side = leftOf(direction);
  const corner = (l: number, w: number) =>
    shift(shift(center, direction, (l * length) / 2), side, (w * width) / 2);
  return [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
}

/** Points on a circle from one angle to another [degrees, clockwise from the right]. */
export function arcPoints(center: Spot, radius: number, fromDeg: number, toDeg: number): Spot[] {
  const steps = Math.max(2, Math.ceil(Math.abs(toDeg - fromDeg) / 9));
  return Array.from({ length: steps + 1 }, (_, i) => {
    const angle = ((fromDeg + ((toDeg - fromDeg) * i) / steps) * Math.PI) / 180;
    return { x: center.x + radius * Math.cos(angle), y: center.y + radius * Math.sin(angle) };
  });
}

/**
 * The outline moved outward by its own distance on each side, corners mitered. Where two sides run nearly on, or a corner
 * would reach further than four times the larger distance, the corner is moved along the mean of the two sides instead.
 * @param distances outward distance of the side that starts at each corner
 */
export function grown(outline: readonly Spot[], distances: readonly number[]): Spot[] {
  const n = outline.length;
  const outward = isClockwise(outline) ? 1 : -1;
  const normals = outline.map((p, i) => {
    const left = leftOf(heading(p, outline[(i + 1) % n]));
    return { x: left.x * outward, y: left.y * outward };
  });
  return outline.map((p, i) => {
    const before = (i + n - 1) % n;
    const a = normals[before];
    const b = normals[i];
    const cross = a.x * b.y - a.y * b.x;
    const far = 4 * Math.max(distances[before], distances[i]);
    if (Math.abs(cross) > 0.05) {
      const x = (distances[before] * b.y - distances[i] * a.y) / cross;
      const y = (a.x * distances[i] - b.x * distances[before]) / cross;
      if (Math.hypot(x, y) <= far) return { x: p.x + x, y: p.y + y };
    }
    const mean = heading({ x: 0, y: 0 }, { x: a.x + b.x, y: a.y + b.y });
    return shift(p, mean, (distances[before] + distances[i]) / 2);
  });
}
