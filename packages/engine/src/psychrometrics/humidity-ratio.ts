import { saturationPressurePa } from './saturation-pressure.ts';

/** Molar mass of water over that of dry air (ASHRAE Handbook - Fundamentals 2017 ch. 1 eq. 20). */
const MASS_RATIO = 0.621945;

/**
 * Humidity ratio, kg of water vapor per kg of dry air, from the partial pressure of the vapor.
 *
 * Kernel: unchecked. NaN when the vapor alone would fill the total pressure (no dry air is left) or is negative.
 * Source: ASHRAE Handbook - Fundamentals 2017 ch. 1 eq. 20.
 * @param vaporPressurePa partial pressure of water vapor, Pa, 0 to below `pressurePa`
 * @param pressurePa total (barometric) pressure, Pa
 */
export function humidityRatioFromVaporPressure(vaporPressurePa: number, pressurePa: number): number {
  if (!(vaporPressurePa >= 0 && vaporPressurePa < pressurePa)) return Number.NaN;
  return (MASS_RATIO * vaporPressurePa) / (pressurePa - vaporPressurePa);
}

/**
 * Partial pressure of water vapor in Pa; the inverse of `humidityRatioFromVaporPressure`.
 *
 * Kernel: unchecked; meaningful for a humidity ratio of 0 or more.
 * @param humidityRatio kg of water vapor per kg of dry air
 * @param pressurePa total pressure, Pa
 */
export function vaporPressureFromHumidityRatioPa(humidityRatio: number, pressurePa: number): number {
  return (pressurePa * humidityRatio) / (MASS_RATIO + humidityRatio);
}

/**
 * Humidity ratio, kg/kg dry air, of air at a temperature and relative humidity.
 *
 * Kernel: unchecked, range of `saturationPressurePa`; NaN where the vapor pressure reaches the total pressure.
 * @param temperatureC dry bulb, °C
 * @param relativeHumidity fraction 0..1 (over ice at or below 0.01 °C, as everywhere in this subject)
 * @param pressurePa total pressure, Pa
 */
export function humidityRatioFromRelativeHumidity(
  temperatureC: number,
  relativeHumidity: number,
  pressurePa: number,
): number {
  return humidityRatioFromVaporPressure(relativeHumidity * saturationPressurePa(temperatureC), pressurePa);
}

/**
 * Relative humidity as a fraction of air at a temperature and humidity ratio. Above 1 the air holds more vapor than
 * it can at that temperature; the value is returned as it is, so that the caller can see by how much.
 *
 * Kernel: unchecked, range of `saturationPressurePa`.
 * @param temperatureC dry bulb, °C
 * @param humidityRatio kg of water vapor per kg of dry air
 * @param pressurePa total pressure, Pa
 */
export function relativeHumidityFromHumidityRatio(
  temperatureC: number,
  humidityRatio: number,
  pressurePa: number,
): number {
  return vaporPressureFromHumidityRatioPa(humidityRatio, pressurePa) / saturationPressurePa(temperatureC);
}

/**
 * Humidity ratio, kg/kg dry air, of saturated air. The ideal-gas relation: 0.3 to 0.6 % below the real-gas table of
 * the Handbook, because the enhancement factor is left out.
 *
 * Kernel: unchecked; NaN at and above the boiling point at that pressure.
 * Source: ASHRAE Handbook - Fundamentals 2017 ch. 1 eq. 21.
 * @param temperatureC temperature, °C
 * @param pressurePa total pressure, Pa
 */
export function saturationHumidityRatio(temperatureC: number, pressurePa: number): number {
  return humidityRatioFromVaporPressure(saturationPressurePa(temperatureC), pressurePa);
}
