import { describe, expect, test } from 'vitest';
import { equilibriumMoistureContent, equilibriumRelativeHumidity } from '../../src/wood/equilibrium.ts';

/** [temperature, RH %, equation % MC or null, Table 4-2 % MC or null] */
type Row = readonly [number, number, number | null, number | null];

/** Equation evaluated apart from this code; table values as printed, seen in quotation. */
const CELSIUS: readonly Row[] = [
  [21.1, 5, 1.298, 1.3],
  [21.1, 30, 6.17, 6.2],
  [21.1, 50, 9.243, 9.2],
  [21.1, 75, 14.406, 14.4],
  [21.1, 85, 17.952, 17.9],
  [21.1, 95, 23.892, 23.9],
  [-1.1, 75, 14.914, 14.9],
  [-1.1, 95, 24.332, 24.3],
  [37.8, 50, 8.677, 8.7],
  [37.8, 90, 19.476, 19.5],
  [20, 50, 9.27, null],
  [20, 65, 12.0, null],
  [20, 75, 14.45, null],
  [20, 80, 16.04, null],
  [20, 85, 18.0, null],
  [20, 90, 20.53, null],
  [10, 60, 11.24, null],
  [10, 70, 13.43, null],
  [10, 80, 16.38, null],
  [10, 90, 20.89, null],
];

/** Equation by the °F coefficients; table values recalled from memory. */
const FAHRENHEIT: readonly Row[] = [
  [40, 50, 9.52, 9.5],
  [40, 80, 16.5, 16.5],
  [50, 70, 13.43, 13.4],
  [50, 90, 20.9, 20.9],
  [60, 65, 12.14, 12.1],
  [60, 90, 20.73, 20.7],
  [80, 60, 10.78, 10.8],
  [80, 80, 15.73, 15.7],
  [90, 75, 13.89, 13.9],
  [90, 85, 17.36, 17.3],
];

/** Rounding of the last printed digit of the equation rows. */
const EQUATION_TOLERANCE = 0.005;
/** The table prints one decimal (0.05) and was itself calculated, in °F; two entries are rounded the other way. */
const TABLE_TOLERANCE = 0.06;
/** The °C and °F coefficient sets round differently: at most 0.013 % MC apart over 30..130 °F, 5..95 % RH. */
const SETS_TOLERANCE = 0.013;

/** The Handbook's own °F coefficients, as an independent check on the °C set in the source. */
function percentByFahrenheit(t: number, h: number): number {
  const w = 330 + 0.452 * t + 0.00415 * t ** 2;
  const k = 0.791 + 0.000463 * t - 0.000000844 * t ** 2;
  const k1 = 6.34 + 0.000775 * t - 0.0000935 * t ** 2;
  const k2 = 1.09 + 0.0284 * t - 0.0000904 * t ** 2;
  const y = k * h;
  return (1800 / w) * (y / (1 - y) + (k1 * y + 2 * k1 * k2 * y * y) / (1 + k1 * y + k1 * k2 * y * y));
}

const celsius = (f: number) => (f - 32) / 1.8;

describe('equilibrium moisture content, Wood Handbook FPL-GTR-282 (2021) eq. 4-5 and Table 4-2', () => {
  test.each(CELSIUS)('%d °C, %d percent RH', (t, rh, equation, table) => {
    const mc = 100 * equilibriumMoistureContent(t, rh / 100);
    if (equation !== null) expect(Math.abs(mc - equation)).toBeLessThanOrEqual(EQUATION_TOLERANCE);
    if (table !== null) expect(Math.abs(mc - table)).toBeLessThanOrEqual(TABLE_TOLERANCE);
  });

  test.each(FAHRENHEIT)('%d °F, %d percent RH', (f, rh, equation, table) => {
    const mc = 100 * equilibriumMoistureContent(celsius(f), rh / 100);
    expect(Math.abs(percentByFahrenheit(f, rh / 100) - equation!)).toBeLessThanOrEqual(EQUATION_TOLERANCE);
    expect(Math.abs(mc - equation!)).toBeLessThanOrEqual(EQUATION_TOLERANCE + SETS_TOLERANCE);
    expect(Math.abs(mc - table!)).toBeLessThanOrEqual(TABLE_TOLERANCE + SETS_TOLERANCE);
  });

  test('the °C set stays with the °F set over 30..130 °F and 5..95 % RH', () => {
    let worst = 0;
    for (let f = 30; f <= 130; f += 2.5) {
      for (let rh = 5; rh <= 95; rh += 2.5) {
        const gap = 100 * equilibriumMoistureContent(celsius(f), rh / 100) - percentByFahrenheit(f, rh / 100);
        worst = Math.max(worst, Math.abs(gap));
      }
    }
    expect(worst).toBeLessThanOrEqual(SETS_TOLERANCE);
  });

  test('saturated air at 20 °C gives 28.84 % MC', () => {
    expect(Math.abs(100 * equilibriumMoistureContent(20, 1) - 28.84)).toBeLessThanOrEqual(EQUATION_TOLERANCE);
  });
});

/** Bisection of the same equation by a second program; the 20 °C row also stands in a public fact sheet. */
const INVERSE_MC = [8, 10, 12, 14, 15, 16, 17, 18, 19, 20, 22, 24, 28] as const;
const INVERSE: readonly (readonly [number, readonly number[]])[] = [
  [5, [40.6, 52.9, 63.4, 71.9, 75.4, 78.6, 81.4, 83.9, 86.2, 88.2, 91.7, 94.6, 99.0]],
  [10, [40.8, 53.2, 63.8, 72.2, 75.8, 78.9, 81.7, 84.2, 86.4, 88.4, 91.8, 94.7, 99.1]],
  [20, [41.8, 54.4, 65.0, 73.4, 76.8, 79.9, 82.6, 85.0, 87.1, 89.1, 92.4, 95.1, 99.3]],
  [25, [42.6, 55.3, 65.9, 74.2, 77.6, 80.5, 83.2, 85.5, 87.6, 89.5, 92.7, 95.4, 99.5]],
];

describe('equilibrium relative humidity, inverse of eq. 4-5', () => {
  /** One unit in the last printed digit. */
  const tolerance = 0.1;
  for (const [t, row] of INVERSE) {
    test.each(row.map((rh, i) => [INVERSE_MC[i]!, rh] as const))(
      `${t} °C, %d percent MC gives %d percent RH`,
      (mc, rh) => {
        expect(row).toHaveLength(INVERSE_MC.length);
        const got = 100 * equilibriumRelativeHumidity(t, mc / 100);
        expect(Math.abs(got - rh)).toBeLessThanOrEqual(tolerance);
      },
    );
  }
});
