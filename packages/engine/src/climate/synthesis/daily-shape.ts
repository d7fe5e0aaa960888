/** Hour of the day at which the air is warmest, h, local standard time (14 to 16 at most stations read here). */
const WARMEST_H = 15;

/** Hour of the day at which it is coldest, h: about sunrise over the year. */
const COLDEST_H = 6;

/**
 * The daily course of temperature without a unit at the end of each of the 24 hours: from its lowest at 06:00 up on
 * half a cosine to its highest at 15:00 and slowly down again; range 1, mean 0.
 *
 * Form and times fit the mean days of the built-in stations, whose warmest hour mostly ends at 14:00 to 16:00 (12:00 in the
 * trade winds) and coldest at 05:00 to 08:00 (computed from the hourly files).
 */
export const DAILY_SHAPE: Float64Array = dailyShape();

function dailyShape(): Float64Array {
  const shape = new Float64Array(24);
  let sum = 0;
  for (let k = 0; k < 24; k++) {
    const clock = k + 1;
    const sinceColdest = (clock - COLDEST_H + 24) % 24;
    const rise = WARMEST_H - COLDEST_H;
    const angle =
      sinceColdest <= rise
        ? Math.PI * (sinceColdest / rise - 1)
        : (Math.PI * (sinceColdest - rise)) / (24 - rise);
    shape[k] = Math.cos(angle) / 2;
    sum += shape[k]!;
  }
  for (let k = 0; k < 24; k++) shape[k]! -= sum / 24;
  return shape;
}
