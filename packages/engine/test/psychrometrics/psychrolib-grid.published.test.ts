import psychrolib from 'psychrolib';
import { beforeAll, describe, expect, test } from 'vitest';
import { airState, humidityRatioFromWetBulb, saturationPressurePa } from '../../src/psychrometrics/index.ts';

/**
 * Dense grid against psychrolib 1.1.1 (library version 2.5.0, an independent coding of the 2017 Handbook).
 * Its conventions: humidity ratio never below 1e-7, so the grid starts above that; ice or water by 0.01 °C for pressure
 * and by 0 °C for the wet bulb, as here; its wet bulb and dew point searches stop at 0.001 K.
 */
const PRESSURES = [61_640, 83_523.5, 95_461, 101_325, 107_478];
const HUMIDITIES = [0.01, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95, 0.99, 1];

beforeAll(() => psychrolib.SetUnitSystem(psychrolib.SI));

function relativeGap(a: number, b: number): number {
  return Math.abs(a - b) / Math.abs(b);
}

describe('grid against psychrolib', () => {
  test('saturation pressure, -100 to 200 °C', () => {
    let worst = 0;
    for (let t = -100; t <= 200; t += 0.25) {
      worst = Math.max(worst, relativeGap(saturationPressurePa(t), psychrolib.GetSatVapPres(t)));
    }
    expect(worst).toBeLessThan(1e-12);
  });

  test('humidity ratio, dew point, enthalpy, volume, density: -40 to 70 °C', () => {
    const worst = { ratio: 0, pressure: 0, dew: 0, enthalpyKJ: 0, volume: 0, density: 0 };
    let compared = 0;
    for (const pressurePa of PRESSURES) {
      for (let t = -40; t <= 70; t += 1.25) {
        for (const relativeHumidity of HUMIDITIES) {
          const [W, , dew, pv, h, v] = psychrolib.CalcPsychrometricsFromRelHum(
            t,
            relativeHumidity,
            pressurePa,
          ) as [number, number, number, number, number, number];
          if (W <= 1e-6) continue;
          const ours = airState({ temperatureC: t, relativeHumidity, pressurePa });
          worst.ratio = Math.max(worst.ratio, relativeGap(ours.humidityRatio, W));
          worst.pressure = Math.max(worst.pressure, relativeGap(ours.vaporPressurePa, pv));
          worst.dew = Math.max(worst.dew, Math.abs(ours.dewPointC - dew));
          worst.enthalpyKJ = Math.max(worst.enthalpyKJ, Math.abs(ours.enthalpyKJPerKg - h / 1000));
          worst.volume = Math.max(worst.volume, relativeGap(ours.specificVolumeM3PerKg, v));
          const rho = psychrolib.GetMoistAirDensity(t, W, pressurePa);
          worst.density = Math.max(worst.density, relativeGap(ours.densityKgPerM3, rho));
          compared++;
        }
      }
    }
    expect(compared).toBeGreaterThan(7000);
    expect(worst.ratio).toBeLessThan(1e-12);
    expect(worst.pressure).toBeLessThan(1e-12);
    expect(worst.enthalpyKJ).toBeLessThan(1e-9);
    expect(worst.volume).toBeLessThan(1e-12);
    expect(worst.density).toBeLessThan(1e-12);
    // The library's dew point search ends when its step is below 0.001 K.
    expect(worst.dew).toBeLessThan(0.001);
  });

  test('wet bulb: -40 to 70 °C, outside the overlap of the ice and water equations', () => {
    let worst = 0;
    let compared = 0;
    let inOverlap = 0;
    for (const pressurePa of PRESSURES) {
      for (let t = -40; t <= 70; t += 1.25) {
        for (const relativeHumidity of HUMIDITIES) {
          const [W, wetBulb] = psychrolib.CalcPsychrometricsFromRelHum(t, relativeHumidity, pressurePa) as [
            number,
            number,
          ];
          if (W <= 1e-6) continue;
          const ours = airState({ temperatureC: t, relativeHumidity, pressurePa });
          const ratioWetAtZero = humidityRatioFromWetBulb(t, 0, pressurePa);
          const ratioIcedAtZero = humidityRatioFromWetBulb(t, -1e-9, pressurePa);
          if (t > 0 && W >= ratioWetAtZero && W <= ratioIcedAtZero) {
            // Two answers satisfy the equations; the wet wick is ours, and it must be one of the two.
            inOverlap++;
            expect(ours.wetBulbC).toBeGreaterThanOrEqual(0);
            expect(Math.abs(humidityRatioFromWetBulb(t, ours.wetBulbC, pressurePa) - W)).toBeLessThan(1e-9);
            continue;
          }
          worst = Math.max(worst, Math.abs(ours.wetBulbC - wetBulb));
          compared++;
        }
      }
    }
    expect(compared).toBeGreaterThan(7000);
    expect(inOverlap).toBeGreaterThan(0);
    expect(worst).toBeLessThan(0.001);
  });
});
