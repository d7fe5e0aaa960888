/** Index lost per hour on the original wood: 0.032 a day in the first 6 hours, 0.016 a day after 24 hours. */
const FIRST_HOURS = 6;
const FIRST_RATE = 0.032 / 24;
const LATE_AFTER_HOURS = 24;
const LATE_RATE = 0.016 / 24;

/**
 * Index lost while the surface goes from `dryBefore` to `dryAfter` hours since growth stopped, on the original wood.
 * Multiply by the decline factor of the class. Nothing is lost between hours 6 and 24.
 *
 * A kernel without checks; `dryAfter` is not below `dryBefore`.
 *
 * @source Hukka and Viitanen 1999 (`moldSources.growthModel`)
 */
export function moldDecline(dryBefore: number, dryAfter: number): number {
  const early = dryBefore < FIRST_HOURS ? Math.min(dryAfter, FIRST_HOURS) - dryBefore : 0;
  const late = dryAfter > LATE_AFTER_HOURS ? dryAfter - Math.max(dryBefore, LATE_AFTER_HOURS) : 0;
  return FIRST_RATE * early + LATE_RATE * late;
}
