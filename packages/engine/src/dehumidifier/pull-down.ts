import { requireRange } from '../numerics/require-range.ts';

/** Diffusivity of water across the grain of softwood, m²/s: middle and range. From memory. */
export const WOOD_DIFFUSIVITY_M2_PER_S = { value: 1.5e-10, low: 1e-10, high: 2e-10 } as const;
/** Days to plan for drying down. Common practice, no source. */
export const PULL_DOWN_DAYS = { value: 60, low: 45, high: 90 } as const;
/** Water that a wet block wall gives off, kg per m² of face. Common practice, no source. */
export const WET_BLOCK_KG_PER_M2 = { value: 20, low: 10, high: 30 } as const;

/**
 * Water in kg that wood gives off between two moisture contents; negative when it takes up.
 * Kernel: unchecked.
 * @param woodKg oven-dry mass; joists of 38 x 235 mm at 406 mm with a subfloor have about 20 kg per m² of plan
 * @param fromMoistureContent at the start, fraction of oven-dry mass
 * @param toMoistureContent at the end: the equilibrium with the air at its target
 */
export function storedWaterKg(
  woodKg: number,
  fromMoistureContent: number,
  toMoistureContent: number,
): number {
  return woodKg * (fromMoistureContent - toMoistureContent);
}

/**
 * Time constant in s of the drying of a slab from both faces: thickness² / (pi² diffusivity). A slab that dries from one
 * face counts as one of twice the thickness.
 *
 * Kernel: unchecked. Source: diffusion equation; diffusivity after Wood Handbook and Siau 1984, from memory. Resistance of
 * the surface is left out: paint, film and still air lengthen it.
 * @param thicknessM thickness, m
 * @param diffusivityM2PerS diffusivity across the grain, m²/s
 */
export function slabDryingTimeS(thicknessM: number, diffusivityM2PerS: number): number {
  return thicknessM ** 2 / (Math.PI ** 2 * diffusivityM2PerS);
}

/**
 * Share of the water to lose that is still in the slab after a time, 1 at the start. The whole series; its first term,
 * 8/pi² exp(-t/time constant), is enough once half is gone.
 *
 * Kernel: unchecked; 1 for times of 0 and less. Source: solution of the diffusion equation for a slab with faces held at
 * the target.
 * @param timeS time since the air reached its target, s
 * @param timeConstantS from `slabDryingTimeS`
 */
export function slabWaterLeft(timeS: number, timeConstantS: number): number {
  if (timeS <= 0) return 1;
  const t = timeS / timeConstantS;
  // Early on, where the series needs many terms, the half-space answer is exact to rounding.
  if (t < 0.05) return 1 - (4 / Math.PI ** 1.5) * Math.sqrt(t);
  let sum = 0;
  for (let n = 1; n < 40; n += 2) {
    const term = Math.exp(-n * n * t) / (n * n);
    sum += term;
    if (term < 1e-17) break;
  }
  return (8 / Math.PI ** 2) * sum;
}

/** What has to come out of the building once, before steady drying. */
export interface PullDown {
  readonly waterKg: number;
  /** Mean over the planned days, kg/day. */
  readonly meanKgPerDay: number;
  /** Mean of the first week by slab drying, kg/day: what a rented machine has to take. */
  readonly firstWeekKgPerDay: number;
  /** Share of it that is still there when the planned days are over, 0..1. */
  readonly shareLeft: number;
}

/**
 * Load of drying a space down, from the water stored and the time planned.
 *
 * Source: slab drying as above. The first week runs at several times the mean; steady drying needs another machine size.
 * @param waterKg water to give off, kg, 0 to 100 000
 * @param days planned, 1 to 1000; 45 to 90 is common
 * @param timeConstantS of the wood that holds most of it, from `slabDryingTimeS`
 * @throws EngineError `not-finite` or `out-of-range`
 */
export function pullDown(waterKg: number, days: number, timeConstantS: number): PullDown {
  requireRange('water to remove in kg', waterKg, 0, 100_000);
  requireRange('days planned', days, 1, 1000);
  requireRange('drying time constant in s', timeConstantS, 1, 1e10);
  const left = (afterDays: number) => slabWaterLeft(86_400 * afterDays, timeConstantS);
  const week = Math.min(7, days);
  return {
    waterKg,
    meanKgPerDay: waterKg / days,
    firstWeekKgPerDay: (waterKg * (1 - left(week))) / week,
    shareLeft: left(days),
  };
}
