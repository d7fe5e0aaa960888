import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Point } from '../../src/geometry/point.ts';
import { EngineError } from '../../src/numerics/engine-error.ts';
import { clearHeightAtM, clearHeightOver, type HeightSample } from '../../src/plan/clear-height.ts';

const FLOOR: Point[] = [
  { xM: 0, yM: 0 },
  { xM: 12, yM: 0 },
  { xM: 12, yM: 7 },
  { xM: 0, yM: 7 },
];
const sample = (xM: number, yM: number, clearHeightM: number): HeightSample => ({
  at: { xM, yM },
  clearHeightM,
});
const samples = fc.array(
  fc
    .tuple(
      fc.double({ min: 0, max: 12, noNaN: true }),
      fc.double({ min: 0, max: 7, noNaN: true }),
      fc.double({ min: 0.3, max: 1.6, noNaN: true }),
    )
    .map(([x, y, h]) => sample(x, y, h)),
  { minLength: 1, maxLength: 12 },
);

describe('clear height', () => {
  test('no samples, no height', () => {
    expect(clearHeightOver({ outer: FLOOR }, [])).toBeNull();
    expect(clearHeightAtM([], { xM: 1, yM: 1 })).toBeNaN();
  });

  test('weights by one over the distance squared', () => {
    // Distances 1 and 2: weights 1 and 1/4.
    const two = [sample(0, 0, 0.5), sample(3, 0, 1.0)];
    expect(clearHeightAtM(two, { xM: 1, yM: 0 })).toBeCloseTo((0.5 + 0.25) / 1.25, 12);
    expect(clearHeightAtM(two, { xM: 3, yM: 0 })).toBe(1.0);
  });

  test('an even slope measured in the four corners: the mean is the height in the middle', () => {
    const slope = (x: number, y: number) => 0.6 + 0.03 * x + 0.02 * y;
    const corners = FLOOR.map(({ xM, yM }) => sample(xM, yM, slope(xM, yM)));
    const { value, notices } = clearHeightOver({ outer: FLOOR }, corners)!;
    expect(value.meanM).toBeCloseTo(slope(6, 3.5), 10);
    expect(value).toMatchObject({ minM: 0.6, sampleCount: 4 });
    expect(value.maxM).toBeCloseTo(0.6 + 0.36 + 0.14, 12);
    expect(notices).toEqual([]);
  });

  test('a crowd of samples in one corner does not outweigh one at the other end', () => {
    const crowd = Array.from({ length: 9 }, (_, i) => sample(0.2 + 0.02 * i, 0.3, 0.5));
    const { value } = clearHeightOver({ outer: FLOOR }, [...crowd, sample(8, 4, 1.1)])!;
    const plain = (9 * 0.5 + 1.1) / 10;
    expect(value.meanM).toBeGreaterThan(plain + 0.05);
  });

  test('share of the floor below limits', () => {
    const { value } = clearHeightOver(
      { outer: FLOOR },
      [sample(0, 3.5, 0.4), sample(12, 3.5, 0.8)],
      [0.3, 0.6, 0.9],
    )!;
    expect(value.shareBelow).toEqual([
      { limitM: 0.3, share: 0 },
      { limitM: 0.6, share: expect.closeTo(0.5, 2) },
      { limitM: 0.9, share: 1 },
    ]);
  });

  test('notices count the samples', () => {
    const codes = (n: number) =>
      clearHeightOver(
        { outer: FLOOR },
        Array.from({ length: n }, (_, i) => sample(2 * i, 1, 0.7 + 0.05 * i)),
      )!.notices.map((notice) => notice.code);
    expect(codes(1)).toEqual(['one-clear-height']);
    expect(codes(3)).toEqual(['few-clear-heights']);
    expect(codes(4)).toEqual([]);
  });

  test('heights out of range are refused', () => {
    expect(() => clearHeightOver({ outer: FLOOR }, [sample(1, 1, 20.1)])).toThrow(EngineError);
    expect(() => clearHeightOver({ outer: FLOOR }, [sample(1, 1, -0.1)])).toThrow(EngineError);
    expect(() => clearHeightOver({ outer: FLOOR }, [sample(Number.NaN, 1, 0.7)])).toThrow(EngineError);
  });

  test('the mean lies between the samples and does not depend on their order', () => {
    fc.assert(
      fc.property(samples, (taken) => {
        const there = clearHeightOver({ outer: FLOOR }, taken)!.value;
        const back = clearHeightOver({ outer: FLOOR }, [...taken].reverse())!.value;
        expect(there.meanM).toBeGreaterThanOrEqual(there.minM);
        expect(there.meanM).toBeLessThanOrEqual(there.maxM);
        expect(Math.abs(there.meanM - back.meanM)).toBeLessThan(1e-9);
      }),
      { numRuns: 50 },
    );
  });

  test('turning the plan moves the mean by no more than the stated share of the range', () => {
    fc.assert(
      fc.property(samples, fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }), (taken, angle) => {
        const turn = ({ xM, yM }: Point): Point => ({
          xM: Math.cos(angle) * xM - Math.sin(angle) * yM,
          yM: Math.sin(angle) * xM + Math.cos(angle) * yM,
        });
        const plain = clearHeightOver({ outer: FLOOR }, taken)!.value;
        const turned = clearHeightOver(
          { outer: FLOOR.map(turn) },
          taken.map(({ at, clearHeightM }) => ({ at: turn(at), clearHeightM })),
        )!.value;
        expect(Math.abs(turned.meanM - plain.meanM)).toBeLessThanOrEqual(
          0.002 * (plain.maxM - plain.minM) + 1e-12,
        );
      }),
      { numRuns: 50 },
    );
  });
});
