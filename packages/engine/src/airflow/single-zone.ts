import { requireRange } from '../numerics/require-range.ts';
import type { ShelterClass, Stories } from './shelter.ts';
import { requireShelterClass, requireStories } from './shelter.ts';

/** (L/s)2/(cm4 K) by stories. */
const STACK = [0.000145, 0.00029, 0.000435] as const;
/** (L/s)2/(cm4 (m/s)2) by stories, then shelter class 1 to 5. */
const WIND = [
  [0.000319, 0.000246, 0.000174, 0.000104, 0.000032],
  [0.00042, 0.000325, 0.000231, 0.000137, 0.000042],
  [0.000494, 0.000382, 0.000271, 0.000161, 0.000049],
] as const;
const GRAVITY = 9.80665;
const SQUARE_CM_PER_M2 = 1e4;

/** A house, or a vented crawl space taken alone, as one body of air. */
export interface BasicInfiltrationInput {
  /** Effective leakage area at 4 Pa, m2, 0 to 100. */
  readonly leakageAreaM2: number;
  readonly stories: Stories;
  readonly shelterClass: ShelterClass;
  /** Indoor less outdoor temperature, K; its size counts, up to 100. */
  readonly temperatureDifferenceK: number;
  /** Mean wind speed at the weather station, m/s, 0 to 100. */
  readonly windMPerS: number;
}

/**
 * Outdoor air that a house draws in, m3/s, by the basic model: Q = (A_L/1000) sqrt(C_s dT + C_w U^2), A_L in cm2. For
 * houses with about equal leakage in floor and ceiling; no flue. A crawl space under a house is driven by that house:
 * for it use the network. Source: ASHRAE Fundamentals, chapter Ventilation and Infiltration, tables 4 and 6, read.
 * @throws EngineError outside the ranges of the input
 */
export function basicInfiltrationM3PerS(input: BasicInfiltrationInput): number {
  requireStories(input.stories);
  requireShelterClass(input.shelterClass);
  const area = requireRange('leakage area, m2,', input.leakageAreaM2, 0, 100) * SQUARE_CM_PER_M2;
  const difference = Math.abs(
    requireRange('temperature difference, K,', input.temperatureDifferenceK, -100, 100),
  );
  const wind = requireRange('wind speed, m/s,', input.windMPerS, 0, 100);
  const stack = STACK[input.stories - 1]! * difference;
  const windPart = WIND[input.stories - 1]![input.shelterClass - 1]! * wind * wind;
  return (area / 1000) * Math.sqrt(stack + windPart);
}

/**
 * Stack factor f_s of a building whose leakage is split otherwise than the basic model has it:
 * f_s = (1 + R/2)/3 (1 - X^2/(2 - R)^2)^1.5.
 * @param floorCeilingShare R, part of the leakage in floor and ceiling together, 0 to 1
 * @param ceilingLessFloor X, leakage of ceiling less floor over the total, -R to R
 * Source: Sherman and Grimsrud 1980, form from memory.
 * @throws EngineError outside those ranges
 */
export function stackFactor(floorCeilingShare: number, ceilingLessFloor: number): number {
  const r = requireRange('share of floor and ceiling', floorCeilingShare, 0, 1);
  const x = requireRange('ceiling less floor share', ceilingLessFloor, -r, r);
  const bias = (x * x) / (2 - r) ** 2;
  return ((1 + r / 2) / 3) * (1 - bias) ** 1.5;
}

/** What `stackFlowM3PerS` needs. */
export interface StackFlowInput {
  readonly leakageAreaM2: number;
  /** From `stackFactor`. */
  readonly stackFactor: number;
  /** Height of the body of air, m, 0 to 50. */
  readonly heightM: number;
  readonly temperatureDifferenceK: number;
  /** Indoor temperature, C, -60 to 90. */
  readonly indoorTemperatureC: number;
}

/**
 * Outdoor air drawn in by the stack effect alone, m3/s: Q = A_L f_s sqrt(g H dT/T).
 * Source: Sherman and Grimsrud 1980, form from memory.
 * @throws EngineError outside the ranges of the input
 */
export function stackFlowM3PerS(input: StackFlowInput): number {
  const area = requireRange('leakage area, m2,', input.leakageAreaM2, 0, 100);
  const factor = requireRange('stack factor', input.stackFactor, 0, 1);
  const height = requireRange('height, m,', input.heightM, 0, 50);
  const difference = Math.abs(
    requireRange('temperature difference, K,', input.temperatureDifferenceK, -100, 100),
  );
  const kelvin = requireRange('indoor temperature, C,', input.indoorTemperatureC, -60, 90) + 273.15;
  return area * factor * Math.sqrt((GRAVITY * height * difference) / kelvin);
}
