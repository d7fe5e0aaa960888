/** Days in the year that the annual wave repeats over. */
const DAYS_PER_YEAR = 365;
const SECONDS_PER_DAY = 86_400;

/** The annual temperature wave at the ground surface, away from buildings. */
export interface AnnualWave {
  /** Mean over the year, °C; near the mean of the air, warmer under snow. */
  readonly meanC: number;
  /** Half the swing from coldest to warmest, K, 0 or more. */
  readonly amplitudeK: number;
  /** Day of the coldest surface, counted from the start of the year (day 1 is January 1). */
  readonly coldestDay: number;
}

/**
 * Depth in m at which the annual wave has shrunk to 1/e: sqrt(365 a/pi) with the diffusivity a in m²/day.
 *
 * Kernel: unchecked; NaN for a negative diffusivity.
 * Source: Kusuda and Achenbach 1965, from memory.
 * @param diffusivityM2PerS thermal diffusivity of the soil, m²/s; soils run from about 2e-7 (dry) to 1e-6 (wet)
 */
export function annualDampingDepthM(diffusivityM2PerS: number): number {
  return Math.sqrt((DAYS_PER_YEAR * SECONDS_PER_DAY * diffusivityM2PerS) / Math.PI);
}

/**
 * Share of the surface swing that is left at a depth, 0..1.
 * Kernel: unchecked. Source: Kusuda and Achenbach 1965, from memory.
 * @param depthM depth below the surface, m, 0 or more
 * @param diffusivityM2PerS thermal diffusivity, m²/s
 */
export function annualDamping(depthM: number, diffusivityM2PerS: number): number {
  return Math.exp(-depthM / annualDampingDepthM(diffusivityM2PerS));
}

/**
 * Days by which the wave at a depth runs behind the surface.
 * Kernel: unchecked. Source: Kusuda and Achenbach 1965, from memory.
 * @param depthM depth below the surface, m, 0 or more
 * @param diffusivityM2PerS thermal diffusivity, m²/s
 */
export function annualLagDays(depthM: number, diffusivityM2PerS: number): number {
  return (depthM / annualDampingDepthM(diffusivityM2PerS)) * (DAYS_PER_YEAR / (2 * Math.PI));
}

/**
 * Temperature in °C of ground that no building disturbs, at a depth and a day.
 *
 * Holds for uniform soil under a yearly sine wave: no frost, no snow, no moving ground water, and days of weather are
 * left out. A crawl space floor is not undisturbed: this is the temperature beside and far below it.
 * Kernel: unchecked, nothing allocated. Days beyond the year repeat.
 * Source: Kusuda and Achenbach 1965, from memory.
 * @param wave annual wave at the surface
 * @param depthM depth below the surface, m, 0 or more
 * @param day days since the start of the year, may have a fraction
 * @param diffusivityM2PerS thermal diffusivity, m²/s
 */
export function undisturbedGroundC(
  wave: AnnualWave,
  depthM: number,
  day: number,
  diffusivityM2PerS: number,
): number {
  const depth = depthM / annualDampingDepthM(diffusivityM2PerS);
  const angle = ((2 * Math.PI) / DAYS_PER_YEAR) * (day - wave.coldestDay) - depth;
  return wave.meanC - wave.amplitudeK * Math.exp(-depth) * Math.cos(angle);
}
