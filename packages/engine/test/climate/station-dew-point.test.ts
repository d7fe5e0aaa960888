import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { liquidSaturationPressurePa, stationDewPointC } from '../../src/climate/station-dew-point.ts';

/**
 * Saturation pressure over supercooled liquid water, Pa, printed in the Smithsonian Meteorological Tables, 6th edition
 * (List 1951), table 94 (Goff-Gratch), recalled from memory: −20 °C 1.2540 mb, −10 °C 2.8627 mb, 0 °C 6.1078 mb.
 */
const PRINTED = [
  { temperatureC: -20, pressurePa: 125.4 },
  { temperatureC: -10, pressurePa: 286.27 },
  { temperatureC: 0, pressurePa: 610.78 },
  { temperatureC: 20, pressurePa: 2337.3 },
];

describe('dew point over liquid water', () => {
  // Two formulations of the same property on different temperature scales: they differ by up to 0.3 % at −20 °C.
  it.each(PRINTED)('saturation at $temperatureC °C', ({ temperatureC, pressurePa }) => {
    expect(Math.abs(liquidSaturationPressurePa(temperatureC) / pressurePa - 1)).toBeLessThan(0.003);
  });

  it('comes back from its pressure', () => {
    fc.assert(
      fc.property(fc.double({ min: -90, max: 100, noNaN: true }), (dewPoint) => {
        expect(Math.abs(stationDewPointC(liquidSaturationPressurePa(dewPoint)) - dewPoint)).toBeLessThan(
          1e-9,
        );
      }),
      { seed: 3 },
    );
  });

  it.each([0, -1, Number.NaN])('is not there for a vapor pressure of %d', (pressure) => {
    expect(stationDewPointC(pressure)).toBeNaN();
  });
});
