import { logSaturationPressure, logSaturationPressureSlope } from '../psychrometrics/saturation-pressure.ts';

/**
 * Saturation pressure over liquid water in Pa at any temperature, below freezing too. This turns the dew point that a
 * weather station reports into the partial pressure of the vapor.
 *
 * Weather services state dew point and relative humidity over liquid water below freezing as well (WMO-No. 8, Guide to
 * Instruments and Methods of Observation, annex on the definition of humidity; from memory). Read as a frost point, a
 * dew point of −10 °C would give 9 % less vapor.
 * Kernel: unchecked; range −100 to 200 °C.
 * Source: ASHRAE Handbook - Fundamentals 2017 ch. 1 eq. 6.
 */
export function liquidSaturationPressurePa(temperatureC: number): number {
  return Math.exp(logSaturationPressure(temperatureC, false));
}

/**
 * Dew point over liquid water, °C, as a weather station would report it: the inverse of `liquidSaturationPressurePa`,
 * to better than 1e-9 K by Newton's method on the logarithm.
 *
 * NaN for a vapor pressure of zero or less, or NaN.
 * @param vaporPressurePa partial pressure of water vapor, Pa, for dew points of −90 to 100 °C
 */
export function stationDewPointC(vaporPressurePa: number): number {
  if (!(vaporPressurePa > 0)) return Number.NaN;
  const target = Math.log(vaporPressurePa);
  const x = target - Math.log(610.5);
  let t = (237.3 * x) / (17.269 - x);
  for (let step = 0; step < 12; step++) {
    const change = (target - logSaturationPressure(t, false)) / logSaturationPressureSlope(t, false);
    t += change;
    if (Math.abs(change) < 1e-10) break;
  }
  return t;
}
