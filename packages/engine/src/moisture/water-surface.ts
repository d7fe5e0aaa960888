import { SURFACE_TRANSFER_M_PER_S } from './ground-evaporation.ts';
import { saturationVaporDensityKgPerM3 } from './vapor-density.ts';

/**
 * Evaporation from free water, kg/(m²·s): standing water, water on a liner, a wet floor. Negative where the air's dew
 * point is above the water: the air then gives water to it.
 *
 * Kernel: unchecked, nothing allocated. Source: surface film by the Lewis analogy.
 * @param waterTemperatureC temperature of the water surface, °C
 * @param airVaporDensity vapor density of the air, kg/m³
 * @param transferMPerS vapor transfer coefficient, m/s; 0.002 for still air when absent
 */
export function waterEvaporationKgPerM2S(
  waterTemperatureC: number,
  airVaporDensity: number,
  transferMPerS: number = SURFACE_TRANSFER_M_PER_S.value,
): number {
  return transferMPerS * (saturationVaporDensityKgPerM3(waterTemperatureC) - airVaporDensity);
}
