import { describe, expect, test } from 'vitest';
import { angleBetweenDeg, bearingDeg, cosDeg, sinDeg, wrapDeg } from '../../src/geometry/bearing.ts';

describe('bearings', () => {
  test.each([
    [0, 5, 0],
    [5, 0, 90],
    [0, -5, 180],
    [-5, 0, 270],
    [3, 3, 45],
    [-3, 3, 315],
  ])('step (%d, %d) points to %d degrees', (dx, dy, expected) => {
    const from = { xM: 7, yM: -2 };
    expect(bearingDeg(from, { xM: 7 + dx, yM: -2 + dy })).toBeCloseTo(expected, 12);
  });

  test('one place has no bearing', () => {
    expect(bearingDeg({ xM: 7, yM: 2 }, { xM: 7, yM: 2 })).toBeNull();
  });

  test('quarter turns are exact, others agree with radians', () => {
    for (const [angle, sine, cosine] of [
      [0, 0, 1],
      [90, 1, 0],
      [-90, -1, 0],
      [180, 0, -1],
      [450, 1, 0],
      [-720, 0, 1],
    ] as const) {
      expect(sinDeg(angle)).toBe(sine);
      expect(cosDeg(angle)).toBe(cosine);
    }
    expect(sinDeg(30)).toBeCloseTo(0.5, 15);
    expect(cosDeg(240)).toBeCloseTo(-0.5, 15);
  });

  test('wrapping never answers 360 or minus zero', () => {
    expect(wrapDeg(-1e-20)).toBe(0);
    expect(wrapDeg(-360)).toBe(0);
    expect(wrapDeg(725)).toBe(5);
    expect(wrapDeg(-10)).toBe(350);
  });

  test('smallest turn', () => {
    expect(angleBetweenDeg(350, 20)).toBe(30);
    expect(angleBetweenDeg(20, 350)).toBe(30);
    expect(angleBetweenDeg(10, 190)).toBe(180);
  });
});
