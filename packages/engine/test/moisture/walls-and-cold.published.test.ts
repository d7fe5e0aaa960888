import { describe, expect, it } from 'vitest';
import { condensationKgPerM2S } from '../../src/moisture/condensation.ts';
import { saturationVaporDensityKgPerM3 } from '../../src/moisture/vapor-density.ts';
import { risingDampHeightM, risingDampKgPerMS } from '../../src/moisture/wall.ts';
import { dewPointC } from '../../src/psychrometrics/dew-point.ts';
import { saturationHumidityRatio } from '../../src/psychrometrics/humidity-ratio.ts';
import { saturationPressurePa } from '../../src/psychrometrics/saturation-pressure.ts';

const perRootMinute = (mm: number) => mm / 1000 / Math.sqrt(60);
const perMinute = (mm: number) => mm / 1000 / 60;

describe('rising damp (Hall and Hoff 2007 sharp front, from memory; examples computed separately)', () => {
  const wall = { thicknessM: 0.15, sorptivityMPerRootS: perRootMinute(1), wetPorosity: 0.2 };
  // Half of the last printed digit.
  it('drying air, 0.001 mm/min: 0.61 m and 0.88 L per m and day', () => {
    expect(Math.abs(risingDampHeightM(wall, perMinute(0.001)) - 0.61)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(86_400 * risingDampKgPerMS(wall, 3, perMinute(0.001)) - 0.88)).toBeLessThanOrEqual(0.005);
  });

  it('still damp air, 0.0001 mm/min: 1.9 m and 0.28 L per m and day', () => {
    expect(Math.abs(risingDampHeightM(wall, perMinute(0.0001)) - 1.9)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(86_400 * risingDampKgPerMS(wall, 3, perMinute(0.0001)) - 0.28)).toBeLessThanOrEqual(
      0.005,
    );
  });

  it('a low face is wet to its top and gives evaporation times its height', () => {
    // 1.9 m would rise; 0.8 m are there: 1e-4 mm/min · 1440 min · 0.8 m = 0.1152 kg per m and day.
    expect(86_400 * risingDampKgPerMS(wall, 0.8, perMinute(0.0001))).toBeCloseTo(0.1152, 10);
  });

  it('gives nothing to air that does not dry it', () => {
    expect(risingDampKgPerMS(wall, 0.8, 0)).toBe(0);
    expect(risingDampKgPerMS(wall, 0.8, -1e-9)).toBe(0);
    expect(risingDampKgPerMS(wall, 0.8, Number.NaN)).toBeNaN();
  });
});

describe('condensation (surface film, computed separately)', () => {
  it('a duct skin of 13 °C in air of dew point 21 °C takes 50 g/(m² h), 12 kg/day on 10 m²', () => {
    const flow = condensationKgPerM2S(13, saturationVaporDensityKgPerM3(21));
    // Printed with two digits: 50.3 counts as 50.
    expect(Math.abs(flow * 3.6e6 - 50)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(flow * 86_400 * 10 - 12)).toBeLessThanOrEqual(0.5);
  });

  it('nothing condenses on a surface at the dew point or above', () => {
    const air = saturationVaporDensityKgPerM3(16);
    expect(condensationKgPerM2S(16, air)).toBe(0);
    expect(condensationKgPerM2S(16.01, air)).toBe(0);
    expect(condensationKgPerM2S(15.99, air)).toBeGreaterThan(0);
  });

  // ASHRAE saturation formula; printed to 0.1 K.
  it.each([
    [65, 60, 10.4],
    [73, 60, 14.6],
    [75, 60, 15.7],
    [80, 60, 18.3],
    [90, 50, 20.5],
  ])('dew point of %d °F and %d %% is %d °C', (f, rh, dewPoint) => {
    const pv = (rh / 100) * saturationPressurePa((f - 32) / 1.8);
    expect(Math.abs(dewPointC(pv) - dewPoint)).toBeLessThanOrEqual(0.05);
  });

  it.each([
    [5, 5.4],
    [10, 7.63],
    [15, 10.65],
    [20, 14.7],
    [25, 20.08],
  ])('saturated air of %d °C holds %d g/kg', (t, g) => {
    expect(Math.abs(1000 * saturationHumidityRatio(t, 101_325) - g)).toBeLessThanOrEqual(0.005);
  });
});
