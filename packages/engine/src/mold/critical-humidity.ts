import type { MoldParameters } from './classes.ts';

/** Mold grows only between these temperatures [°C], both excluded. */
export const GROWTH_ABOVE_C = 0;
export const GROWTH_BELOW_C = 50;

/**
 * Critical humidity [% RH] for 0 < T < 50 °C, without checks: the curve for pine sapwood and the floor of the class.
 * @source Hukka and Viitanen 1999 (`moldSources.growthModel`); floor by class (`moldSources.sensitivityClasses`)
 */
export function criticalHumidityPercent(temperatureC: number, p: MoldParameters): number {
  const t = temperatureC;
  const curve = 100 + t * (-3.13 + t * (0.16 - 0.00267 * t));
  const floor = 100 * p.humidityFloor;
  if (p.criticalHumidity === 'curve-then-floor') return t <= p.floorAboveC ? curve : floor;
  return Math.max(curve, floor);
}

/**
 * Lowest relative humidity at the surface at which mold grows [fraction].
 *
 * Null at or below 0 °C and at or above 50 °C, where nothing grows at any humidity; null also for NaN.
 *
 * @param temperatureC surface temperature [°C]
 * @param p parameters of the surface, see `moldParameters`
 * @source Hukka and Viitanen 1999 (`moldSources.growthModel`)
 */
export function criticalRelativeHumidity(temperatureC: number, p: MoldParameters): number | null {
  if (!(temperatureC > GROWTH_ABOVE_C && temperatureC < GROWTH_BELOW_C)) return null;
  return criticalHumidityPercent(temperatureC, p) / 100;
}
