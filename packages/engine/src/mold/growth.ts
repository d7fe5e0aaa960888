import type { MoldParameters } from './classes.ts';
import { criticalHumidityPercent, GROWTH_ABOVE_C, GROWTH_BELOW_C } from './critical-humidity.ts';

const HOURS_PER_WEEK = 168;

/** Steepness of the slow-down near the ceiling, per index unit; shared with the closed form. */
export const SLOW_DOWN = 2.3;

/**
 * Weeks that pine sapwood of the given wood and surface terms takes to index 1 in constant air, without checks.
 * Only meaningful above the critical humidity and for 0 < T < 50 °C.
 */
export function weeksToFirstGrowth(temperatureC: number, humidityPercent: number, p: MoldParameters): number {
  return Math.exp(
    -0.68 * Math.log(temperatureC) -
      13.9 * Math.log(humidityPercent) +
      0.14 * p.woodFactor -
      0.33 * p.surfaceQuality +
      66.02,
  );
}

/** Stands for "nothing grows here" where a ceiling is asked for. */
export const NO_GROWTH = -1;

/** Ceiling of the index in this air, `NO_GROWTH` where nothing grows, NaN for NaN. */
export function growthCeiling(temperatureC: number, relativeHumidity: number, p: MoldParameters): number {
  if (Number.isNaN(temperatureC + relativeHumidity)) return Number.NaN;
  if (!(temperatureC > GROWTH_ABOVE_C && temperatureC < GROWTH_BELOW_C)) return NO_GROWTH;
  const critical = criticalHumidityPercent(temperatureC, p);
  const humidity = 100 * relativeHumidity;
  // Just above 0 °C the curve rounds to 100 and leaves no room for growth.
  if (humidity < critical || critical >= 100) return NO_GROWTH;
  const x = (critical - humidity) / (critical - 100);
  return p.ceilingBase + x * (p.ceilingLinear - p.ceilingQuadratic * x);
}

/**
 * Index that mold would reach in the end in constant air; 0 where nothing grows.
 *
 * A kernel without checks or allocation; NaN in gives NaN out.
 *
 * @param temperatureC surface temperature [°C]
 * @param relativeHumidity at the surface [fraction 0..1]
 * @param p parameters of the surface, see `moldParameters`
 * @source Ojanen, Viitanen et al. 2010 (`moldSources.sensitivityClasses`)
 */
export function largestMoldIndex(temperatureC: number, relativeHumidity: number, p: MoldParameters): number {
  const ceiling = growthCeiling(temperatureC, relativeHumidity, p);
  return ceiling === NO_GROWTH ? 0 : ceiling;
}

/**
 * Growth of the index per hour in air that allows growth, towards a known ceiling; 0 at or above the ceiling.
 *
 * A kernel without checks or allocation. Valid above the critical humidity and for 0 < T < 50 °C.
 *
 * @param index mold index now
 * @param ceiling from `largestMoldIndex` for the same air
 * @param temperatureC surface temperature [°C]
 * @param relativeHumidity at the surface [fraction 0..1]
 * @param p parameters of the surface, see `moldParameters`
 * @returns index per hour
 * @source Hukka and Viitanen 1999 (`moldSources.growthModel`)
 */
export function moldGrowthPerHour(
  index: number,
  ceiling: number,
  temperatureC: number,
  relativeHumidity: number,
  p: MoldParameters,
): number {
  if (index >= ceiling) return 0;
  const intensity = index < 1 ? p.earlyGrowth : p.lateGrowth;
  const slowDown = 1 - Math.exp(SLOW_DOWN * (index - ceiling));
  return (
    (intensity * slowDown) / (HOURS_PER_WEEK * weeksToFirstGrowth(temperatureC, 100 * relativeHumidity, p))
  );
}
