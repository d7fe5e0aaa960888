import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pointings } from '../../src/coverage/pointings.ts';
import { angleBetweenDeg } from '../../src/geometry/bearing.ts';

describe('where to point the camera', () => {
  test('nothing to see, nothing to point at; a full turn needs one picture', () => {
    expect(pointings([], 65)).toEqual([]);
    expect(pointings([10, 200], 360)).toEqual([0]);
  });

  test('one picture in the middle of what it must hold, through north too', () => {
    expect(pointings([80, 120], 65)).toEqual([100.5]);
    expect(pointings([350, 20], 65)).toEqual([5.5]);
  });

  test('all round: as many as it takes', () => {
    const round = Array.from({ length: 720 }, (_, i) => i / 2);
    // 65° less a margin of 2° at each side: 61° each.
    expect(pointings(round, 65)).toHaveLength(6);
    expect(pointings(round, 94)).toHaveLength(4);
    expect(pointings(round, 93)).toHaveLength(5);
    expect(pointings(round, 184)).toHaveLength(2);
  });

  test('every direction lies within a picture, and no fewer pictures would do', () => {
    const directions = fc.array(fc.double({ min: 0, max: 359.99, noNaN: true }), {
      minLength: 1,
      maxLength: 7,
    });
    fc.assert(
      fc.property(directions, fc.integer({ min: 30, max: 200 }), (list, view) => {
        const bearings = pointings(list, view);
        for (const d of list) {
          expect(Math.min(...bearings.map((b) => angleBetweenDeg(b, d)))).toBeLessThanOrEqual(view / 2 - 1.4);
        }
        expect(bearings).toEqual([...bearings].sort((a, b) => a - b));
        expect(bearings.length).toBeLessThanOrEqual(fewest(list.map(Math.floor), view - 4));
      }),
      { numRuns: 300 },
    );
  });
});

/** Fewest arcs of whole degrees that hold all directions: every set of starts among the directions is tried. */
function fewest(whole: readonly number[], held: number): number {
  let best = whole.length;
  for (let set = 1; set < 1 << whole.length; set += 1) {
    const starts = whole.filter((_, i) => (set >> i) & 1);
    if (starts.length >= best) continue;
    if (whole.every((d) => starts.some((s) => (d - s + 360) % 360 < held))) best = starts.length;
  }
  return best;
}
