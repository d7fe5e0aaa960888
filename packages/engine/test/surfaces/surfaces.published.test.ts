import { describe, expect, test } from 'vitest';
import { psychrometrics } from '../../src/index.ts';
import {
  MOLD_SURFACE_HUMIDITY,
  minimumSurfaceTemperatureC,
  minimumTemperatureFactor,
  surfaceCondition,
} from '../../src/surfaces/index.ts';

/** Computed outside this project with the ASHRAE saturation equations; tolerances 0.01 K and 0.1 % RH as given there. */
describe('air against a cold surface', () => {
  test.each([
    { t: 27, rh: 75, ts: 20, td: 22.19, gap: -2.19, rhs: 114.4, tsMin: 25.905, condensing: true },
    { t: 27, rh: 75, ts: 22.2, td: 22.19, gap: 0.01, rhs: 99.9, tsMin: 25.905, condensing: false },
    { t: 30, rh: 60, ts: 18, td: 21.388, gap: -3.388, rhs: 123.4, tsMin: 25.081, condensing: true },
    { t: 20, rh: 70, ts: 10, td: 14.367, gap: -4.367, rhs: 133.3, tsMin: 17.862, condensing: true },
    { t: 24, rh: 65, ts: 19, td: 17.019, gap: 1.981, rhs: 88.3, tsMin: 20.588, condensing: false },
    { t: 18, rh: 75, ts: 15, td: 13.507, gap: 1.493, rhs: 90.8, tsMin: 16.978, condensing: false },
  ])('$t °C, $rh % at $ts °C', ({ t, rh, ts, td, gap, rhs, tsMin, condensing }) => {
    const condition = surfaceCondition({
      temperatureC: t,
      relativeHumidity: rh / 100,
      surfaceTemperatureC: ts,
    });
    expect(Math.abs(condition.dewPointC - td)).toBeLessThan(0.01);
    expect(Math.abs(condition.marginK - gap)).toBeLessThan(0.01);
    expect(Math.abs(condition.surfaceRelativeHumidity * 100 - rhs)).toBeLessThan(0.1);
    expect(condition.condensing).toBe(condensing);
    const pv = (rh / 100) * psychrometrics.saturationPressurePa(t);
    expect(Math.abs(minimumSurfaceTemperatureC(pv, MOLD_SURFACE_HUMIDITY) - tsMin)).toBeLessThan(0.01);
  });
});

/** Computed outside this project by the ISO 13788 definition; tolerance 0.001 as given there. */
describe('least temperature factor', () => {
  test.each([
    { ti: 20, rh: 50, te: 0, mold: 0.6314, dew: 0.4636 },
    { ti: 20, rh: 60, te: 0, mold: 0.7719, dew: 0.6004 },
    { ti: 20, rh: 60, te: -5, mold: 0.8175, dew: 0.6803 },
    { ti: 22, rh: 55, te: 5, mold: 0.647, dew: 0.4443 },
  ])('$ti °C, $rh %, outside $te °C', ({ ti, rh, te, mold, dew }) => {
    const readings = { insideTemperatureC: ti, relativeHumidity: rh / 100, outsideTemperatureC: te };
    const againstMold = minimumTemperatureFactor(readings, 0.8);
    const againstWater = minimumTemperatureFactor(readings, 1);
    expect(Math.abs(againstMold.value! - mold)).toBeLessThan(0.001);
    expect(Math.abs(againstWater.value! - dew)).toBeLessThan(0.001);
    expect([...againstMold.notices, ...againstWater.notices]).toEqual([]);
  });
});
