import { saturationVaporDensityKgPerM3, VAPOR_GAS_CONSTANT } from './vapor-density.ts';

/** Vapor transfer coefficient of a surface in still crawl space air, m/s, and the range it may have. */
export const SURFACE_TRANSFER_M_PER_S = { value: 0.002, low: 0.0014, high: 0.0028 } as const;

/** Diffusivity of water vapor in still air, m²/s, near 20 °C. */
export const VAPOR_DIFFUSIVITY_M2_PER_S = 2.5e-5;

/** Heat capacity of air per volume, J/(m³·K), and Lewis number of vapor in air. */
const AIR_HEAT_CAPACITY = 1.2 * 1006;
const LEWIS = 0.85;

/**
 * Vapor transfer coefficient in m/s from the convective (not radiant) heat transfer coefficient of the same surface.
 * 1.5 to 3 W/(m²·K), still air, gives 0.0014 to 0.0028 m/s.
 *
 * Kernel: unchecked. Source: Lewis analogy, ASHRAE Handbook - Fundamentals ch. 6, from memory.
 * @param convectionWPerM2K convective heat transfer coefficient, W/(m²·K)
 */
export function surfaceTransferMPerS(convectionWPerM2K: number): number {
  return convectionWPerM2K / (AIR_HEAT_CAPACITY * LEWIS ** (2 / 3));
}

/** How wet ground looks, with the resistance of the dry layer over the moist soil. */
export interface GroundSurface {
  readonly key: 'standing-water' | 'wet' | 'dark-damp' | 'average' | 'dry-crust' | 'dry-gravel';
  readonly title: string;
  /** Resistance of the dry layer, s/m. */
  readonly dryLayerSPerM: number;
  /** Resistances that the same look may have, s/m: half way to the neighboring classes, half again at the dry end. */
  readonly lowSPerM: number;
  readonly highSPerM: number;
}

/**
 * Ground surfaces by their look. The resistances were set so that average ground gives the rates that are published for
 * uncovered crawl space ground, 185 to 450 g/(m²·day); nobody measured them on site.
 */
export const GROUND_SURFACES: readonly GroundSurface[] = [
  { key: 'standing-water', title: 'Standing water', dryLayerSPerM: 0, lowSPerM: 0, highSPerM: 0 },
  { key: 'wet', title: 'Visibly wet', dryLayerSPerM: 0, lowSPerM: 0, highSPerM: 250 },
  { key: 'dark-damp', title: 'Dark, damp soil', dryLayerSPerM: 500, lowSPerM: 250, highSPerM: 750 },
  { key: 'average', title: 'Average soil', dryLayerSPerM: 1000, lowSPerM: 750, highSPerM: 1675 },
  { key: 'dry-crust', title: 'Pale, dry crust', dryLayerSPerM: 2350, lowSPerM: 1675, highSPerM: 3525 },
  {
    key: 'dry-gravel',
    title: 'Dry sand or gravel over a capillary break',
    dryLayerSPerM: 4700,
    lowSPerM: 3525,
    highSPerM: 7050,
  },
];

/** The ground surface of a key. */
export function groundSurface(key: GroundSurface['key']): GroundSurface {
  return GROUND_SURFACES.find((surface) => surface.key === key)!;
}

/**
 * Resistance in s/m of a dry layer over moist soil: thickness over the diffusivity in its pores.
 *
 * Kernel: unchecked. Source: Philip, van de Griend and Owe, from memory.
 * @param thicknessM thickness of the dry layer, m; 10 mm gives 1600 to 4000 s/m
 * @param poreFactor porosity times tortuosity factor, 0.1 to 0.25
 */
export function dryLayerResistanceSPerM(thicknessM: number, poreFactor: number): number {
  return thicknessM / (VAPOR_DIFFUSIVITY_M2_PER_S * poreFactor);
}

/**
 * Vapor from a moist surface into the air, kg/(m²·s): vapor density at the surface less that of the air, over the
 * resistances of film and dry layer. Negative where the air is wetter than the ground, which then takes up water.
 * The one form for every open ground and water surface.
 *
 * Kernel: unchecked, nothing allocated. Source: surface film by the Lewis analogy, dry layer as diffusion resistance.
 * @param surfaceTemperatureC temperature where the water evaporates, °C
 * @param waterActivity relative humidity in the pores there, 1 for moist soil
 * @param airVaporDensity vapor density of the air, kg/m³
 * @param transferMPerS vapor transfer coefficient of the surface, m/s, above 0
 * @param dryLayerSPerM resistance of the dry layer, s/m, 0 or more
 */
export function groundEvaporationKgPerM2S(
  surfaceTemperatureC: number,
  waterActivity: number,
  airVaporDensity: number,
  transferMPerS: number,
  dryLayerSPerM: number,
): number {
  return (
    (saturationVaporDensityKgPerM3(surfaceTemperatureC) * waterActivity - airVaporDensity) /
    (1 / transferMPerS + dryLayerSPerM)
  );
}

/**
 * Permeance, kg/(m²·s·Pa), of a sheet that would pass as much as open ground: what a hole in a liner is worth.
 *
 * Kernel: unchecked. Source: the same resistances, vapor as ideal gas.
 * @param transferMPerS vapor transfer coefficient of the surface, m/s
 * @param dryLayerSPerM resistance of the dry layer, s/m
 * @param temperatureC temperature of ground and air, °C
 */
export function openGroundPermeance(
  transferMPerS: number,
  dryLayerSPerM: number,
  temperatureC: number,
): number {
  return 1 / ((1 / transferMPerS + dryLayerSPerM) * VAPOR_GAS_CONSTANT * (temperatureC + 273.15));
}
