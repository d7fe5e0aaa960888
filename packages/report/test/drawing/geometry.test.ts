import { describe, expect, test } from 'vitest';
import type { LineItem, Spot } from '../../src/drawing/display-list.ts';
import { hatchLines, speckle } from '../../src/drawing/hatch.ts';
import { boxOf, grown, isClockwise, isInside, turnedRectangle } from '../../src/drawing/polygon.ts';

const square: Spot[] = [
  { x: 0, y: 0 },
  { x: 10, y: 0 },
  { x: 10, y: 10 },
  { x: 0, y: 10 },
];
const ell: Spot[] = [
  { x: 0, y: 0 },
  { x: 20, y: 0 },
  { x: 20, y: 7 },
  { x: 9, y: 7 },
  { x: 9, y: 16 },
  { x: 0, y: 16 },
];
const stroke = { color: 'ink', width: 1 } as const;

describe('an outline moved outward', () => {
  test('each side by its own distance', () => {
    expect(grown(square, [1, 2, 3, 4])).toEqual([
      { x: -4, y: -1 },
      { x: 12, y: -1 },
      { x: 12, y: 13 },
      { x: -4, y: 13 },
    ]);
  });

  test('outward whichever way the corners run', () => {
    const back = [...square].reverse();
    expect(isClockwise(square)).toBe(true);
    expect(isClockwise(back)).toBe(false);
    expect(boxOf(grown(back, [1, 1, 1, 1]))).toEqual({ left: -1, top: -1, right: 11, bottom: 11 });
  });

  test('a corner on a straight wall moves straight out', () => {
    const withMiddle = [square[0], { x: 4, y: 0 }, ...square.slice(1)];
    expect(grown(withMiddle, [2, 2, 2, 2, 2])[1]).toEqual({ x: 4, y: -2 });
  });

  test('a needle corner does not run away', () => {
    const needle = [
      { x: 0, y: 0 },
      { x: 100, y: 1 },
      { x: 0, y: 2 },
    ];
    for (const p of grown(needle, [3, 3, 3])) expect(Math.hypot(p.x - 50, p.y - 1)).toBeLessThan(70);
  });
});

describe('hatching', () => {
  test.each([0, 30, 45, 90])('stays inside an outline with a notch, at %d degrees', (angle) => {
    const lines = hatchLines(ell, angle, 1.3, stroke) as LineItem[];
    expect(lines.length).toBeGreaterThan(5);
    for (const { points } of lines) {
      const middle = { x: (points[0].x + points[1].x) / 2, y: (points[0].y + points[1].y) / 2 };
      expect(isInside(middle, ell)).toBe(true);
    }
  });

  test('level lines cover the area: their length times the spacing is about the area', () => {
    const spacing = 0.1;
    const length = (hatchLines(ell, 0, spacing, stroke) as LineItem[]).reduce(
      (sum, { points: [a, b] }) => sum + Math.hypot(b.x - a.x, b.y - a.y),
      0,
    );
    // The area by hand: 20 x 7 + 9 x 9 = 221; the first and last line may miss by one spacing of the width.
    expect(length * spacing).toBeGreaterThan(221 - 2.1);
    expect(length * spacing).toBeLessThan(221 + 2.1);
  });

  test('strokes of earth start inside', () => {
    const dashes = speckle(ell, 2, stroke, 'dash') as LineItem[];
    expect(dashes.length).toBeGreaterThan(20);
    for (const { points } of dashes)
      expect(isInside({ x: (points[0].x + points[1].x) / 2, y: (points[0].y + points[1].y) / 2 }, ell)).toBe(
        true,
      );
  });
});

test('a turned rectangle keeps its sides and turns about its middle', () => {
  const [a, b, c] = turnedRectangle({ x: 5, y: 7 }, { x: 0.6, y: 0.8 }, 10, 4);
  expect(Math.hypot(b.x - a.x, b.y - a.y)).toBeCloseTo(10, 12);
  expect(Math.hypot(c.x - b.x, c.y - b.y)).toBeCloseTo(4, 12);
  expect((a.x + c.x) / 2).toBeCloseTo(5, 12);
  expect((a.y + c.y) / 2).toBeCloseTo(7, 12);
});
