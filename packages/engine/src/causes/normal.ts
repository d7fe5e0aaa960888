/**
 * Share of a standard normal distribution below `z`.
 *
 * Series about zero within 6, 0 and 1 beyond; within 1e-9 everywhere.
 * Source: M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 1964, eq. 26.2.11 (from memory).
 * @param z any number
 */
export function normalCumulative(z: number): number {
  if (z <= -6) return 0;
  if (z >= 6) return 1;
  let term = z;
  let sum = z;
  for (let k = 3; Math.abs(term) > 1e-16 * Math.abs(sum) && k < 300; k += 2) {
    term *= (z * z) / k;
    sum += term;
  }
  return 0.5 + (sum * Math.exp(-(z * z) / 2)) / Math.sqrt(2 * Math.PI);
}
