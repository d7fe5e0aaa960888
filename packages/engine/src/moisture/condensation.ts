import { SURFACE_TRANSFER_M_PER_S } from './ground-evaporation.ts';
import { saturationVaporDensityKgPerM3 } from './vapor-density.ts';

/**
 * Water that condenses on a cold surface, kg/(m²·s); 0 on a surface above the dew point of the air. What condensed
 * evaporates again as free water (`waterEvaporationKgPerM2S`) once the surface warms, unless it dripped off.
 *
 * Kernel: unchecked, nothing allocated. Source: surface film by the Lewis analogy.
 * @param surfaceTemperatureC temperature of the duct, pipe or block, °C
 * @param airVaporDensity vapor density of the air, kg/m³
 * @param transferMPerS vapor transfer coefficient, m/s; 0.002 for still air when absent
 */
export function condensationKgPerM2S(
  surfaceTemperatureC: number,
  airVaporDensity: number,
  transferMPerS: number = SURFACE_TRANSFER_M_PER_S.value,
): number {
  const excess = airVaporDensity - saturationVaporDensityKgPerM3(surfaceTemperatureC);
  return excess > 0 ? transferMPerS * excess : 0;
}
