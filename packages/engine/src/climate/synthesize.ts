import { EngineError } from '../numerics/engine-error.ts';
import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import { seededRandom } from '../numerics/seeded-random.ts';
import type { Ending } from '../numerics/solution.ts';
import { humidityOf, overIceNotice } from './assemble-year.ts';
import { checkMonthly } from './given-months.ts';
import type { MonthlyClimate } from './monthly.ts';
import { frontSeries } from './synthesis/fronts.ts';
import { synthesizeDewPoint } from './synthesis/humidity.ts';
import { curveWithMeans } from './synthesis/month-curve.ts';
import { synthesizeSolar, TYPICAL_CLEARNESS } from './synthesis/solar.ts';
import { synthesizeTemperature, temperatureTargets } from './synthesis/temperature.ts';
import { synthesizeWindDirection, synthesizeWindSpeed } from './synthesis/wind.ts';
import type { ClimateYear, Place } from './year.ts';

/** A synthesized year and how the corrections ended; residuals in K and in kg/kg. */
export interface SynthesizedYear extends ClimateYear {
  readonly temperatureEnding: Ending;
  readonly humidityEnding: Ending;
}

/** Days from one front's high to the next, h: three to seven days. Common knowledge of mid-latitude weather. */
const FRONT_CYCLE_H: readonly [number, number] = [72, 168];

/** Longer spells of warm or cold weather, h: one to three weeks. Chosen so that extremes need no abrupt fronts. */
const SPELL_CYCLE_H: readonly [number, number] = [168, 504];

/** Mean daily range that is off by more than this is told, K. */
const DAILY_RANGE_TOLERANCE_K = 1;

/** Windy hours and lulls, h. */
const GUST_CYCLE_H: readonly [number, number] = [8, 40];

/**
 * Makes 8760 hours that agree with monthly statistics: the monthly means of dry bulb to 0.01 K and of humidity ratio to
 * 0.01 g/kg, the mean daily ranges, and no hour beyond the monthly extremes; with a daily course (warmest at 15:00),
 * fronts of three to seven days and longer spells, dew point that follows the fronts and never passes the dry bulb.
 *
 * The same months, place and seed give the same hours; another seed gives another order of weather with the same
 * statistics. Pressure follows the monthly means without weather. What the months do not tell is assumed and named in a
 * notice: extremes, clearness of the sky, wind direction. A real year has sharper single events; use it where there is
 * a weather file.
 * Method: our own; sizes from the statistics of the built-in stations (computed).
 * @param monthly twelve months as `monthlyOf`, `checkMonthly` or a station gives them
 * @param seed any finite number
 * @throws EngineError `bad-input` when the monthly values cannot be (see `checkMonthly`), `out-of-range` or `not-finite`
 *   for a place that is none or a seed that is no number
 */
export function synthesizeYear(monthly: MonthlyClimate, place: Place, seed: number): SynthesizedYear {
  requireInput(monthly, place, seed);
  const { months } = monthly;
  const random = seededRandom(seed);
  const fronts = frontSeries(random, ...FRONT_CYCLE_H);
  const spells = frontSeries(random, ...SPELL_CYCLE_H);
  const humid = frontSeries(random, ...FRONT_CYCLE_H);
  const cloud = frontSeries(random, ...FRONT_CYCLE_H);
  const gusts = frontSeries(random, ...GUST_CYCLE_H);
  const wander = frontSeries(random, ...FRONT_CYCLE_H);

  const warmth = mixed(fronts, 0.55, spells, 0.45);
  const moist = mixed(warmth, 0.85, humid, 0.4);
  // Humid air is dull air, on the whole; the daily course is weaker under cloud.
  const sky = mixed(humid, -0.4, cloud, 0.6);
  const dayStrength = sky.map((bright) => 1 + 0.4 * bright);

  const { targets, assumedExtremes } = temperatureTargets(months);
  const temperature = synthesizeTemperature(targets, warmth, dayStrength);
  const pressurePa = curveWithMeans(months.map((month) => month.pressurePa));
  const humidity = synthesizeDewPoint(months, temperature.temperatureC, pressurePa, moist);
  const { humidityRatio, relativeHumidity, cappedHours } = humidityOf(
    temperature.temperatureC,
    humidity.dewPointC,
    pressurePa,
  );
  const knownSolar = months.map((month) => month.globalHorizontalMeanWPerM2);
  const solar = synthesizeSolar(place, knownSolar, sky);
  return {
    place,
    temperatureC: temperature.temperatureC,
    relativeHumidity,
    humidityRatio,
    pressurePa,
    windSpeedMPerS: synthesizeWindSpeed(
      months.map((month) => month.windSpeedMPerS),
      cloud,
      gusts,
    ),
    windFromDeg: synthesizeWindDirection(warmth, wander, place.latitudeDeg),
    globalHorizontalWPerM2: solar.globalHorizontalWPerM2,
    source: `Hours synthesized from monthly values (seed ${seed}): ${monthly.source}`,
    kind: 'synthesized',
    notices: noticesOf({
      assumedExtremes,
      assumedClearness: knownSolar.filter((mean) => mean === undefined).length,
      solarMet: solar.met,
      dailyRangeResidualK: temperature.dailyRangeResidualK,
      temperatureEnding: temperature.ending,
      humidityEnding: humidity.ending,
      overIce: overIceNotice(cappedHours),
    }),
    repairs: {
      count: 0,
      filled: [],
      dewPointFromRelativeHumidity: 0,
      dewPointLowered: 0,
      negativeSolarZeroed: 0,
    },
    temperatureEnding: temperature.ending,
    humidityEnding: humidity.ending,
  };
}

function requireInput(monthly: MonthlyClimate, place: Place, seed: number): void {
  if (!Number.isFinite(seed)) throw new EngineError('not-finite', `seed must be a number; got ${seed}`);
  requireRange('latitude in degrees', place.latitudeDeg, -90, 90);
  requireRange('longitude in degrees', place.longitudeDeg, -180, 180);
  requireRange('time zone in hours', place.utcOffsetHours, -12, 14);
  const checked = checkMonthly(monthly.months, monthly.source);
  if (checked.ok) return;
  throw new EngineError('bad-input', checked.issues.map((issue) => issue.message).join(' '));
}

function mixed(a: Float64Array, shareOfA: number, b: Float64Array, shareOfB: number): Float64Array {
  return a.map((value, hour) => shareOfA * value + shareOfB * b[hour]!);
}

interface Outcome {
  readonly assumedExtremes: number;
  readonly assumedClearness: number;
  readonly solarMet: boolean;
  readonly dailyRangeResidualK: number;
  readonly temperatureEnding: Ending;
  readonly humidityEnding: Ending;
  readonly overIce: Notice | undefined;
}

function noticesOf(outcome: Outcome): Notice[] {
  const notices: (Notice | undefined)[] = [
    {
      code: 'synthesized-hours',
      message:
        'The hours are generated from monthly statistics; they are not a record. ' +
        'Use a weather file of the place where there is one.',
    },
    {
      code: 'assumed-wind-direction',
      message: 'Wind directions are assumed: southerly in warm air, northwesterly in cold.',
    },
    outcome.assumedExtremes === 0
      ? undefined
      : {
          code: 'assumed-extremes',
          message: `Lowest and highest temperatures of ${outcome.assumedExtremes} months are not given and were estimated from means and daily ranges.`,
        },
    outcome.assumedClearness === 0
      ? undefined
      : {
          code: 'assumed-clearness',
          message: `Solar radiation of ${outcome.assumedClearness} months is not given; the sky is assumed to let through ${100 * TYPICAL_CLEARNESS} % of a clear sky's.`,
        },
    outcome.solarMet
      ? undefined
      : {
          code: 'solar-mean-not-met',
          message: 'A monthly mean of solar radiation is more than a clear sky gives and was not reached.',
        },
    outcome.dailyRangeResidualK <= DAILY_RANGE_TOLERANCE_K
      ? undefined
      : {
          code: 'daily-range-not-met',
          message: `A mean daily range is off by ${outcome.dailyRangeResidualK.toFixed(1)} K: it does not fit the extremes of its month.`,
        },
    notMet('temperature-mean-not-met', 'temperature', outcome.temperatureEnding, 1, 'K'),
    notMet('humidity-mean-not-met', 'humidity ratio', outcome.humidityEnding, 1000, 'g/kg'),
    outcome.overIce,
  ];
  return notices.filter((notice) => notice !== undefined);
}

function notMet(code: string, name: string, ending: Ending, scale: number, unit: string): Notice | undefined {
  if (ending.converged) return undefined;
  const off = (ending.residual * scale).toFixed(2);
  return {
    code,
    message: `A monthly mean of ${name} is off by ${off} ${unit}: the monthly values do not fit together.`,
  };
}
