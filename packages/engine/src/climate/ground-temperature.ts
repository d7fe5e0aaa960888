import type { Figure } from '../numerics/notice.ts';
import { DAYS_PER_MONTH } from './calendar.ts';
import type { MonthlyClimate } from './monthly.ts';

/**
 * Temperature of deep undisturbed ground, °C: the annual mean of the air, months weighted by their days.
 *
 * Under bare or grassed ground the true value is usually 0 to 2 K higher (sun on the ground, snow cover in winter); no
 * correction is made, and the notice says so. The undisturbed-ground temperatures in the head lines of 20 typical-year
 * files, themselves a formula, have the same mean at 4 m to 0.15 K (computed).
 * Source: Kusuda and Achenbach, Earth Temperature and Thermal Diffusivity at Selected Stations in the United States,
 * ASHRAE Transactions 71 (1965), mean term of the model; the 0 to 2 K from memory.
 */
export function deepGroundTemperatureC(monthly: MonthlyClimate): Figure {
  const value = annualMean(monthly.months.map((month) => month.temperatureMeanC));
  return {
    value,
    notices: [
      {
        code: 'deep-ground-from-air',
        message:
          `The deep ground is taken at the annual mean of the air, ${value.toFixed(1)} °C. ` +
          'Measured ground is usually 0 to 2 K warmer.',
      },
    ],
  };
}

/** Mean of twelve monthly values, weighted by the days of the months. */
function annualMean(values: readonly number[]): number {
  let sum = 0;
  for (let m = 0; m < 12; m++) sum += values[m]! * DAYS_PER_MONTH[m]!;
  return sum / 365;
}
