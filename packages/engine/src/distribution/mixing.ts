/** Mass of air per volume, kg/m³, and its heat capacity, J/(kg·K): of air near 20 °C, for every flow of this subject. */
export const AIR_KG_PER_M3 = 1.2;
export const AIR_J_PER_KG_K = 1006;

const GRAVITY = 9.81;

/** A coefficient of horizontal mixing, m²/s, with the range that it may have. */
export interface MixingBand {
  readonly low: number;
  readonly value: number;
  readonly high: number;
}

/** Low and high of the mixing coefficient over its middle: 0.003 and 0.02 to 0.009 m²/s. */
const LOW_SHARE = 1 / 3;
const HIGH_SHARE = 20 / 9;
/** Horizontal spread of temperature in a space that nothing stirs, K. Common practice, no source; 0.2 to 1. */
export const USUAL_SPREAD_K = 0.5;

/**
 * Horizontal mixing in the still air of a crawl space, m²/s: the greater of what outdoor air stirs and what small
 * differences of temperature do. Known to a factor of three only, so it comes as a band and is to be used as one.
 *
 * Kernel: unchecked. Source: V^(2/3)(0.52 ACH + 0.31)/3600 after the regression of Cheng et al. 2011 (from memory; its
 * range, 0.001 to 0.013 m²/s in rooms, was read); 0.1 h √(g h ΔT/T), set so that a 2.4 m corridor has the 0.06 m²/s
 * that was measured in a hospital (J. Hyg., abstract read).
 * @param volumeM3 air of the space
 * @param heightM clear height
 * @param airChangesPerHour outdoor air
 * @param spreadK horizontal spread of temperature
 */
export function backgroundMixing(
  volumeM3: number,
  heightM: number,
  airChangesPerHour: number,
  spreadK: number = USUAL_SPREAD_K,
): MixingBand {
  const stirred = (volumeM3 ** (2 / 3) * (0.52 * airChangesPerHour + 0.31)) / 3600;
  const value = Math.max(stirred, buoyantMixingM2PerS(heightM, spreadK));
  return { low: LOW_SHARE * value, value, high: HIGH_SHARE * value };
}

/** Room temperature for buoyancy, K. */
const ROOM_K = 294;

/** Horizontal mixing by differences of temperature, m²/s. Kernel, unchecked; source as `backgroundMixing`. */
export function buoyantMixingM2PerS(heightM: number, spreadK: number): number {
  return 0.1 * heightM * Math.sqrt((GRAVITY * heightM * spreadK) / ROOM_K);
}

/**
 * Horizontal mixing that a jet adds to the space it blows into, m²/s: its power, spread over the space, sets eddies as
 * large as the space is high. Momentum and not air flow counts.
 *
 * Kernel: unchecked. Source: 0.1 ε^(1/3) h^(4/3) with ε = Q U²/(2 V), turbulence balance (Karlsson 1994 and others,
 * from memory, prefactor uncertain).
 * @param flowM3PerS air flow of the outlet
 * @param outletM2 its free area
 * @param volumeM3 air of the space that the jet reaches without a narrow passage
 * @param heightM clear height there
 */
export function jetMixingM2PerS(
  flowM3PerS: number,
  outletM2: number,
  volumeM3: number,
  heightM: number,
): number {
  const speed = flowM3PerS / outletM2;
  const power = (flowM3PerS * speed * speed) / (2 * volumeM3);
  return 0.1 * Math.cbrt(power) * heightM ** (4 / 3);
}

/**
 * Air that trades places through an opening because it is a little warmer on one side, m³/s each way and meter of width.
 *
 * Kernel: unchecked. Source: Brown and Solvason 1962 with a discharge coefficient of 0.6, from memory.
 * @param heightM open height
 * @param spreadK difference of temperature, K
 */
export function openingExchangeM2PerS(heightM: number, spreadK: number = USUAL_SPREAD_K): number {
  return 0.2 * Math.sqrt((GRAVITY * heightM ** 3 * spreadK) / ROOM_K);
}
