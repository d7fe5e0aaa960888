import { describe, expect, test } from 'vitest';
import { boundingBox } from '../../src/geometry/bounding-box.ts';
import { centroid } from '../../src/geometry/centroid.ts';
import { isConvex, turnSign } from '../../src/geometry/convexity.ts';
import { normalizePolygon } from '../../src/geometry/normalize-polygon.ts';
import { perimeterM } from '../../src/geometry/perimeter.ts';
import type { Point } from '../../src/geometry/point.ts';
import { polygonAreaM2, signedAreaM2 } from '../../src/geometry/polygon-area.ts';
import { polygonEdges } from '../../src/geometry/polygon-edges.ts';
import { EngineError } from '../../src/numerics/engine-error.ts';

const ring = (...xy: readonly (readonly [number, number])[]): Point[] => xy.map(([xM, yM]) => ({ xM, yM }));

/** An L of a 7 by 3 bar and a 2 by 4 bar on it: 29 m², perimeter 28 m. */
const ELL = ring([1, 2], [8, 2], [8, 5], [3, 5], [3, 9], [1, 9]);
const TRIANGLE = ring([0, 0], [6, 0], [0, 3]);
const DEGENERATE: readonly (readonly [string, Point[]])[] = [
  ['nothing', []],
  ['one corner', ring([4, 5])],
  ['two corners', ring([4, 5], [7, 9])],
  ['one place three times', ring([4, 5], [4, 5], [4, 5])],
  ['three corners on a line', ring([0, 0], [2, 1], [6, 3])],
  ['there and back', ring([0, 0], [5, 0], [5, 2], [5, 0])],
];

describe('area, perimeter and center', () => {
  test('figures with known answers', () => {
    expect(signedAreaM2(ELL)).toBe(29);
    expect(perimeterM(ELL)).toBe(28);
    // Bars' centers (4.5, 3.5) and (2, 7) weighed by 21 and 8 m².
    expect(centroid(ELL)!.xM).toBeCloseTo((4.5 * 21 + 2 * 8) / 29, 12);
    expect(centroid(ELL)!.yM).toBeCloseTo((3.5 * 21 + 7 * 8) / 29, 12);
    expect(signedAreaM2(TRIANGLE)).toBe(9);
    expect(perimeterM(TRIANGLE)).toBeCloseTo(9 + Math.sqrt(45), 12);
    expect(centroid(TRIANGLE)).toEqual({ xM: 2, yM: 1 });
  });

  test('clockwise corners give a negative signed area and the same area', () => {
    const clockwise = [...ELL].reverse();
    expect(signedAreaM2(clockwise)).toBe(-29);
    expect(polygonAreaM2(clockwise)).toBe(29);
  });

  test('a repeated closing corner changes nothing', () => {
    const closed = [...ELL, ELL[0]!];
    expect(signedAreaM2(closed)).toBe(29);
    expect(perimeterM(closed)).toBe(28);
    expect(centroid(closed)).toEqual(centroid(ELL));
  });

  test('a plan far from its origin keeps its digits', () => {
    const far = ELL.map((p) => ({ xM: p.xM + 4e6, yM: p.yM - 3e6 }));
    expect(signedAreaM2(far)).toBe(29);
  });

  test.each(DEGENERATE)('%s has no area and no center', (_, corners) => {
    expect(polygonAreaM2(corners)).toBe(0);
    expect(centroid(corners)).toBeNull();
    expect(isConvex(corners)).toBe(false);
    expect(normalizePolygon(corners).areaM2).toBe(0);
  });

  test('not-a-number is refused, naming the corner', () => {
    const bad = [...ring([0, 0], [3, 0]), { xM: 1, yM: Number.NaN }];
    for (const measure of [signedAreaM2, perimeterM, centroid, boundingBox, polygonEdges, normalizePolygon]) {
      expect(() => measure(bad)).toThrow(EngineError);
      expect(() => measure(bad)).toThrow('point 2 must have finite xM and yM; got 1, NaN');
    }
  });
});

test('bounding box', () => {
  expect(boundingBox(ELL)).toEqual({ minXM: 1, minYM: 2, maxXM: 8, maxYM: 9 });
  expect(boundingBox([])).toBeNull();
});

describe('convexity', () => {
  test('shapes', () => {
    expect(isConvex(TRIANGLE)).toBe(true);
    expect(isConvex([...TRIANGLE].reverse())).toBe(true);
    expect(isConvex(ELL)).toBe(false);
    expect(isConvex(ring([0, 0], [2, 0], [4, 0], [4, 3], [0, 3]))).toBe(true);
  });

  test('a five-pointed star bends one way all along and is not convex', () => {
    const star = [0, 2, 4, 1, 3].map((k) => ({
      xM: Math.sin((k * 2 * Math.PI) / 5),
      yM: Math.cos((k * 2 * Math.PI) / 5),
    }));
    expect(isConvex(star)).toBe(false);
  });

  test('turns', () => {
    const [a, b] = ring([0, 0], [10, 0]);
    expect(turnSign(a!, b!, { xM: 20, yM: 1 })).toBe(1);
    expect(turnSign(a!, b!, { xM: 20, yM: -1 })).toBe(-1);
    expect(turnSign(a!, b!, { xM: 20, yM: 0 })).toBe(0);
    expect(turnSign(a!, b!, { xM: 20, yM: 0.04 }, 0.03)).toBe(0);
    expect(turnSign(a!, b!, { xM: 20, yM: 0.07 }, 0.03)).toBe(1);
  });
});

describe('normal form', () => {
  test('clockwise input is turned round and keeps its first corner', () => {
    const clockwise = ring([0, 0], [0, 3], [6, 3], [6, 0]);
    const normal = normalizePolygon(clockwise);
    expect(normal.reversed).toBe(true);
    expect(normal.inputIndices).toEqual([0, 3, 2, 1]);
    expect(normal.corners).toEqual(ring([0, 0], [6, 0], [6, 3], [0, 3]));
    expect(normal.areaM2).toBe(18);
  });

  test('repeated corners are left out and listed, the closing one too', () => {
    const normal = normalizePolygon(ring([0, 0], [6, 0], [6, 0], [6, 3], [0, 3], [0, 0], [0, 0]));
    expect(normal.corners).toEqual(ring([0, 0], [6, 0], [6, 3], [0, 3]));
    expect(normal.repeated).toEqual([2, 5, 6]);
  });

  test('the tolerance is what makes a repeat', () => {
    const close = ring([0, 0], [6, 0], [6, 0.01], [6, 3], [0, 3]);
    expect(normalizePolygon(close, 0.0101).repeated).toEqual([2]);
    expect(normalizePolygon(close, 0.0099).repeated).toEqual([]);
  });
});

describe('edges', () => {
  test('lengths, bearings clockwise from up, normals pointing out', () => {
    expect(polygonEdges(TRIANGLE).map((e) => [e.index, e.lengthM, e.bearingDeg, e.outwardNormalDeg])).toEqual(
      [
        [0, 6, 90, 180],
        [1, Math.sqrt(45), expect.closeTo(296.565051177078, 10), expect.closeTo(26.565051177078, 10)],
        [2, 3, 180, 270],
      ],
    );
  });

  test('normals point out of a clockwise ring too', () => {
    const edges = polygonEdges(ring([0, 0], [0, 3], [6, 3], [6, 0]));
    expect(edges.map((e) => [e.bearingDeg, e.outwardNormalDeg])).toEqual([
      [0, 270],
      [90, 0],
      [180, 90],
      [270, 180],
    ]);
  });

  test('a repeated corner gives no edge', () => {
    expect(polygonEdges(ring([0, 0], [6, 0], [6, 0], [0, 3])).map((e) => e.index)).toEqual([0, 2, 3]);
    expect(polygonEdges(ring([4, 4]))).toEqual([]);
  });
});
