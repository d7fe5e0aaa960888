import type { MoldParameters } from './classes.ts';
import { moldDecline } from './decline.ts';
import { growthCeiling, moldGrowthPerHour, NO_GROWTH } from './growth.ts';

/** The mold on a surface. Changed in place by `stepMoldIndex`. */
export interface MoldState {
  /** Mold index, 0..6. */
  index: number;
  /** Hours since growth stopped; 0 while it grows. */
  dryHours: number;
}

/** A clean surface: index 0 and no dry hours. */
export function cleanSurface(): MoldState {
  return { index: 0, dryHours: 0 };
}

/**
 * Moves the mold on a surface through one step of constant air, in place.
 *
 * A kernel for loops over a year: no checks, no allocation. Growth is an explicit step with the rate at its start, which
 * is what the published hourly calculations do, held at the ceiling so that a long step cannot pass it; decline is exact
 * for any step. Keep `hours` at 24 or less. A NaN in temperature or humidity makes the index NaN and keeps it so.
 *
 * @param state changed in place
 * @param temperatureC surface temperature [°C]
 * @param relativeHumidity at the surface [fraction 0..1]
 * @param hours length of the step [h], above 0
 * @param p parameters of the surface, see `moldParameters`
 * @source Hukka and Viitanen 1999; Ojanen, Viitanen et al. 2010
 */
export function stepMoldIndex(
  state: MoldState,
  temperatureC: number,
  relativeHumidity: number,
  hours: number,
  p: MoldParameters,
): void {
  const ceiling = growthCeiling(temperatureC, relativeHumidity, p);
  const { index } = state;
  if (ceiling === NO_GROWTH) {
    const dryBefore = state.dryHours;
    state.dryHours = dryBefore + hours;
    const left = index - p.declineFactor * moldDecline(dryBefore, state.dryHours);
    state.index = Math.max(left, 0);
    return;
  }
  state.dryHours = 0;
  if (index >= ceiling) return;
  const grown = index + hours * moldGrowthPerHour(index, ceiling, temperatureC, relativeHumidity, p);
  state.index = Math.min(grown, ceiling);
}
