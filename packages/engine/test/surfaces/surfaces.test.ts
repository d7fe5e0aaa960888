import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  LEAST_DIFFERENCE_K,
  minimumSurfaceTemperatureC,
  minimumTemperatureFactor,
  surfaceCondition,
  temperatureFactor,
} from '../../src/surfaces/index.ts';

describe('condensation', () => {
  const air = { temperatureC: 24, relativeHumidity: 0.7 };
  const { dewPointC } = surfaceCondition({ ...air, surfaceTemperatureC: 20 });

  test('at, just below and just above the dew point', () => {
    expect(surfaceCondition({ ...air, surfaceTemperatureC: dewPointC }).condensing).toBe(true);
    expect(surfaceCondition({ ...air, surfaceTemperatureC: dewPointC - 0.001 }).condensing).toBe(true);
    expect(surfaceCondition({ ...air, surfaceTemperatureC: dewPointC + 0.001 }).condensing).toBe(false);
  });

  test('air without vapor condenses nowhere', () => {
    const dry = surfaceCondition({ temperatureC: 24, relativeHumidity: 0, surfaceTemperatureC: -40 });
    expect(dry).toMatchObject({ surfaceRelativeHumidity: 0, condensing: false });
    expect(dry.dewPointC).toBeNaN();
    expect(minimumSurfaceTemperatureC(0, 0.8)).toBeNaN();
  });

  test('a surface at air temperature has the humidity of the air', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -30, max: 50, noNaN: true }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (temperatureC, relativeHumidity) => {
          const condition = surfaceCondition({
            temperatureC,
            relativeHumidity,
            surfaceTemperatureC: temperatureC,
          });
          expect(condition.surfaceRelativeHumidity).toBeCloseTo(relativeHumidity, 12);
        },
      ),
    );
  });

  test('bad readings are refused by name', () => {
    expect(() => surfaceCondition({ ...air, relativeHumidity: 70, surfaceTemperatureC: 15 })).toThrow(
      'relative humidity as a fraction must be from 0 to 1; got 70',
    );
    expect(() => surfaceCondition({ ...air, surfaceTemperatureC: Number.NaN })).toThrow(
      'surface temperature in °C must be a number; got NaN',
    );
    expect(() => surfaceCondition({ ...air, temperatureC: 201, surfaceTemperatureC: 15 })).toThrow(
      'air temperature in °C must be from -100 to 200; got 201',
    );
  });
});

describe('temperature factor', () => {
  const codes = (figure: { notices: readonly { code: string }[] }) =>
    figure.notices.map((notice) => notice.code);

  test('is the share of the way from outside to inside', () => {
    const figure = temperatureFactor({
      surfaceTemperatureC: 14,
      insideTemperatureC: 20,
      outsideTemperatureC: -4,
    });
    expect(figure.value).toBeCloseTo(0.75, 12);
    expect(figure.notices).toEqual([]);
    const inCooledSpace = temperatureFactor({
      surfaceTemperatureC: 25,
      insideTemperatureC: 22,
      outsideTemperatureC: 34,
    });
    expect(inCooledSpace.value).toBeCloseTo(0.75, 12);
  });

  test('has no value when inside and outside are less than 2 K apart', () => {
    const at = (difference: number) =>
      temperatureFactor({
        surfaceTemperatureC: 18,
        insideTemperatureC: 18 + difference,
        outsideTemperatureC: 18,
      });
    expect(LEAST_DIFFERENCE_K).toBe(2);
    expect(at(2).value).toBe(0);
    expect(at(-2).value).toBeCloseTo(0, 12);
    expect(at(1.999)).toMatchObject({ value: null });
    expect(codes(at(1.999))).toEqual(['temperatures-too-close']);
    expect(codes(at(-1.999))).toEqual(['temperatures-too-close']);
    const least = minimumTemperatureFactor(
      { insideTemperatureC: 18, relativeHumidity: 0.6, outsideTemperatureC: 17 },
      0.8,
    );
    expect(least.value).toBeNull();
    expect(least.notices[0]?.message).toBe(
      'Inside (18 °C) and outside (17 °C) are less than 2 K apart: a temperature factor would mean nothing.',
    );
  });

  test('says when the surface is not between inside and outside', () => {
    const at = (surfaceTemperatureC: number) =>
      temperatureFactor({ surfaceTemperatureC, insideTemperatureC: 20, outsideTemperatureC: 10 });
    expect(codes(at(10))).toEqual([]);
    expect(codes(at(9.9))).toEqual(['outside-range']);
    expect(codes(at(20))).toEqual([]);
    expect(codes(at(20.1))).toEqual(['outside-range']);
  });

  test('says when no factor or every factor will do', () => {
    const least = (relativeHumidity: number, outsideTemperatureC: number) =>
      minimumTemperatureFactor({ insideTemperatureC: 21, relativeHumidity, outsideTemperatureC }, 0.8);
    expect(codes(least(0.79, 3))).toEqual([]);
    expect(codes(least(0.81, 3))).toEqual(['air-too-humid']);
    expect(least(0.81, 3).value).toBeGreaterThan(1);
    expect(codes(least(0.3, 12))).toEqual(['always-below-limit']);
    expect(least(0.3, 12).value).toBeLessThan(0);
    expect(codes(least(0.6, 30))).toEqual(['outside-warmer']);
    expect(least(0, 3)).toMatchObject({ value: null, notices: [{ code: 'no-limit' }] });
  });

  test('bad readings are refused by name', () => {
    expect(() =>
      minimumTemperatureFactor({ insideTemperatureC: 21, relativeHumidity: 0.6, outsideTemperatureC: 3 }, 0),
    ).toThrow('surface humidity limit as a fraction must be from 0.01 to 1; got 0');
    expect(() =>
      temperatureFactor({ surfaceTemperatureC: 250, insideTemperatureC: 21, outsideTemperatureC: 3 }),
    ).toThrow('surface temperature in °C must be from -100 to 200; got 250');
  });
});
