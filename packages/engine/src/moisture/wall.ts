/**
 * Vapor through a wall or pier by diffusion, kg/s; negative when it runs into the wall.
 * Kernel: unchecked. Source: definition of permeance.
 * @param areaM2 area, m²
 * @param permeance kg/(m²·s·Pa)
 * @param behindPa vapor pressure on the far side, Pa (damp soil: saturation at its temperature)
 * @param airPa vapor pressure of the crawl air, Pa
 */
export function wallVaporKgPerS(areaM2: number, permeance: number, behindPa: number, airPa: number): number {
  return areaM2 * permeance * (behindPa - airPa);
}

/** Density of water, kg/m³, that turns depths of water into mass. */
const WATER_KG_PER_M3 = 1000;

/** Masonry that stands on damp ground. */
export interface CapillaryWall {
  /** Thickness, m. */
  readonly thicknessM: number;
  /** Sorptivity of the masonry, m/s^0.5; 1 mm/min^0.5 is 1.29e-4. */
  readonly sorptivityMPerRootS: number;
  /** Water content of the wetted masonry by volume, 0..1. */
  readonly wetPorosity: number;
}

/**
 * Height in m that rising damp reaches when evaporation keeps up with the rise: S sqrt(b/(2 e n)). Endless when nothing
 * evaporates.
 *
 * Kernel: unchecked. Source: Hall and Hoff 2007, sharp-front model, steady state, from memory. Gravity is left out, which
 * is fair to about 2 m; salts, joints of other mortar and damp courses are not in it.
 * @param evaporationMPerS water evaporating per wetted area, m³/(m²·s), of all wetted faces together
 */
export function risingDampHeightM(wall: CapillaryWall, evaporationMPerS: number): number {
  return wall.sorptivityMPerRootS * Math.sqrt(wall.thicknessM / (2 * evaporationMPerS * wall.wetPorosity));
}

/**
 * Water that a wall on damp ground gives to the crawl air through one wetted face, kg/s per m of wall: evaporation times
 * the wetted height, which is the height of rising damp or that of the face, whichever is less. Grows with the square
 * root of the drying power of the air until the whole face is wet, then in proportion. 0 where nothing evaporates.
 *
 * Kernel: unchecked. Source: as `risingDampHeightM`.
 * @param faceHeightM height of the masonry above the damp ground on the crawl side, m
 * @param evaporationMPerS evaporation from a wet face, m/s of water
 */
export function risingDampKgPerMS(
  wall: CapillaryWall,
  faceHeightM: number,
  evaporationMPerS: number,
): number {
  if (!(evaporationMPerS > 0)) return evaporationMPerS <= 0 ? 0 : Number.NaN;
  const height = Math.min(faceHeightM, risingDampHeightM(wall, evaporationMPerS));
  return evaporationMPerS * height * WATER_KG_PER_M3;
}

/** Drying power of air over a wet face as m of water per second, from the flow in kg/(m²·s). */
export function asWaterMPerS(evaporationKgPerM2S: number): number {
  return evaporationKgPerM2S / WATER_KG_PER_M3;
}
