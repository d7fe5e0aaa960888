import { HOURS_PER_YEAR, monthOfHour } from '../calendar.ts';
import { monthMeans } from '../monthly.ts';
import { spreadOverYear } from './month-curve.ts';

/** Share by which the mean wind rises in the afternoon and falls before dawn. Common practice, no source. */
const DAILY_SHARE = 0.3;

/** Hour of the day at which the wind is strongest, h, local standard time. */
const WINDIEST_H = 15;

/** Sizes of the slow (fronts) and the fast (gusty spells) variation, as logarithms. Chosen, no source. */
const FRONT_SIZE = 0.65;
const SPELL_SIZE = 0.6;

/**
 * Hourly wind speed, m/s: a yearly course, an afternoon breeze, windy and calm days. Monthly means are met exactly by a
 * factor for each month.
 * @param monthlyMeans twelve monthly means, m/s
 * @param fronts slow variation in −1..1, one value per hour
 * @param spells fast variation in −1..1
 */
export function synthesizeWindSpeed(
  monthlyMeans: readonly number[],
  fronts: Float64Array,
  spells: Float64Array,
): Float64Array {
  const speed = new Float64Array(HOURS_PER_YEAR);
  spreadOverYear(monthlyMeans, speed);
  for (let hour = 0; hour < HOURS_PER_YEAR; hour++) {
    const clock = (hour % 24) + 1;
    const daily = 1 + DAILY_SHARE * Math.cos((2 * Math.PI * (clock - WINDIEST_H)) / 24);
    speed[hour]! *= daily * Math.exp(FRONT_SIZE * fronts[hour]! + SPELL_SIZE * spells[hour]!);
  }
  const means = monthMeans(speed);
  for (let hour = 0; hour < HOURS_PER_YEAR; hour++) {
    const m = monthOfHour(hour);
    if (means[m]! > 0) speed[hour]! *= monthlyMeans[m]! / means[m]!;
  }
  return speed;
}

/**
 * Hourly wind direction, degrees from north: southerly in warm air, northwesterly in cold (mirrored south of the
 * equator), with some wandering. An assumption: monthly statistics say nothing about direction.
 * @param warmth fronts of the temperature in −1..1
 * @param wander in −1..1
 */
export function synthesizeWindDirection(
  warmth: Float64Array,
  wander: Float64Array,
  latitudeDeg: number,
): Float64Array {
  return warmth.map((warm, hour) => {
    const from = 250 - 70 * warm + 45 * wander[hour]!;
    return latitudeDeg >= 0 ? from : (((540 - from) % 360) + 360) % 360;
  });
}
