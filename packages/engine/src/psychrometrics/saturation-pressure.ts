/**
 * Pressure of saturated water vapor in Pa, over ice at or below 0.01 °C and over liquid water above.
 *
 * Kernel: no checks, nothing allocated. Range of the equations −100 to 200 °C; outside it they are evaluated as they
 * stand, and NaN gives NaN. `airState` is the checked way in.
 * Source: ASHRAE Handbook - Fundamentals 2017 ch. 1 eq. 5 (ice) and 6 (water).
 * @param temperatureC temperature of the ice or water surface, °C
 */
export function saturationPressurePa(temperatureC: number): number {
  return Math.exp(logSaturationPressure(temperatureC, temperatureC <= TRIPLE_POINT_C));
}

/** Where the saturation curve passes from ice to liquid water, °C. */
export const TRIPLE_POINT_C = 0.01;

/**
 * Natural logarithm of the saturation pressure in Pa over the phase that is asked for, whatever the temperature.
 * Same source and range as `saturationPressurePa`.
 */
export function logSaturationPressure(temperatureC: number, overIce: boolean): number {
  const T = temperatureC + 273.15;
  if (overIce) {
    return (
      -5674.5359 / T +
      6.3925247 +
      T * (-9.677843e-3 + T * (6.2215701e-7 + T * (2.0747825e-9 - T * 9.484024e-13))) +
      4.1635019 * Math.log(T)
    );
  }
  return (
    -5800.2206 / T +
    1.3914993 +
    T * (-4.8640239e-2 + T * (4.1764768e-5 - T * 1.4452093e-8)) +
    6.5459673 * Math.log(T)
  );
}

/** Derivative of `logSaturationPressure` with respect to temperature, 1/K. */
export function logSaturationPressureSlope(temperatureC: number, overIce: boolean): number {
  const T = temperatureC + 273.15;
  if (overIce) {
    return (
      5674.5359 / (T * T) -
      9.677843e-3 +
      T * (2 * 6.2215701e-7 + T * (3 * 2.0747825e-9 - T * 4 * 9.484024e-13)) +
      4.1635019 / T
    );
  }
  return 5800.2206 / (T * T) - 4.8640239e-2 + T * (2 * 4.1764768e-5 - T * 3 * 1.4452093e-8) + 6.5459673 / T;
}
