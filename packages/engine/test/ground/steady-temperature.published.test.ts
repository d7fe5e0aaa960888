import { describe, expect, it } from 'vitest';
import { steadyTemperatureC } from '../../src/ground/steady-temperature.ts';

/**
 * Worked floor of ISO 13370:2017, formulas as coded in a public function set: A 120 m², P 44 m, U_f 1.6, U_g 0.7557,
 * h 0.6 m, U_w 1.7, ventilation 0.00779 m³/s, inside 20 °C, outside 12 °C, giving 16.56 °C (computed from the standard's
 * formulas; tolerance half the last digit).
 */
describe('steady temperature of an underfloor space', () => {
  it('is that of ISO 13370 with its couplings', () => {
    const found = steadyTemperatureC([
      { conductanceWPerK: 120 * 1.6, temperatureC: 20 },
      { conductanceWPerK: 0.00779 * 1.2 * 1006, temperatureC: 12 },
      { conductanceWPerK: 120 * 0.7557, temperatureC: 12 },
      { conductanceWPerK: 0.6 * 44 * 1.7, temperatureC: 12 },
    ]);
    expect(Math.abs(found - 16.56)).toBeLessThanOrEqual(0.005);
  });

  it('rises by the heat given off over the conductance', () => {
    const couplings = [{ conductanceWPerK: 50, temperatureC: 10 }];
    expect(steadyTemperatureC(couplings, 300)).toBe(16);
  });

  it('refuses a space that is tied to nothing', () => {
    expect(() => steadyTemperatureC([{ conductanceWPerK: 0, temperatureC: 9 }])).toThrow(
      /no steady temperature/,
    );
  });
});
