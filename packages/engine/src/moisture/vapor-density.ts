import { saturationPressurePa } from '../psychrometrics/saturation-pressure.ts';

/** Gas constant of water vapor, J/(kg·K). */
export const VAPOR_GAS_CONSTANT = 461.5;

/**
 * Density of water vapor in kg/m³ from its partial pressure.
 * Kernel: unchecked. Source: ideal gas law.
 * @param vaporPressurePa partial pressure, Pa
 * @param temperatureC temperature of the vapor, °C
 */
export function vaporDensityKgPerM3(vaporPressurePa: number, temperatureC: number): number {
  return vaporPressurePa / (VAPOR_GAS_CONSTANT * (temperatureC + 273.15));
}

/**
 * Density of saturated water vapor, kg/m³, over ice at or below 0.01 °C.
 * Kernel: unchecked, range of `saturationPressurePa`.
 * @param temperatureC temperature of the surface, °C
 */
export function saturationVaporDensityKgPerM3(temperatureC: number): number {
  return vaporDensityKgPerM3(saturationPressurePa(temperatureC), temperatureC);
}
