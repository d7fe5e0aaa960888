/** Shortest rest between two starts, s. Common practice, no source. */
export const MINIMUM_OFF_S = 300;
/** Humidistat switches this far above and below its setting, fraction. Common practice, no source. */
export const HUMIDISTAT_DIFFERENTIAL = 0.03;
/** Run time at each start before the first water leaves the coil, s. From latent degradation work, from memory. */
const DEAD_S = 300;

/**
 * Part-load factor 0.90..1.00: water per kWh while cycling, relative to running through.
 * Kernel: unchecked; the ratio is taken as it is. Source: part-load curve in the public model source that carries the
 * generic surface (read).
 * @param partLoadRatio load over capacity at the air state, 0..1
 */
export function partLoadFactor(partLoadRatio: number): number {
  return 0.9 + 0.1 * partLoadRatio;
}

/**
 * Share of the time the machine runs, 0..1: load over capacity over part-load factor. 1 from a load equal to the capacity
 * on; the machine is then too small and `load` is not met, which the caller sees by comparing them.
 * Kernel: unchecked. Source: as `partLoadFactor`.
 * @param loadKgPerDay water to remove, kg/day, 0 or more
 * @param capacityKgPerDay water removed per day of running at the air state, above 0
 */
export function runFraction(loadKgPerDay: number, capacityKgPerDay: number): number {
  if (loadKgPerDay >= capacityKgPerDay) return 1;
  const ratio = loadKgPerDay / capacityKgPerDay;
  return ratio / partLoadFactor(ratio);
}

/** One on-off cycle of a humidistat. */
export interface HumidistatCycle {
  readonly runS: number;
  readonly offS: number;
  readonly startsPerHour: number;
}

/**
 * Length of the on-off cycle when the air alone stores the water, the shortest cycle there is: wood and soil lengthen it.
 * Rests are at least `MINIMUM_OFF_S`, so a fast space overshoots its band and runs longer in turn.
 *
 * Kernel: unchecked. No cycle, all zeros, when the load is 0 or reaches the capacity. Source: mass balance; computed.
 * @param loadKgPerDay water entering, kg/day
 * @param capacityKgPerDay water removed per day of running, above the load
 * @param bandKg water that the air of the space gives up over the whole band of the humidistat, kg
 */
export function humidistatCycle(
  loadKgPerDay: number,
  capacityKgPerDay: number,
  bandKg: number,
): HumidistatCycle {
  if (loadKgPerDay <= 0 || loadKgPerDay >= capacityKgPerDay) return { runS: 0, offS: 0, startsPerHour: 0 };
  const load = loadKgPerDay / 86_400;
  const net = (capacityKgPerDay - loadKgPerDay) / 86_400;
  const offS = Math.max(MINIMUM_OFF_S, bandKg / load);
  const runS = (offS * load) / net;
  return { runS, offS, startsPerHour: 3600 / (runS + offS) };
}

/**
 * Share of the removal that is left in short cycles, 0..1: at each start about five minutes pass before water leaves the
 * wet coil, and it dries back into the air if the fan runs on. Cycles of half an hour and more are already covered by
 * `partLoadFactor` and give 1; below twenty minutes all of it counts; between them it fades in.
 *
 * Kernel: unchecked. Source: latent degradation work of Henderson and Shirey (from memory); the fade is common practice.
 * @param runS time running per start, s
 * @param offS time resting per start, s
 */
export function shortCycleFactor(runS: number, offS: number): number {
  if (runS <= 0) return 0;
  const cycleMinutes = (runS + offS) / 60;
  const weight = Math.min(1, Math.max(0, (30 - cycleMinutes) / 10));
  return Math.max(0, 1 - (weight * DEAD_S) / runS);
}
