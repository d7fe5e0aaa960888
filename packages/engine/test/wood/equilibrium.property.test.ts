import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { equilibriumMoistureContent, equilibriumRelativeHumidity } from '../../src/wood/equilibrium.ts';

/** Temperatures of the Handbook's table below the point where its first-hydrate coefficient vanishes. */
const temperature = fc.double({ min: -30, max: 120, noNaN: true });
const fraction = fc.double({ min: 0, max: 1, noNaN: true });

describe('wood equilibrium', () => {
  test('more humid air never means drier wood', () => {
    fc.assert(
      fc.property(temperature, fraction, fraction, (t, a, b) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        expect(equilibriumMoistureContent(t, low)).toBeLessThanOrEqual(equilibriumMoistureContent(t, high));
      }),
    );
  });

  test('humidity to moisture content and back', () => {
    fc.assert(
      fc.property(temperature, fraction, (t, h) => {
        const back = equilibriumRelativeHumidity(t, equilibriumMoistureContent(t, h));
        // Rounding only: the slope of the curve never falls below a hundredth of its mean.
        expect(Math.abs(back - h)).toBeLessThan(1e-11);
      }),
      { numRuns: 2000 },
    );
  });

  test('moisture content to humidity and back, below saturation', () => {
    fc.assert(
      fc.property(temperature, fc.double({ min: 0, max: 0.999, noNaN: true }), (t, share) => {
        const mc = share * equilibriumMoistureContent(t, 1);
        const back = equilibriumMoistureContent(t, equilibriumRelativeHumidity(t, mc));
        expect(Math.abs(back - mc)).toBeLessThan(1e-11);
      }),
      { numRuns: 2000 },
    );
  });

  test('dry, saturated and meaningless contents', () => {
    expect(equilibriumMoistureContent(17, 0)).toBe(0);
    expect(equilibriumRelativeHumidity(17, 0)).toBe(0);
    expect(equilibriumRelativeHumidity(17, -0.02)).toBe(0);
    expect(equilibriumRelativeHumidity(17, equilibriumMoistureContent(17, 1))).toBe(1);
    expect(equilibriumRelativeHumidity(17, 0.9)).toBe(1);
    expect(equilibriumMoistureContent(Number.NaN, 0.4)).toBeNaN();
    expect(equilibriumMoistureContent(17, Number.NaN)).toBeNaN();
    expect(equilibriumRelativeHumidity(Number.NaN, 0.12)).toBeNaN();
    expect(equilibriumRelativeHumidity(17, Number.NaN)).toBeNaN();
  });
});
