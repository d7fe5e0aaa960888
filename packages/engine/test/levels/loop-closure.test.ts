import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { closeLoop, thirdOrderAllowedM } from '../../src/levels/loop-closure.ts';
import { EngineError } from '../../src/numerics/engine-error.ts';

/** Backsights 4.5, foresights 4.497 m together: 3 mm too much. */
const LOOP = [
  { backsightM: 1.2, foresightM: 1.5, distanceM: 10 },
  { backsightM: 1.6, foresightM: 1.797, distanceM: 20 },
  { backsightM: 1.7, foresightM: 1.2, distanceM: 30 },
];

describe('level loop', () => {
  test('the error is shared out by distance and the loop comes back to its start', () => {
    const loop = closeLoop(LOOP, 50);
    expect(loop.misclosureM).toBeCloseTo(0.003, 12);
    expect(loop).toMatchObject({ accepted: true, allowedM: 0.003175, spreadBy: 'distance' });
    // −0.3 − 0.5 mm; −0.497 − 1.5 mm; 0.003 − 3 mm.
    expect(loop.heightsM[0]).toBeCloseTo(49.6995, 10);
    expect(loop.heightsM[1]).toBeCloseTo(49.5015, 10);
    expect(loop.heightsM[2]).toBeCloseTo(50, 10);
  });

  test('without all distances it is shared out by set-ups', () => {
    const loop = closeLoop(LOOP.map(({ backsightM, foresightM }) => ({ backsightM, foresightM })));
    expect(loop.spreadBy).toBe('set-ups');
    expect(loop.heightsM[0]).toBeCloseTo(-0.301, 10);
    expect(closeLoop([{ backsightM: 1, foresightM: 1.1 }, LOOP[0]!]).spreadBy).toBe('set-ups');
  });

  test('1/8 in is accepted, more is not', () => {
    const off = (misclosureM: number) => closeLoop([{ backsightM: 1 + misclosureM, foresightM: 1 }]).accepted;
    expect(off(0.00317)).toBe(true);
    expect(off(-0.00317)).toBe(true);
    expect(off(0.00318)).toBe(false);
    expect(off(-0.00318)).toBe(false);
  });

  test('third order allows 12 mm over one kilometer, 6 mm over a quarter', () => {
    expect(thirdOrderAllowedM(1000)).toBeCloseTo(0.012, 12);
    expect(thirdOrderAllowedM(250)).toBeCloseTo(0.006, 12);
  });

  test('no set-ups and readings that are none are refused', () => {
    expect(() => closeLoop([])).toThrow('at least one set-up');
    expect(() => closeLoop([{ backsightM: Number.NaN, foresightM: 1 }])).toThrow(EngineError);
    expect(() => closeLoop([{ backsightM: 1, foresightM: -1 }])).toThrow('foresight of set-up 1 (m)');
    expect(() => closeLoop([{ backsightM: 1, foresightM: 1, distanceM: -4 }])).toThrow(EngineError);
  });

  test('every corrected loop ends where it began', () => {
    const setUp = fc.record({
      backsightM: fc.double({ min: 0, max: 3, noNaN: true }),
      foresightM: fc.double({ min: 0, max: 3, noNaN: true }),
      distanceM: fc.double({ min: 0.5, max: 30, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(setUp, { minLength: 1, maxLength: 12 }), (setUps) => {
        expect(Math.abs(closeLoop(setUps, 12.5).heightsM.at(-1)! - 12.5)).toBeLessThan(1e-12);
      }),
    );
  });
});
