/**
 * Length over which the drying of one place fades, m: λ = √(ρ h K / β).
 *
 * Kernel: unchecked. Source: steady balance of mixing and sources along a line; computed.
 * @param airKgPerM3 density of air
 * @param heightM clear height
 * @param mixingM2PerS horizontal mixing
 * @param sourceKgPerM2S all sources together, kg/(m²·s) per unit of humidity ratio, above 0
 */
export function reachLengthM(
  airKgPerM3: number,
  heightM: number,
  mixingM2PerS: number,
  sourceKgPerM2S: number,
): number {
  return Math.sqrt((airKgPerM3 * heightM * mixingM2PerS) / sourceKgPerM2S);
}

/** Share of the drying that reaches the far wall, 1/cosh(L/λ). Kernel; source as `reachLengthM`. */
export function shareAtFarWall(lengthOverReach: number): number {
  return 1 / Math.cosh(lengthOverReach);
}

/** Mean over the floor of the share that reaches it, tanh(x)/x with x = L/λ. Kernel; source as `reachLengthM`. */
export function meanShare(lengthOverReach: number): number {
  return lengthOverReach === 0 ? 1 : Math.tanh(lengthOverReach) / lengthOverReach;
}
