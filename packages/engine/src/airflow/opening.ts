import type { Figure } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';

/** Exponent of cracks, joints and what is not known better. */
export const CRACK_EXPONENT = 0.65;
/** Exponent of vents, doors ajar and other plain holes. */
export const HOLE_EXPONENT = 0.5;
/** Pressure of a blower-door test and pressure at which leakage areas are stated, Pa. */
const TEST_PA = 50;
const LEAKAGE_AREA_PA = 4;
/** Air density that leakage areas are stated at, kg/m3. */
const LEAKAGE_AREA_KG_PER_M3 = 1.2;
const DISCHARGE_COEFFICIENT = 0.6;

/** An opening that passes air by Q = C dp^n. */
export interface FlowLaw {
  /** C, m3/s at 1 Pa, 0 or more. */
  readonly coefficient: number;
  /** n, 0.5 (vents, doors ajar) to 1; cracks 0.65. */
  readonly exponent: number;
}

function requireExponent(exponent: number): number {
  return requireRange('flow exponent', exponent, 0.5, 1);
}

/**
 * Air flow through an opening, m3/s, with the sign of the pressure difference, Pa: Q = C dp^n.
 * @throws EngineError outside the ranges of `FlowLaw`, and beyond 1e6 Pa
 */
export function flowM3PerS(law: FlowLaw, pressurePa: number): number {
  requireRange('flow coefficient', law.coefficient, 0, Number.MAX_VALUE);
  requireRange('pressure difference, Pa,', pressurePa, -1e6, 1e6);
  return Math.sign(pressurePa) * law.coefficient * Math.abs(pressurePa) ** requireExponent(law.exponent);
}

/**
 * The flow law of a building from its blower-door flow at 50 Pa, m3/s: C = Q50 / 50^n.
 * @throws EngineError for a negative flow or an exponent outside 0.5 to 1
 */
export function lawFromBlowerDoor(flowAt50PaM3PerS: number, exponent = CRACK_EXPONENT): FlowLaw {
  requireRange('flow at 50 Pa, m3/s,', flowAt50PaM3PerS, 0, Number.MAX_VALUE);
  return { coefficient: flowAt50PaM3PerS / TEST_PA ** requireExponent(exponent), exponent };
}

/**
 * The flow law of an effective leakage area, m2, stated at 4 Pa and 1.2 kg/m3: C = A sqrt(8/rho) / 4^n. The area is
 * that of a nozzle without loss; a hole counts with 0.6 of its area, see `holeLeakageAreaM2`.
 * @throws EngineError for a negative area or an exponent outside 0.5 to 1
 */
export function lawFromLeakageArea(leakageAreaM2: number, exponent = CRACK_EXPONENT): FlowLaw {
  requireRange('leakage area, m2,', leakageAreaM2, 0, Number.MAX_VALUE);
  const speed = Math.sqrt((2 * LEAKAGE_AREA_PA) / LEAKAGE_AREA_KG_PER_M3);
  return { coefficient: (leakageAreaM2 * speed) / LEAKAGE_AREA_PA ** requireExponent(exponent), exponent };
}

/**
 * The effective leakage area, m2, at 4 Pa and 1.2 kg/m3, that passes what the law passes at 4 Pa; inverse of
 * `lawFromLeakageArea`. From a blower door: A = Q50 (4/50)^n sqrt(rho/8).
 */
export function leakageAreaM2(law: FlowLaw): number {
  return flowM3PerS(law, LEAKAGE_AREA_PA) * Math.sqrt(LEAKAGE_AREA_KG_PER_M3 / (2 * LEAKAGE_AREA_PA));
}

/**
 * Effective leakage area, m2, of a plain hole, or of a vent of that net free area, m2: 0.6 of it. Pair it with
 * exponent 0.5.
 * Source: orifice discharge coefficient, from memory.
 * @throws EngineError for a negative area
 */
export function holeLeakageAreaM2(openAreaM2: number): number {
  return DISCHARGE_COEFFICIENT * requireRange('open area, m2,', openAreaM2, 0, Number.MAX_VALUE);
}

/**
 * Effective leakage area, m2, of a gap measured on site: length times width, m, times 0.6.
 * @throws EngineError for a negative length or width
 */
export function gapLeakageAreaM2(lengthM: number, widthM: number): number {
  requireRange('gap length, m,', lengthM, 0, 1e6);
  return holeLeakageAreaM2(lengthM * requireRange('gap width, m,', widthM, 0, 1e6));
}

/**
 * The quick rule for a whole house: air changes per hour in service are about those at 50 Pa over 20. The notice says
 * that it is off by 40 % or more over the long run (ASHRAE Fundamentals, chapter Ventilation and Infiltration, read)
 * and that it does not hold for a crawl space taken alone, whose driver is the house above.
 * @throws EngineError for a negative rate
 */
export function quickAirChangesPerHour(airChangesAt50Pa: number): Figure {
  return {
    value: requireRange('air changes per hour at 50 Pa', airChangesAt50Pa, 0, 1e4) / 20,
    notices: [
      {
        code: 'rule-of-thumb',
        message:
          'Air changes at 50 Pa over 20 are a rule for whole houses, off by 40 % or more; it does not hold for a crawl space alone.',
      },
    ],
  };
}
