import { partitionAreas } from './partition-areas.ts';
import type { Point } from './point.ts';

/** A polygon with holes. Holes may overlap each other and stick out of the outer ring: what counts is what is left. */
export interface Shape {
  readonly outer: readonly Point[];
  readonly holes?: readonly (readonly Point[])[];
}

/**
 * Area of a polygon less all its holes, m²; overlapping holes are taken off once. See `partitionAreas` for accuracy
 * and for rings that cross themselves.
 * @throws EngineError `not-finite` for a coordinate that is no finite number
 */
export function shapeAreaM2(shape: Shape): number {
  const rings = ringsOf(shape);
  return partitionAreas(rings, (inside) => (within(inside, 0, rings.length) ? 0 : -1), 1)[0]!;
}

/**
 * Area that two shapes have in common, m².
 * @throws EngineError `not-finite` for a coordinate that is no finite number
 */
export function areaOfOverlapM2(a: Shape, b: Shape): number {
  return areasOfTwo(a, b)[0]!;
}

/**
 * Area of `a` that is not covered by `b`, m².
 * @throws EngineError `not-finite` for a coordinate that is no finite number
 */
export function areaOfDifferenceM2(a: Shape, b: Shape): number {
  return areasOfTwo(a, b)[1]!;
}

/**
 * Area covered by at least one of the shapes, m².
 * @throws EngineError `not-finite` for a coordinate that is no finite number
 */
export function areaOfUnionM2(shapes: readonly Shape[]): number {
  const starts: number[] = [0];
  const rings: (readonly Point[])[] = [];
  for (const shape of shapes) {
    rings.push(...ringsOf(shape));
    starts.push(rings.length);
  }
  const covered = (inside: readonly boolean[]): number => {
    for (let s = 0; s < shapes.length; s += 1) if (within(inside, starts[s]!, starts[s + 1]!)) return 0;
    return -1;
  };
  return partitionAreas(rings, covered, 1)[0]!;
}

/** Areas in both shapes, in the first alone. */
function areasOfTwo(a: Shape, b: Shape): number[] {
  const ringsA = ringsOf(a);
  const rings = [...ringsA, ...ringsOf(b)];
  const classify = (inside: readonly boolean[]): number => {
    if (!within(inside, 0, ringsA.length)) return -1;
    return within(inside, ringsA.length, rings.length) ? 0 : 1;
  };
  return partitionAreas(rings, classify, 2);
}

function ringsOf(shape: Shape): (readonly Point[])[] {
  return [shape.outer, ...(shape.holes ?? [])];
}

/** Inside the outer ring at `start` and in none of the holes up to `end`. */
function within(inside: readonly boolean[], start: number, end: number): boolean {
  if (!inside[start]) return false;
  for (let i = start + 1; i < end; i += 1) if (inside[i]) return false;
  return true;
}
