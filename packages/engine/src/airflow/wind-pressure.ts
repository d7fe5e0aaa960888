import { requireRange } from '../numerics/require-range.ts';

/** Wall pressure coefficients of a low house with the wind square on: windward, leeward, sides. */
const WINDWARD = 0.6;
const LEEWARD = -0.3;
const SIDE = -0.65;

/**
 * Pressure coefficient of a wall of a low house, before shelter, for the angle between the wind and the outward normal
 * of the wall, degrees (0: wind square onto the wall), any real number. 0.6 windward, -0.3 leeward, -0.65 sides;
 * between them C_p = [(C1 + C2) (cos2)^(1/4) + (C1 - C2) cos^(3/4) + (C3 + C4) (sin2)^2 + (C3 - C4) sin]/2, with equal
 * sides.
 * Source: values ASHRAE Fundamentals, order of low-rise walls, from memory; form Walker and Wilson 1994, from memory.
 * @throws EngineError `not-finite`
 */
export function wallPressureCoefficient(windAngleDeg: number): number {
  requireRange('wind angle, degrees,', windAngleDeg, -1e6, 1e6);
  // 90 degrees in radians has a cosine of 6e-17, which the quarter power would turn into 1e-8
  const cosine = Math.round(Math.cos((windAngleDeg * Math.PI) / 180) * 1e12) / 1e12;
  const size = Math.abs(cosine);
  const sineSquare = 1 - cosine * cosine;
  const mean = (WINDWARD + LEEWARD) * Math.sqrt(size);
  const difference = (WINDWARD - LEEWARD) * Math.sign(cosine) * size ** 0.75;
  return 0.5 * (mean + difference + 2 * SIDE * sineSquare * sineSquare);
}
