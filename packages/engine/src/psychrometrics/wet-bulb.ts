import { saturationHumidityRatio } from './humidity-ratio.ts';

/** Colder than any wet bulb of air at −100 °C or more. */
const COLDEST_C = -110;
const STEPS_MAX = 100;
const TOLERANCE_K = 1e-9;
/** Room for rounding in a humidity ratio that was computed from a relative humidity of exactly 1. */
const SATURATION_SLACK = 1e-9;

/**
 * Humidity ratio, kg/kg dry air, of air with a dry bulb and a thermodynamic wet bulb temperature. The wet surface is
 * liquid water at 0 °C and above, ice below.
 *
 * Kernel: unchecked. A negative result means that no air can have this pair of readings; it is returned as it is.
 * NaN where the wet bulb is at or above the boiling point at that pressure.
 * Source: ASHRAE Handbook - Fundamentals 2017 ch. 1 eq. 33 (water) and 35 (ice).
 * @param temperatureC dry bulb, °C
 * @param wetBulbTemperatureC wet bulb, °C, at most the dry bulb
 * @param pressurePa total pressure, Pa
 */
export function humidityRatioFromWetBulb(
  temperatureC: number,
  wetBulbTemperatureC: number,
  pressurePa: number,
): number {
  return humidityRatioOver(wetBulbTemperatureC < 0, temperatureC, wetBulbTemperatureC, pressurePa);
}

/**
 * Thermodynamic wet bulb temperature in °C.
 *
 * Just above freezing the ice and the water equation overlap (for air of 5 °C by about 0.4 K): two temperatures then
 * satisfy them, one with a wet wick and one with an iced wick. The wet wick is taken wherever it stays at or above
 * 0 °C.
 * NaN when the humidity ratio is negative or above saturation at the dry bulb (beyond rounding). Good for −100 to
 * 200 °C. A bracketed secant search that cannot leave the bracket; the bracket closes to 1e-9 K.
 * Source: ASHRAE Handbook - Fundamentals 2017 ch. 1 eq. 33 and 35.
 * @param temperatureC dry bulb, °C
 * @param humidityRatio kg of water vapor per kg of dry air
 * @param pressurePa total pressure, Pa
 */
export function wetBulbC(temperatureC: number, humidityRatio: number, pressurePa: number): number {
  if (!(humidityRatio >= 0)) return Number.NaN;
  // Above the boiling point there is no saturation limit (NaN), and any humidity ratio is possible.
  const saturated = saturationHumidityRatio(temperatureC, pressurePa);
  if (humidityRatio > saturated * (1 + SATURATION_SLACK)) return Number.NaN;
  if (humidityRatio >= saturated) return temperatureC;

  if (temperatureC >= 0 && humidityRatio >= humidityRatioOver(false, temperatureC, 0, pressurePa)) {
    return search(false, 0, temperatureC, temperatureC, humidityRatio, pressurePa);
  }
  return search(true, COLDEST_C, Math.min(temperatureC, 0), temperatureC, humidityRatio, pressurePa);
}

function humidityRatioOver(overIce: boolean, t: number, wetBulb: number, pressurePa: number): number {
  const Ws = saturationHumidityRatio(wetBulb, pressurePa);
  return overIce
    ? ((2830 - 0.24 * wetBulb) * Ws - 1.006 * (t - wetBulb)) / (2830 + 1.86 * t - 2.1 * wetBulb)
    : ((2501 - 2.326 * wetBulb) * Ws - 1.006 * (t - wetBulb)) / (2501 + 1.86 * t - 4.186 * wetBulb);
}

/** Illinois variant of the false-position rule; falls back to halving where the upper end has no value. */
function search(
  overIce: boolean,
  lowC: number,
  highC: number,
  t: number,
  humidityRatio: number,
  pressurePa: number,
): number {
  let low = lowC;
  let high = highC;
  let errorLow = humidityRatioOver(overIce, t, low, pressurePa) - humidityRatio;
  let errorHigh = humidityRatioOver(overIce, t, high, pressurePa) - humidityRatio;
  let keptSide = 0;
  for (let step = 0; step < STEPS_MAX && high - low > TOLERANCE_K; step++) {
    const middle = 0.5 * (low + high);
    const secant = low + ((high - low) * errorLow) / (errorLow - errorHigh);
    const tryC = secant > low && secant < high ? secant : middle;
    const error = humidityRatioOver(overIce, t, tryC, pressurePa) - humidityRatio;
    if (error === 0) return tryC;
    if (error < 0) {
      low = tryC;
      errorLow = error;
      if (keptSide === 1) errorHigh *= 0.5;
      keptSide = 1;
    } else {
      high = tryC;
      errorHigh = error;
      if (keptSide === -1) errorLow *= 0.5;
      keptSide = -1;
    }
  }
  return 0.5 * (low + high);
}
