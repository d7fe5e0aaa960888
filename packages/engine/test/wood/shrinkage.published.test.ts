import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dimensionAtMoistureContent, woodShrinkage } from '../../src/wood/shrinkage.ts';

const joist = { dimensionM: 0.235, fromMoistureContent: 0.2, toMoistureContent: 0.12 } as const;

describe('dimensionAtMoistureContent', () => {
  test('flat-sawn loblolly 235.0 mm deep at 20 % MC is 230.25 mm at 12 % (worked out from eq. 4-9 and Table 4-3)', () => {
    const { value, notices } = dimensionAtMoistureContent({
      ...joist,
      wood: 'loblolly-pine',
      direction: 'tangential',
    });
    // Half of the last printed digit [mm].
    expect(Math.abs(1000 * value - 230.25)).toBeLessThanOrEqual(0.005);
    expect(notices).toEqual([]);
  });

  /** Green to oven-dry, radial and tangential %, Wood Handbook Table 4-3 from memory. */
  test.each([
    ['douglas-fir', 4.8, 7.6],
    ['loblolly-pine', 4.8, 7.4],
    ['longleaf-pine', 5.1, 7.5],
    ['red-spruce', 3.8, 7.8],
    ['red-oak', 4.0, 8.6],
    ['white-oak', 5.6, 10.5],
  ])('%s from green to oven-dry', (wood, radial, tangential) => {
    const dry = { dimensionM: 1, fromMoistureContent: 0.3, toMoistureContent: 0, wood };
    expect(100 * (1 - dimensionAtMoistureContent({ ...dry, direction: 'radial' }).value)).toBeCloseTo(
      radial,
      9,
    );
    expect(100 * (1 - dimensionAtMoistureContent({ ...dry, direction: 'tangential' }).value)).toBeCloseTo(
      tangential,
      9,
    );
  });

  test('wet wood keeps its green size and says so', () => {
    const wet = { ...joist, wood: { radial: 0.04, tangential: 0.07 }, direction: 'radial' } as const;
    const at = (toMoistureContent: number) => dimensionAtMoistureContent({ ...wet, toMoistureContent });
    expect(at(0.3).notices).toEqual([]);
    expect(at(0.31).value).toBe(at(0.3).value);
    expect(at(0.31).notices.map((n) => n.code)).toEqual(['no-change-above-fiber-saturation']);
  });

  test('there and back is the same size', () => {
    const content = fc.double({ min: 0, max: 0.6, noNaN: true });
    fc.assert(
      fc.property(content, content, fc.constantFrom(...Object.keys(woodShrinkage)), (a, b, wood) => {
        const there = dimensionAtMoistureContent({
          dimensionM: 0.184,
          fromMoistureContent: a,
          toMoistureContent: b,
          wood,
          direction: 'tangential',
        });
        const back = dimensionAtMoistureContent({
          dimensionM: there.value,
          fromMoistureContent: b,
          toMoistureContent: a,
          wood,
          direction: 'tangential',
        });
        expect(back.value).toBeCloseTo(0.184, 12);
      }),
    );
  });

  test('unknown wood is refused with the known ones', () => {
    const ask = () => dimensionAtMoistureContent({ ...joist, wood: 'balsa', direction: 'radial' });
    expect(ask).toThrow(/no shrinkage figures for "balsa"; known are douglas-fir/);
  });
});
