import { describe, expect, test } from 'vitest';
import { EngineError } from '../../src/numerics/engine-error.ts';
import { type OutlineInput, resolveOutline } from '../../src/plan/outline.ts';

const corners = (...xy: readonly (readonly [number, number])[]): OutlineInput => ({
  kind: 'corners',
  corners: xy.map(([xM, yM], i) => ({ id: `c${i}`, at: { xM, yM } })),
});
const codes = (outline: OutlineInput) => resolveOutline(outline).issues.map((issue) => issue.code);

describe('outline from corners', () => {
  test('counter-clockwise: kept as it is, walls named by their first corner', () => {
    const outline = resolveOutline(corners([0, 0], [7, 0], [7, 4], [0, 4]));
    expect(outline).toMatchObject({ usable: true, areaM2: 28, perimeterM: 22, traverse: null, issues: [] });
    expect(
      outline.edges.map((e) => [e.id, e.index, e.inputIndex, e.lengthM, e.bearingDeg, e.outwardNormalDeg]),
    ).toEqual([
      ['c0', 0, 0, 7, 90, 180],
      ['c1', 1, 1, 4, 0, 90],
      ['c2', 2, 2, 7, 270, 0],
      ['c3', 3, 3, 4, 180, 270],
    ]);
  });

  test('clockwise: turned round, and each wall keeps its own name', () => {
    const outline = resolveOutline(corners([0, 0], [0, 4], [7, 4], [7, 0]));
    expect(outline.corners[0]).toEqual({ xM: 0, yM: 0 });
    expect(outline.areaM2).toBe(28);
    // c0 was the west wall, c1 the north, c2 the east, c3 the south wall.
    expect(outline.edges.map((e) => [e.id, e.inputIndex, e.outwardNormalDeg])).toEqual([
      ['c3', 3, 180],
      ['c2', 2, 90],
      ['c1', 1, 0],
      ['c0', 0, 270],
    ]);
  });

  test('north turns every bearing', () => {
    const outline = resolveOutline(corners([0, 0], [7, 0], [7, 4], [0, 4]), 300);
    expect(outline.edges.map((e) => [e.bearingDeg, e.outwardNormalDeg])).toEqual([
      [30, 120],
      [300, 30],
      [210, 300],
      [120, 210],
    ]);
  });

  test('corners without ids give walls without ids', () => {
    const outline = resolveOutline({
      kind: 'corners',
      corners: [{ at: { xM: 0, yM: 0 } }, { at: { xM: 5, yM: 0 } }, { at: { xM: 0, yM: 3 } }],
    });
    expect(outline.edges.every((e) => !('id' in e))).toBe(true);
  });

  test('repeated corners are listed and left out; walls keep the name of the real wall', () => {
    const outline = resolveOutline(corners([0, 0], [7, 0], [7, 0.0009], [7, 4], [0, 4], [0, 0]));
    expect(outline.issues.map((issue) => [issue.code, issue.path])).toEqual([
      ['repeated-corner', 'corners[2]'],
      ['repeated-corner', 'corners[5]'],
    ]);
    expect(outline.usable).toBe(true);
    expect(outline.edges.map((e) => e.id)).toEqual(['c0', 'c2', 'c3', 'c4']);
    expect(codes(corners([0, 0], [7, 0], [7, 0.0011], [7, 4], [0, 4]))).toEqual([]);
  });

  test('the same, walked clockwise', () => {
    const outline = resolveOutline(corners([0, 0], [0, 4], [7, 4], [7, 4], [7, 0], [0, 0]));
    expect(outline.edges.map((e) => e.id)).toEqual(['c4', 'c3', 'c1', 'c0']);
  });

  test('walls that cross are named, with the place', () => {
    const outline = resolveOutline(corners([0, 0], [6, 4], [6, 0], [0, 4]));
    // A bow tie of equal halves has no net area; shift one corner to give it one.
    const skew = resolveOutline(corners([0, 0], [6, 4], [6, 0], [0, 6]));
    expect(outline.usable).toBe(false);
    expect(skew.usable).toBe(false);
    expect(skew.issues).toEqual([
      {
        code: 'crosses-itself',
        path: 'corners',
        found: 'wall 1 (c0) and wall 3 (c2) cross at x 3.60 m, y 2.40 m',
        expected: 'walls that meet only at their corners',
      },
    ]);
  });

  test('walls that fold back over each other are an issue', () => {
    const outline = resolveOutline(corners([0, 0], [9, 0], [5, 0], [5, 4]));
    expect(outline.usable).toBe(false);
    expect(outline.issues[0]!.found).toBe(
      'wall 1 (c0) and wall 2 (c1) run over each other at x 9.00 m, y 0.00 m',
    );
  });

  test('two parts that meet in one corner can be used, but are said', () => {
    const twoRooms = corners([0, 0], [3, 2], [7, 0], [7, 5], [3, 2], [0, 5]);
    expect(resolveOutline(twoRooms)).toMatchObject({ usable: true, areaM2: 0.5 * 5 * 3 + 0.5 * 5 * 4 });
    expect(codes(twoRooms)).toEqual(['touches-itself']);
  });

  test('a bow tie through one corner is not usable: its halves run opposite ways', () => {
    const bow = corners([0, 0], [3, 2], [7, 5], [7, 0], [3, 2], [0, 6]);
    expect(resolveOutline(bow).usable).toBe(false);
  });

  test.each([
    ['nothing', corners(), 'too-few-corners'],
    ['two corners', corners([0, 0], [5, 1]), 'too-few-corners'],
    ['corners on a line', corners([0, 0], [2, 1], [8, 4]), 'no-area'],
    ['equal loops both ways', corners([0, 0], [6, 4], [6, 0], [0, 4]), 'no-area'],
  ])('%s cannot be used', (_, outline, code) => {
    expect(codes(outline)).toContain(code);
    expect(resolveOutline(outline).usable).toBe(false);
  });

  test('equal loops both ways name the walls that cross', () => {
    expect(codes(corners([0, 0], [6, 4], [6, 0], [0, 4]))).toEqual(['no-area', 'crosses-itself']);
    expect(codes(corners([0, 0], [2, 1], [8, 4]))).toEqual(['no-area']);
  });

  test('a corner that is no number is refused', () => {
    expect(() => resolveOutline(corners([0, 0], [Number.NaN, 3], [4, 4]))).toThrow(EngineError);
  });
});

describe('outline from taped walls', () => {
  const legs = [
    { id: 'south', lengthM: 7, azimuthDeg: 90 },
    { id: 'east', lengthM: 4, azimuthDeg: 0 },
    { id: 'north', lengthM: 7.01, azimuthDeg: 270 },
    { id: 'west', lengthM: 4, azimuthDeg: 180 },
  ];

  test('walls keep the ids of their legs; the closure comes along', () => {
    const outline = resolveOutline({ kind: 'traverse', legs, start: { xM: 2, yM: 1 } });
    expect(outline.usable).toBe(true);
    expect(outline.corners[0]).toEqual({ xM: 2, yM: 1 });
    expect(outline.edges.map((e) => e.id)).toEqual(['south', 'east', 'north', 'west']);
    expect(outline.traverse!.closure.linearM).toBeCloseTo(0.01, 12);
    // The transit rule shares the centimeter between the two long walls.
    expect(outline.edges[0]!.lengthM).toBeCloseTo(7.005, 5);
    expect(outline.edges[1]!.lengthM).toBe(4);
  });

  test('too few legs: one issue, not two', () => {
    expect(codes({ kind: 'traverse', legs: legs.slice(0, 2) })).toEqual(['too-few-corners']);
  });

  test('a wall with no length is an issue at its leg', () => {
    const bad = legs.map((leg, i) => (i === 2 ? { ...leg, lengthM: 0 } : leg));
    const outline = resolveOutline({ kind: 'traverse', legs: bad });
    expect(outline.usable).toBe(false);
    expect(outline.issues.map((issue) => issue.path)).toEqual(['legs[2].lengthM']);
  });
});
