import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  airState,
  dewPointC,
  humidityRatioFromRelativeHumidity,
  humidityRatioFromVaporPressure,
  humidityRatioFromWetBulb,
  relativeHumidityFromHumidityRatio,
  saturationPressurePa,
  vaporPressureFromHumidityRatioPa,
  wetBulbC,
} from '../../src/psychrometrics/index.ts';

const reading = fc.record({
  temperatureC: fc.double({ min: -60, max: 65, noNaN: true }),
  relativeHumidity: fc.double({ min: 0.001, max: 1, noNaN: true }),
  pressurePa: fc.double({ min: 55_000, max: 110_000, noNaN: true }),
});

describe('moist air', () => {
  test('dew point <= wet bulb <= dry bulb', () => {
    fc.assert(
      fc.property(reading, (air) => {
        const state = airState(air);
        // 2e-9 K: twice the width at which the wet bulb search stops.
        if (state.vaporPressurePa < saturationPressurePa(-100)) expect(state.dewPointC).toBeNaN();
        else expect(state.dewPointC).toBeLessThanOrEqual(state.wetBulbC + 2e-9);
        expect(state.wetBulbC).toBeLessThanOrEqual(air.temperatureC + 2e-9);
      }),
      { numRuns: 2000 },
    );
  });

  test('humidity ratio, vapor pressure and relative humidity return', () => {
    fc.assert(
      fc.property(reading, ({ temperatureC, relativeHumidity, pressurePa }) => {
        const W = humidityRatioFromRelativeHumidity(temperatureC, relativeHumidity, pressurePa);
        expect(relativeHumidityFromHumidityRatio(temperatureC, W, pressurePa) / relativeHumidity).toBeCloseTo(
          1,
          12,
        );
        const pv = vaporPressureFromHumidityRatioPa(W, pressurePa);
        expect(humidityRatioFromVaporPressure(pv, pressurePa) / W).toBeCloseTo(1, 12);
      }),
    );
  });

  test('dew point inverts the saturation pressure from -100 to 200 °C', () => {
    fc.assert(
      fc.property(fc.double({ min: -99.999, max: 199.999, noNaN: true }), (t) => {
        expect(Math.abs(dewPointC(saturationPressurePa(t)) - t)).toBeLessThan(1e-7);
      }),
      { numRuns: 2000 },
    );
  });

  test('wet bulb inverts the humidity ratio from a wet bulb', () => {
    fc.assert(
      fc.property(
        reading,
        fc.double({ min: 0, max: 25, noNaN: true }),
        ({ temperatureC, pressurePa }, depressionK) => {
          const wet = temperatureC - depressionK;
          const W = humidityRatioFromWetBulb(temperatureC, wet, pressurePa);
          fc.pre(W > 1e-9);
          const found = wetBulbC(temperatureC, W, pressurePa);
          // An iced wick just below 0 °C has a wet-wick twin at or above 0 °C, which is preferred.
          if (wet < 0 && found >= 0) {
            expect(Math.abs(humidityRatioFromWetBulb(temperatureC, found, pressurePa) - W)).toBeLessThan(
              1e-9,
            );
          } else {
            expect(Math.abs(found - wet)).toBeLessThan(1e-6);
          }
        },
      ),
      { numRuns: 2000 },
    );
  });

  test('saturated air has its dry bulb as dew point and wet bulb', () => {
    fc.assert(
      fc.property(fc.double({ min: -60, max: 65, noNaN: true }), (temperatureC) => {
        const state = airState({ temperatureC, relativeHumidity: 1, pressurePa: 99_000 });
        expect(Math.abs(state.dewPointC - temperatureC)).toBeLessThan(1e-7);
        expect(Math.abs(state.wetBulbC - temperatureC)).toBeLessThan(1e-7);
      }),
    );
  });
});
