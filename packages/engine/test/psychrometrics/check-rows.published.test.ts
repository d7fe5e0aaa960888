import { describe, expect, test } from 'vitest';
import {
  absoluteHumidityGPerM3,
  airState,
  dewPointC,
  enthalpyKJPerKg,
  humidityRatioFromWetBulb,
  pressureAtAltitudePa,
  relativeHumidityFromHumidityRatio,
  saturationHumidityRatio,
  saturationPressurePa,
  specificVolumeM3PerKg,
  vaporPressureFromHumidityRatioPa,
} from '../../src/psychrometrics/index.ts';

const within = (relative: number, expected: number) => Math.abs(expected) * relative;

function expectNear(actual: number, expected: number, tolerance: number): void {
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(tolerance);
}

/**
 * Computed rows: psychrolib 1.1.1 and a separate program agree on every digit shown (wet bulb on 0.0005 K).
 * Tolerances: 0.01 % for equations that are the same, 0.001 K dew point, 0.005 K wet bulb for the solvers' own limits.
 */
const states = [
  {
    t: -20,
    rh: 100,
    p: 101325,
    pv: 103.26,
    wGPerKg: 0.6345,
    dew: -20,
    wet: -20,
    h: -18.557,
    v: 0.71788,
    rho: 1.39388,
  },
  {
    t: -10,
    rh: 80,
    p: 101325,
    pv: 207.92,
    wGPerKg: 1.2789,
    dew: -12.49,
    wet: -10.648,
    h: -6.885,
    v: 0.74701,
    rho: 1.34039,
  },
  {
    t: 0,
    rh: 100,
    p: 101325,
    pv: 611.15,
    wGPerKg: 3.7741,
    dew: 0,
    wet: 0,
    h: 9.439,
    v: 0.7785,
    rho: 1.28937,
  },
  {
    t: 5,
    rh: 90,
    p: 101325,
    pv: 785.24,
    wGPerKg: 4.8575,
    dew: 3.499,
    wet: 4.302,
    h: 17.224,
    v: 0.79412,
    rho: 1.26537,
  },
  {
    t: 10,
    rh: 80,
    p: 101325,
    pv: 982.4,
    wGPerKg: 6.0891,
    dew: 6.713,
    wet: 8.29,
    h: 25.402,
    v: 0.80998,
    rho: 1.24211,
  },
  {
    t: 15,
    rh: 70,
    p: 101325,
    pv: 1193.81,
    wGPerKg: 7.4151,
    dew: 9.579,
    wet: 11.921,
    h: 33.842,
    v: 0.82603,
    rho: 1.21959,
  },
  {
    t: 20,
    rh: 50,
    p: 101325,
    pv: 1169.4,
    wGPerKg: 7.2617,
    dew: 9.272,
    wet: 13.783,
    h: 38.552,
    v: 0.84016,
    rho: 1.1989,
  },
  {
    t: 20,
    rh: 80,
    p: 101325,
    pv: 1871.04,
    wGPerKg: 11.7007,
    dew: 16.447,
    wet: 17.679,
    h: 49.819,
    v: 0.84608,
    rho: 1.19575,
  },
  {
    t: 21.111,
    rh: 60,
    p: 101325,
    pv: 1502.82,
    wGPerKg: 9.3634,
    dew: 13.051,
    wet: 16.105,
    h: 45.023,
    v: 0.84616,
    rho: 1.19288,
  },
  {
    t: 25,
    rh: 60,
    p: 101325,
    pv: 1901.53,
    wGPerKg: 11.895,
    dew: 16.701,
    wet: 19.471,
    h: 55.453,
    v: 0.86078,
    rho: 1.17556,
  },
  {
    t: 30,
    rh: 70,
    p: 101325,
    pv: 2972.22,
    wGPerKg: 18.7952,
    dew: 23.928,
    wet: 25.503,
    h: 78.236,
    v: 0.88474,
    rho: 1.15152,
  },
  {
    t: 32,
    rh: 55,
    p: 101325,
    pv: 2617.19,
    wGPerKg: 16.4906,
    dew: 21.828,
    wet: 24.623,
    h: 74.417,
    v: 0.88738,
    rho: 1.1455,
  },
  {
    t: 35,
    rh: 40,
    p: 101325,
    pv: 2251.13,
    wGPerKg: 14.1317,
    dew: 19.385,
    wet: 23.934,
    h: 71.473,
    v: 0.89279,
    rho: 1.13592,
  },
  {
    t: 25,
    rh: 60,
    p: 95461,
    pv: 1901.53,
    wGPerKg: 12.6406,
    dew: 16.701,
    wet: 19.366,
    h: 57.352,
    v: 0.91473,
    rho: 1.10704,
  },
  {
    t: 20,
    rh: 50,
    p: 83523.5,
    pv: 1169.4,
    wGPerKg: 8.8314,
    dew: 9.272,
    wet: 13.316,
    h: 42.536,
    v: 1.02176,
    rho: 0.98734,
  },
];

describe('moist air states', () => {
  test.each(states)('$t °C, $rh %, $p Pa', (row) => {
    const state = airState({ temperatureC: row.t, relativeHumidity: row.rh / 100, pressurePa: row.p });
    expectNear(state.vaporPressurePa, row.pv, within(1e-4, row.pv));
    expectNear(state.humidityRatio * 1000, row.wGPerKg, within(1e-4, row.wGPerKg));
    expectNear(state.dewPointC, row.dew, 0.001);
    expectNear(state.wetBulbC, row.wet, 0.005);
    expectNear(state.enthalpyKJPerKg, row.h, within(1e-4, row.h));
    expectNear(state.specificVolumeM3PerKg, row.v, within(1e-4, row.v));
    expectNear(state.densityKgPerM3, row.rho, within(1e-4, row.rho));
  });

  // Computed with the same equations outside this project.
  test.each([
    { t: 10, rh: 0.8, expected: 7.518 },
    { t: 20, rh: 0.5, expected: 8.643 },
    { t: 25, rh: 0.6, expected: 13.819 },
  ])('absolute humidity at $t °C', ({ t, rh, expected }) => {
    const state = airState({ temperatureC: t, relativeHumidity: rh, pressurePa: 101_325 });
    expectNear(state.absoluteHumidityGPerM3, expected, within(1e-4, expected));
    expect(absoluteHumidityGPerM3(t, state.humidityRatio, 101_325)).toBe(state.absoluteHumidityGPerM3);
  });
});

/**
 * ASHRAE Handbook - Fundamentals 2017 ch. 1 Tables 2 and 3 as quoted in the psychrolib 2.5.0 test suite; rows marked
 * real-gas were computed with a humid-air property library that reproduces the printed rows. The ideal-gas equations
 * leave out the enhancement factor, hence tolerances of 0.03 % (pressure), 0.5 or 1 % (humidity ratio), 1 or 3 %
 * (enthalpy), as in that suite.
 */
describe('saturated moist air tables', () => {
  const pressures = [
    { t: -20, expected: 103.24 },
    { t: -5, expected: 401.74 },
    { t: 5, expected: 872.6 },
    { t: 25, expected: 3169.7 },
    { t: 50, expected: 12351.3 },
  ];
  test.each(pressures)('saturation pressure at $t °C', ({ t, expected }) => {
    expectNear(saturationPressurePa(t), expected, within(3e-4, expected));
  });

  // The column of formula values printed beside the table: computed outside this project with the same equations.
  test.each([
    { t: -20, expected: 103.26 },
    { t: -5, expected: 401.76 },
    { t: 5, expected: 872.49 },
    { t: 10, expected: 1228.0 },
    { t: 15, expected: 1705.45 },
    { t: 20, expected: 2338.8 },
    { t: 25, expected: 3169.22 },
    { t: 30, expected: 4246.03 },
    { t: 50, expected: 12349.86 },
  ])('saturation pressure equation at $t °C', ({ t, expected }) => {
    expectNear(saturationPressurePa(t), expected, 0.0051);
  });

  test.each([
    { t: -20, ws: 0.0006373, wsTolerance: 0.01, h: -18.542, hTolerance: 0.01, from: 'table' },
    { t: -5, ws: 0.0024863, wsTolerance: 0.005, h: 1.164, hTolerance: 0.03, from: 'table' },
    { t: 5, ws: 0.005425, wsTolerance: 0.005, h: 18.639, hTolerance: 0.01, from: 'table' },
    { t: 10, ws: 0.0076626, wsTolerance: 0.005, h: 29.355, hTolerance: 0.01, from: 'real-gas' },
    { t: 15, ws: 0.0106938, wsTolerance: 0.005, h: 42.115, hTolerance: 0.01, from: 'real-gas' },
    { t: 20, ws: 0.0147605, wsTolerance: 0.005, h: 57.559, hTolerance: 0.01, from: 'real-gas' },
    { t: 25, ws: 0.020173, wsTolerance: 0.005, h: 76.504, hTolerance: 0.01, from: 'table' },
    { t: 30, ws: 0.0273329, wsTolerance: 0.005, h: 100.01, hTolerance: 0.01, from: 'real-gas' },
    { t: 50, ws: 0.086863, wsTolerance: 0.01, h: 275.353, hTolerance: 0.01, from: 'table' },
  ])('humidity ratio and enthalpy at $t °C ($from)', ({ t, ws, wsTolerance, h, hTolerance }) => {
    const Ws = saturationHumidityRatio(t, 101_325);
    expectNear(Ws, ws, within(wsTolerance, ws));
    expectNear(enthalpyKJPerKg(t, Ws), h, within(hTolerance, h));
  });
});

describe('pressure of the standard atmosphere', () => {
  // Handbook Table 1 as quoted in the psychrolib 2.5.0 test suite (to 1 Pa); 300, 1600 and 2000 m computed.
  test.each([
    { altitudeM: -500, expected: 107_478, tolerance: 1 },
    { altitudeM: 500, expected: 95_461, tolerance: 1 },
    { altitudeM: 1000, expected: 89_875, tolerance: 1 },
    { altitudeM: 4000, expected: 61_640, tolerance: 1 },
    { altitudeM: 300, expected: 97_772.6, tolerance: 0.5 },
    { altitudeM: 1600, expected: 83_523.5, tolerance: 0.5 },
    { altitudeM: 2000, expected: 79_495.1, tolerance: 0.5 },
  ])('$altitudeM m', ({ altitudeM, expected, tolerance }) => {
    expectNear(pressureAtAltitudePa(altitudeM), expected, tolerance);
  });
});

describe('worked examples', () => {
  // Handbook ch. 1 Example 1, read off a chart there, quoted in the psychrolib 2.5.0 test suite with these tolerances.
  test('dry bulb 40 °C, wet bulb 20 °C at sea level', () => {
    const W = humidityRatioFromWetBulb(40, 20, 101_325);
    expectNear(W * 1000, 6.5, 0.1);
    expectNear(relativeHumidityFromHumidityRatio(40, W, 101_325) * 100, 14, 1);
    expectNear(dewPointC(vaporPressureFromHumidityRatioPa(W, 101_325)), 7, 0.5);
    expectNear(enthalpyKJPerKg(40, W), 56.7, 0.1);
    const volume = specificVolumeM3PerKg(40, W, 101_325);
    expectNear(volume, 0.896, within(0.01, 0.896));

    // The same equations evaluated outside this project.
    expectNear(W * 1000, 6.4008, 5.1e-5);
    expectNear(relativeHumidityFromHumidityRatio(40, W, 101_325) * 100, 13.98, 0.0051);
    expectNear(dewPointC(vaporPressureFromHumidityRatioPa(W, 101_325)), 7.434, 0.001);
    expectNear(enthalpyKJPerKg(40, W), 56.725, 5.1e-4);
    expectNear(volume, 0.89625, 5.1e-6);
  });

  // psychrolib 2.5.0 test suite, tolerance 0.03 % there; last column the same equations evaluated outside this project.
  test.each([
    { t: 30, wet: 25, expected: 0.0192281, formula: 0.0192248 },
    { t: -1, wet: -5, expected: 0.001204, formula: 0.00120416 },
  ])('humidity ratio from $t °C dry and $wet °C wet bulb at 95461 Pa', ({ t, wet, expected, formula }) => {
    const W = humidityRatioFromWetBulb(t, wet, 95_461);
    expectNear(W, expected, within(3e-4, expected));
    expectNear(W, formula, within(1e-5, formula));
  });
});
