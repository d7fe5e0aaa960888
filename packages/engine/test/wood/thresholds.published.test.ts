import { describe, expect, test } from 'vitest';
import { equilibriumMoistureContent, equilibriumRelativeHumidity } from '../../src/wood/equilibrium.ts';

/**
 * Relative humidity that goes with the thresholds for wood in service, at 10 and at 20 °C, in whole percent: worked out
 * from Wood Handbook FPL-GTR-282 (2021) eq. 4-5 by a second program.
 */
const EQUIVALENT: readonly (readonly [number, number, number])[] = [
  [15, 76, 77],
  [16, 79, 80],
  [19, 86, 87],
  [20, 88, 89],
  [28, 99, 99],
];
/** Half of the last printed digit. */
const HALF = 0.5;

describe('thresholds and the humidity behind them', () => {
  test.each(EQUIVALENT)('%d percent MC', (mc, atTen, atTwenty) => {
    expect(Math.abs(100 * equilibriumRelativeHumidity(10, mc / 100) - atTen)).toBeLessThanOrEqual(HALF);
    expect(Math.abs(100 * equilibriumRelativeHumidity(20, mc / 100) - atTwenty)).toBeLessThanOrEqual(HALF);
  });

  test('18 ± 2 % MC spans 79 to 89 % RH over 10 to 20 °C', () => {
    expect(Math.abs(100 * equilibriumRelativeHumidity(10, 0.16) - 79)).toBeLessThanOrEqual(HALF);
    expect(Math.abs(100 * equilibriumRelativeHumidity(20, 0.2) - 89)).toBeLessThanOrEqual(HALF);
  });

  test('at 20 °C, 75 % RH is about 15 % MC and 80 % RH is 16 % (Swedish Wood, quoted)', () => {
    // "About": the source rounds to whole percent and speaks of softwood in general.
    expect(Math.abs(100 * equilibriumMoistureContent(20, 0.75) - 15)).toBeLessThanOrEqual(1);
    expect(Math.abs(100 * equilibriumMoistureContent(20, 0.8) - 16)).toBeLessThanOrEqual(HALF);
  });
});
