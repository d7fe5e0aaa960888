import { describe, expect, test } from 'vitest';
import {
  areaOfDifferenceM2,
  areaOfOverlapM2,
  areaOfUnionM2,
  shapeAreaM2,
} from '../../src/geometry/area-of-overlap.ts';
import { partitionAreas } from '../../src/geometry/partition-areas.ts';
import type { Point } from '../../src/geometry/point.ts';
import { sampleGrid } from '../../src/geometry/sample-grid.ts';
import { EngineError } from '../../src/numerics/engine-error.ts';

const box = (x0: number, y0: number, x1: number, y1: number): Point[] => [
  { xM: x0, yM: y0 },
  { xM: x1, yM: y0 },
  { xM: x1, yM: y1 },
  { xM: x0, yM: y1 },
];

describe('areas of shapes', () => {
  test('overlap, difference and union of boxes', () => {
    const a = { outer: box(0, 0, 7, 5) };
    const b = { outer: box(4, 2, 10, 9) };
    expect(areaOfOverlapM2(a, b)).toBe(9);
    expect(areaOfDifferenceM2(a, b)).toBe(26);
    expect(areaOfDifferenceM2(b, a)).toBe(33);
    expect(areaOfUnionM2([a, b])).toBe(68);
  });

  test('a concave outline: the notch is not covered', () => {
    const cee = [
      ...[
        [0, 0],
        [9, 0],
        [9, 2],
        [3, 2],
        [3, 6],
        [9, 6],
        [9, 8],
        [0, 8],
      ].map(([xM, yM]) => ({ xM: xM!, yM: yM! })),
    ];
    expect(areaOfOverlapM2({ outer: cee }, { outer: box(5, 1, 8, 7) })).toBe(6);
  });

  test('a tilted square over a box: triangle corners cut off', () => {
    const diamond = [
      { xM: 0, yM: 3 },
      { xM: 3, yM: 0 },
      { xM: 6, yM: 3 },
      { xM: 3, yM: 6 },
    ];
    // The box cuts a triangle of height 1 and base 2 off the top of the 18 m² diamond.
    expect(areaOfOverlapM2({ outer: diamond }, { outer: box(-1, -1, 7, 5) })).toBeCloseTo(17, 12);
  });

  test('holes that overlap and stick out are taken off once', () => {
    const floor = { outer: box(0, 0, 10, 8), holes: [box(1, 1, 4, 3), box(3, 2, 6, 5), box(9, 7, 12, 11)] };
    expect(shapeAreaM2(floor)).toBe(80 - 6 - 9 + 1 - 1);
  });

  test('shared edges and identical shapes', () => {
    expect(areaOfOverlapM2({ outer: box(0, 0, 4, 3) }, { outer: box(4, 0, 9, 3) })).toBe(0);
    expect(areaOfOverlapM2({ outer: box(0, 0, 4, 3) }, { outer: [...box(0, 0, 4, 3)].reverse() })).toBe(12);
  });

  test('rings without area cover nothing', () => {
    expect(areaOfUnionM2([])).toBe(0);
    expect(shapeAreaM2({ outer: [] })).toBe(0);
    expect(shapeAreaM2({ outer: box(2, 2, 2, 6) })).toBe(0);
    expect(areaOfOverlapM2({ outer: box(0, 0, 5, 4) }, { outer: [{ xM: 1, yM: 1 }] })).toBe(0);
  });

  test('a ring that crosses itself: what is wound twice is outside', () => {
    // Down the box, round a second smaller box inside it, and back along the same cut.
    const twice = [...box(0, 0, 6, 5), { xM: 0, yM: 0 }, ...box(1, 1, 3, 4), { xM: 1, yM: 1 }];
    expect(shapeAreaM2({ outer: twice })).toBeCloseTo(30 - 6, 12);
  });
});

describe('partition by class', () => {
  test('the later of overlapping zones wins, the rest is elsewhere', () => {
    const rings = [box(0, 0, 10, 6), box(-2, -2, 4, 3), box(2, 1, 8, 4)];
    const areas = partitionAreas(
      rings,
      (inside) => {
        if (!inside[0]) return -1;
        if (inside[2]) return 2;
        return inside[1] ? 1 : 0;
      },
      3,
    );
    // Zone 1 within the room 12, of which 4 belong to zone 2 (18).
    expect(areas).toEqual([60 - 18 - 8, 8, 18]);
  });

  test('a class out of range is refused', () => {
    expect(() => partitionAreas([box(0, 0, 1, 2)], () => 3, 3)).toThrow(EngineError);
    expect(() => partitionAreas([box(0, 0, 1, 2)], () => 3, 3)).toThrow('class must be below 3');
  });

  test('not-a-number is refused, naming ring and point', () => {
    const bad = [...box(0, 0, 3, 2), { xM: Number.NaN, yM: 1 }];
    expect(() => partitionAreas([box(0, 0, 1, 2), bad], () => 0, 1)).toThrow(
      'ring 1: point 4 must have finite xM and yM',
    );
  });
});

describe('sample grid', () => {
  test('a box that the cells fit is covered by exactly the cells asked for', () => {
    const grid = sampleGrid({ outer: box(2, 3, 8, 7) }, 96);
    expect(grid.cellM).toBe(0.5);
    expect(grid.centers).toHaveLength(96);
    expect(grid.centers[0]).toEqual({ xM: 2.25, yM: 3.25 });
  });

  test('no center lies in a hole, and the count stays near the wish', () => {
    const grid = sampleGrid({ outer: box(0, 0, 9, 7), holes: [box(2, 2, 5, 4)] }, 900);
    expect(grid.centers.some((c) => c.xM > 2 && c.xM < 5 && c.yM > 2 && c.yM < 4)).toBe(false);
    // Rows and columns cut by walls and the hole: 32 m of walls and 10 m of hole over cells of 0.25 m.
    expect(Math.abs(grid.centers.length - 900)).toBeLessThan(42 / grid.cellM / 2);
  });

  test('nothing to sample', () => {
    expect(sampleGrid({ outer: [] }, 50)).toEqual({ cellM: 0, centers: [] });
    expect(() => sampleGrid({ outer: box(0, 0, 1, 2) }, 0.5)).toThrow(
      'cellCount must be at least 1; got 0.5',
    );
  });
});
