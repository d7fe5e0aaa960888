import { describe, expect, test } from 'vitest';
import { EngineError } from '../../src/numerics/engine-error.ts';
import { equilibriumMoistureContent } from '../../src/wood/equilibrium.ts';
import { woodEquilibrium, woodHumidity } from '../../src/wood/wood-in-air.ts';

const codes = (figure: { notices: readonly { code: string }[] }) => figure.notices.map((n) => n.code);

describe('woodEquilibrium', () => {
  test.each([
    [-1.1, 0.6],
    [132.2, 0.6],
    [14, 0.05],
    [14, 0.95],
  ])('no notice at the limit: %d °C, RH %d', (temperatureC, relativeHumidity) => {
    const figure = woodEquilibrium({ temperatureC, relativeHumidity });
    expect(figure.value).toBe(equilibriumMoistureContent(temperatureC, relativeHumidity));
    expect(codes(figure)).toEqual([]);
  });

  test.each([
    [-1.11, 0.6],
    [14, 0.0499],
  ])('extrapolation is said just outside: %d °C, RH %d', (temperatureC, relativeHumidity) => {
    const figure = woodEquilibrium({ temperatureC, relativeHumidity });
    expect(figure.value).toBe(equilibriumMoistureContent(temperatureC, relativeHumidity));
    expect(codes(figure)).toEqual(['outside-range']);
  });

  test('no number above 95 % RH', () => {
    const figure = woodEquilibrium({ temperatureC: 12, relativeHumidity: 0.9501 });
    expect(figure.value).toBeNull();
    expect(codes(figure)).toEqual(['near-fiber-saturation']);
  });

  test('percent given for a fraction is refused by name', () => {
    expect(() => woodEquilibrium({ temperatureC: 12, relativeHumidity: 65 })).toThrow(
      new EngineError('out-of-range', 'relative humidity (fraction) must be from 0 to 1; got 65'),
    );
    expect(() => woodEquilibrium({ temperatureC: Number.NaN, relativeHumidity: 0.4 })).toThrow(EngineError);
    expect(() => woodEquilibrium({ temperatureC: 132.21, relativeHumidity: 0.4 })).toThrow(EngineError);
    expect(() => woodEquilibrium({ temperatureC: -36, relativeHumidity: 0.4 })).toThrow(EngineError);
  });
});

describe('woodHumidity', () => {
  test('always says how good the answer is', () => {
    const figure = woodHumidity({ temperatureC: 20, moistureContent: 0.18 });
    expect(codes(figure)).toEqual(['hysteresis']);
    expect(figure.notices[0]!.message).toContain('5 % RH');
  });

  test.each([
    [20, 0.237, ['hysteresis']],
    [20, 0.24, ['hysteresis', 'near-fiber-saturation']],
    [20, 0.29, ['hysteresis', 'at-saturation']],
    [20, 0.005, ['hysteresis', 'outside-range']],
    [-4, 0.14, ['outside-range', 'hysteresis']],
  ])('%d °C and MC %d', (temperatureC, moistureContent, expected) => {
    expect(codes(woodHumidity({ temperatureC, moistureContent }))).toEqual(expected);
  });

  test('wet wood reads as saturated air', () => {
    expect(woodHumidity({ temperatureC: 9, moistureContent: 0.6 }).value).toBe(1);
  });

  test('percent given for a fraction is refused', () => {
    expect(() => woodHumidity({ temperatureC: 9, moistureContent: 18 })).toThrow(/0\.18 for 18 %/);
    expect(() => woodHumidity({ temperatureC: 9, moistureContent: -0.01 })).toThrow(EngineError);
  });
});
