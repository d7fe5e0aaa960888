import { HOURS_PER_YEAR } from '../calendar.ts';
import { monthMeans } from '../monthly.ts';
import type { Place } from '../year.ts';
import { spreadOverYear } from './month-curve.ts';

/**
 * Share of clear-sky radiation that a month gets where nothing is known: the mean over the 264 months of the built-in
 * stations against the same clear-sky formula; standard deviation 0.10, from 0.40 to 0.97 (computed).
 */
export const TYPICAL_CLEARNESS = 0.73;

/** Swing of an hour's clearness with the weather, and its limits; no source. */
const CLEARNESS_SWING = 0.35;
const CLEARNESS_MIN = 0.1;
const CLEARNESS_MAX = 1.1;

const PASSES = 40;

/**
 * Global horizontal radiation of a cloudless sky, mean of each hour, W/m²: 1098 cos z · exp(−0.059 / cos z), with the
 * sun at the middle of the hour.
 *
 * The brightest hours in the files of the built-in stations pass it by 6 to 26 % (computed; one island by more).
 * Sources: Haurwitz, Insolation in relation to cloudiness and cloud density, Journal of Meteorology 2 (1945), in the
 * form of the 1940s papers as later quoted; Spencer, Fourier series representation of the position of the sun, Search 2
 * (1971), for declination and equation of time. Both from memory.
 */
export function clearSkyWPerM2(place: Place): Float64Array {
  const radians = Math.PI / 180;
  const sinLatitude = Math.sin(place.latitudeDeg * radians);
  const cosLatitude = Math.cos(place.latitudeDeg * radians);
  const clear = new Float64Array(HOURS_PER_YEAR);
  for (let hour = 0; hour < HOURS_PER_YEAR; hour++) {
    const { declination, equationOfTimeMin } = sunOfDay(Math.floor(hour / 24));
    const sunTimeH =
      (hour % 24) + 0.5 + (4 * (place.longitudeDeg - 15 * place.utcOffsetHours) + equationOfTimeMin) / 60;
    const hourAngle = 15 * (sunTimeH - 12) * radians;
    const cosZenith =
      sinLatitude * Math.sin(declination) + cosLatitude * Math.cos(declination) * Math.cos(hourAngle);
    if (cosZenith > 0) clear[hour] = 1098 * cosZenith * Math.exp(-0.059 / cosZenith);
  }
  return clear;
}

/**
 * Hourly global horizontal radiation, W/m²: clear sky times a clearness that swings with the weather and whose monthly
 * level is corrected until the monthly means are met. Where a mean is not known the typical clearness is used.
 * @param monthlyMeans twelve means over all hours, W/m², `undefined` where not known
 * @param sky weather in −1 (dull) to 1 (bright), one value per hour
 * @returns the hours, and whether all known means were met to 0.5 W/m² (they cannot be where they exceed a clear sky)
 */
export function synthesizeSolar(
  place: Place,
  monthlyMeans: readonly (number | undefined)[],
  sky: Float64Array,
): { globalHorizontalWPerM2: Float64Array; met: boolean } {
  const clear = clearSkyWPerM2(place);
  const clearMeans = monthMeans(clear);
  const targets = monthlyMeans.map((mean, m) => mean ?? TYPICAL_CLEARNESS * clearMeans[m]!);
  const level = targets.map(() => TYPICAL_CLEARNESS);
  const levelCurve = new Float64Array(HOURS_PER_YEAR);
  const global = new Float64Array(HOURS_PER_YEAR);
  let worst = Infinity;
  for (let pass = 0; pass < PASSES; pass++) {
    spreadOverYear(level, levelCurve);
    for (let hour = 0; hour < HOURS_PER_YEAR; hour++) {
      const clearness = levelCurve[hour]! + CLEARNESS_SWING * sky[hour]!;
      global[hour] = clear[hour]! * Math.min(CLEARNESS_MAX, Math.max(CLEARNESS_MIN, clearness));
    }
    const means = monthMeans(global);
    worst = Math.max(...targets.map((target, m) => Math.abs(target - means[m]!)));
    if (worst < 0.1) break;
    targets.forEach((target, m) => {
      // In the polar night there is nothing to correct.
      if (clearMeans[m]! > 1) level[m]! += (target - means[m]!) / clearMeans[m]!;
      level[m] = Math.min(2, Math.max(-0.5, level[m]!));
    });
  }
  return { globalHorizontalWPerM2: global, met: worst < 0.5 };
}

/** Declination (radians) and equation of time (minutes) on a day of the year, 0..364. */
function sunOfDay(day: number): { declination: number; equationOfTimeMin: number } {
  const a = (2 * Math.PI * day) / 365;
  return {
    declination:
      0.006918 -
      0.399912 * Math.cos(a) +
      0.070257 * Math.sin(a) -
      0.006758 * Math.cos(2 * a) +
      0.000907 * Math.sin(2 * a) -
      0.002697 * Math.cos(3 * a) +
      0.00148 * Math.sin(3 * a),
    equationOfTimeMin:
      229.18 *
      (0.000075 +
        0.001868 * Math.cos(a) -
        0.032077 * Math.sin(a) -
        0.014615 * Math.cos(2 * a) -
        0.040849 * Math.sin(2 * a)),
  };
}
