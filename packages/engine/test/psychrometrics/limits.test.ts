import { describe, expect, test } from 'vitest';
import { EngineError } from '../../src/index.ts';
import {
  airState,
  dewPointC,
  humidityRatioFromVaporPressure,
  humidityRatioFromWetBulb,
  pressureAtAltitudePa,
  saturationHumidityRatio,
  saturationPressurePa,
  wetBulbC,
} from '../../src/psychrometrics/index.ts';

function codeAndMessage(run: () => unknown): string {
  try {
    run();
  } catch (error) {
    if (error instanceof EngineError) return `${error.code}: ${error.message}`;
    throw error;
  }
  throw new Error('expected an EngineError');
}

describe('limits of the kernels', () => {
  test('NaN in, NaN out', () => {
    expect(saturationPressurePa(Number.NaN)).toBeNaN();
    expect(dewPointC(Number.NaN)).toBeNaN();
    expect(wetBulbC(20, Number.NaN, 101_325)).toBeNaN();
    expect(wetBulbC(Number.NaN, 0.007, 101_325)).toBeNaN();
    expect(humidityRatioFromVaporPressure(Number.NaN, 101_325)).toBeNaN();
  });

  test('the curve passes from ice to water at the triple point without a visible step', () => {
    const ice = saturationPressurePa(0.01);
    const water = saturationPressurePa(0.010000001);
    // 611.657 Pa at the triple point (IAPWS, from memory); both equations meet it to its last digit.
    expect(Math.abs(ice - 611.657)).toBeLessThan(0.001);
    expect(Math.abs(water - 611.657)).toBeLessThan(0.001);
  });

  test('dry air has no dew point', () => {
    expect(dewPointC(0)).toBeNaN();
    expect(dewPointC(-5)).toBeNaN();
    expect(dewPointC(saturationPressurePa(-100) * 0.999)).toBeNaN();
    expect(dewPointC(saturationPressurePa(-100) * 1.001)).toBeGreaterThan(-100);
    expect(dewPointC(saturationPressurePa(200) * 0.999)).toBeLessThan(200);
    expect(dewPointC(saturationPressurePa(200) * 1.001)).toBeNaN();
  });

  test('no humidity ratio at or above the boiling point', () => {
    expect(saturationHumidityRatio(99, 101_325)).toBeGreaterThan(10);
    expect(saturationHumidityRatio(101, 101_325)).toBeNaN();
    expect(humidityRatioFromVaporPressure(101_325, 101_325)).toBeNaN();
    expect(humidityRatioFromVaporPressure(-1, 101_325)).toBeNaN();
  });

  test('no wet bulb for impossible humidity ratios; a negative ratio for impossible wet bulbs', () => {
    expect(wetBulbC(20, -0.001, 101_325)).toBeNaN();
    expect(wetBulbC(20, saturationHumidityRatio(20, 101_325) * 1.001, 101_325)).toBeNaN();
    expect(humidityRatioFromWetBulb(40, 5, 101_325)).toBeLessThan(0);
  });

  test('wet bulb of bone-dry and of hot air still satisfies its equation', () => {
    for (const [t, W] of [
      [30, 0],
      [-80, 0],
      [150, 0.5],
      [190, 0.02],
    ] as const) {
      const wet = wetBulbC(t, W, 101_325);
      expect(wet).toBeLessThan(t);
      expect(Math.abs(humidityRatioFromWetBulb(t, wet, 101_325) - W)).toBeLessThan(1e-8);
    }
  });
});

describe('the checked way in', () => {
  const good = { temperatureC: 21, relativeHumidity: 0.62, pressurePa: 100_500 };

  test('the ends of each range are accepted', () => {
    expect(airState({ ...good, temperatureC: -100 }).temperatureC).toBe(-100);
    expect(airState({ ...good, temperatureC: 200, relativeHumidity: 0.01 }).temperatureC).toBe(200);
    expect(airState({ ...good, relativeHumidity: 0 }).dewPointC).toBeNaN();
    expect(airState({ ...good, relativeHumidity: 1 }).relativeHumidity).toBe(1);
    expect(airState({ ...good, pressurePa: 30_000 }).pressurePa).toBe(30_000);
    expect(airState({ ...good, pressurePa: 120_000 }).pressurePa).toBe(120_000);
  });

  test.each([
    [{ temperatureC: -100.1 }, 'out-of-range: air temperature in °C must be from -100 to 200; got -100.1'],
    [{ temperatureC: 200.1 }, 'out-of-range: air temperature in °C must be from -100 to 200; got 200.1'],
    [
      { relativeHumidity: -0.01 },
      'out-of-range: relative humidity as a fraction must be from 0 to 1; got -0.01',
    ],
    [{ relativeHumidity: 62 }, 'out-of-range: relative humidity as a fraction must be from 0 to 1; got 62'],
    [{ pressurePa: 29_999 }, 'out-of-range: pressure in Pa must be from 30000 to 120000; got 29999'],
    [{ pressurePa: 120_001 }, 'out-of-range: pressure in Pa must be from 30000 to 120000; got 120001'],
    [{ pressurePa: Number.NaN }, 'not-finite: pressure in Pa must be a number; got NaN'],
  ])('%o is refused', (change, expected) => {
    expect(codeAndMessage(() => airState({ ...good, ...change }))).toBe(expected);
  });

  test('air that could only be steam is refused', () => {
    expect(codeAndMessage(() => airState({ ...good, temperatureC: 120, relativeHumidity: 0.9 }))).toMatch(
      /^out-of-range: air of 120 °C and relative humidity 0.9 would have a vapor pressure of \d+ Pa/,
    );
  });

  test('altitude', () => {
    expect(pressureAtAltitudePa(0)).toBe(101_325);
    expect(pressureAtAltitudePa(-5000)).toBeGreaterThan(pressureAtAltitudePa(-4999));
    expect(pressureAtAltitudePa(11_000)).toBeLessThan(23_000);
    expect(codeAndMessage(() => pressureAtAltitudePa(11_001))).toContain(
      'altitude in m must be from -5000 to 11000',
    );
    expect(codeAndMessage(() => pressureAtAltitudePa(-5001))).toContain('out-of-range');
  });
});
