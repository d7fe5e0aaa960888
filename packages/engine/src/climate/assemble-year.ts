import type { Notice } from '../numerics/notice.ts';
import { humidityRatioFromVaporPressure } from '../psychrometrics/humidity-ratio.ts';
import { saturationPressurePa } from '../psychrometrics/saturation-pressure.ts';
import { pressureAtAltitudePa } from '../psychrometrics/standard-pressure.ts';
import { HOURS_PER_YEAR, hourInWords } from './calendar.ts';
import { fillGaps } from './fill-gaps.ts';
import type { RawHours } from './hourly-rows.ts';
import {
  dewPointFromRelativeHumidity,
  humidityDisagreement,
  lowerDewPointToDryBulb,
} from './humidity-columns.ts';
import { failed, type IssueLog, type ReadResult } from './read-issue.ts';
import { liquidSaturationPressurePa } from './station-dew-point.ts';
import type { ClimateRepairs, FilledGap, Place } from './year.ts';

/** Annual mean wind that hardly any inhabited place has, m/s; above it the unit is doubtful. No source. */
const WINDY_PLACE_M_PER_S = 9;

/** Share by which the mean pressure may differ from that of the standard atmosphere at the elevation. No source. */
const PRESSURE_SHARE = 0.04;

/** Gaps named one by one in a notice. */
const GAPS_NAMED = 3;

/** Turns rows into a checked year: humidity column, gaps, limits, notices. Fails with everything in the log. */
export function assembleYear(
  raw: RawHours,
  place: Place | undefined,
  source: string,
  log: IssueLog,
): ReadResult {
  const fromRelativeHumidity = dewPointFromRelativeHumidity(raw);
  const filled = fillGaps(raw, log);
  const lowered = lowerDewPointToDryBulb(raw, log);
  if (log.count > 0 || place === undefined) return failed(log);

  const zeroed = zeroNegativeSolar(raw.globalHorizontalWPerM2);
  const humidity = humidityOf(raw.temperatureC, raw.dewPointC, raw.pressurePa);
  const repairs: ClimateRepairs = {
    count: filled.reduce(
      (sum, gap) => sum + gap.hours * (gap.quantity === 'whole hours' ? 6 : 1),
      lowered + zeroed,
    ),
    filled,
    dewPointFromRelativeHumidity: fromRelativeHumidity,
    dewPointLowered: lowered,
    negativeSolarZeroed: zeroed,
  };
  const years = raw.firstYear <= raw.lastYear ? yearsInWords(raw) : '';
  return {
    ok: true,
    year: {
      place,
      temperatureC: raw.temperatureC,
      relativeHumidity: humidity.relativeHumidity,
      humidityRatio: humidity.humidityRatio,
      pressurePa: raw.pressurePa,
      windSpeedMPerS: raw.windSpeedMPerS,
      windFromDeg: raw.windFromDeg,
      globalHorizontalWPerM2: raw.globalHorizontalWPerM2,
      source: `${source}${years}`,
      kind: raw.firstYear < raw.lastYear || /\bTMY/i.test(source) ? 'typical-year-file' : 'single-year-file',
      notices: noticesOf(raw, place, repairs, humidity.cappedHours),
      repairs,
    },
  };
}

/**
 * Humidity ratio and relative humidity of every hour from dry bulb and station dew point (over liquid water).
 * `cappedHours` counts the hours in which freezing air holds more vapor than ice allows and relative humidity is 1.
 */
export function humidityOf(
  temperatureC: Float64Array,
  stationDewPoint: Float64Array,
  pressurePa: Float64Array,
): { humidityRatio: Float64Array; relativeHumidity: Float64Array; cappedHours: number } {
  const humidityRatio = new Float64Array(HOURS_PER_YEAR);
  const relativeHumidity = new Float64Array(HOURS_PER_YEAR);
  let cappedHours = 0;
  for (let hour = 0; hour < HOURS_PER_YEAR; hour++) {
    const vaporPressure = liquidSaturationPressurePa(stationDewPoint[hour]!);
    humidityRatio[hour] = humidityRatioFromVaporPressure(vaporPressure, pressurePa[hour]!);
    const share = vaporPressure / saturationPressurePa(temperatureC[hour]!);
    // A rounding error above 1 is not worth counting; the ice limit is passed by whole percents.
    if (share > 1.001) cappedHours++;
    relativeHumidity[hour] = Math.min(share, 1);
  }
  return { humidityRatio, relativeHumidity, cappedHours };
}

/** Says in how many freezing hours the relative humidity stands at 1 although the air holds more vapor than that. */
export function overIceNotice(hours: number): Notice | undefined {
  if (hours === 0) return undefined;
  return {
    code: 'relative-humidity-capped-over-ice',
    message:
      `In ${hours} freezing hours the air holds more vapor than saturation over ice allows (stations state dew point ` +
      'over liquid water); relative humidity is given as 100 % there, the humidity ratio as it is.',
  };
}

function zeroNegativeSolar(series: Float64Array): number {
  let count = 0;
  for (let hour = 0; hour < HOURS_PER_YEAR; hour++) {
    if (series[hour]! < 0) {
      series[hour] = 0;
      count++;
    }
  }
  return count;
}

function yearsInWords(raw: RawHours): string {
  return raw.firstYear === raw.lastYear
    ? `, year ${raw.firstYear}`
    : `, months from the years ${raw.firstYear} to ${raw.lastYear}`;
}

function noticesOf(raw: RawHours, place: Place, repairs: ClimateRepairs, cappedHours: number): Notice[] {
  const notices: (Notice | undefined)[] = [
    filledNotice(repairs.filled),
    repairs.dewPointFromRelativeHumidity === 0
      ? undefined
      : {
          code: 'dew-point-from-relative-humidity',
          message: `${repairs.dewPointFromRelativeHumidity} hours had no dew point; it was worked out from the relative humidity.`,
        },
    repairs.dewPointLowered === 0
      ? undefined
      : {
          code: 'dew-point-lowered',
          message: `In ${repairs.dewPointLowered} hours the dew point was above the dry bulb by up to 1 K and was set to it.`,
        },
    repairs.negativeSolarZeroed === 0
      ? undefined
      : {
          code: 'negative-solar-zeroed',
          message: `In ${repairs.negativeSolarZeroed} hours the solar radiation was slightly negative and was set to zero.`,
        },
    raw.leapDayHours === 0
      ? undefined
      : {
          code: 'leap-day-dropped',
          message: `The ${raw.leapDayHours} hours of February 29 were left out; a climate year has 8760 hours.`,
        },
    raw.backwardSteps <= 1
      ? undefined
      : {
          code: 'hours-out-of-order',
          message: `The lines are not in the order of the year (${raw.backwardSteps} steps back); they were sorted by month, day and hour.`,
        },
    humidityDisagreement(raw),
    overIceNotice(cappedHours),
    pressureNotice(raw.pressurePa, place),
    windNotice(raw.windSpeedMPerS),
  ];
  return notices.filter((notice) => notice !== undefined);
}

function filledNotice(filled: readonly FilledGap[]): Notice | undefined {
  if (filled.length === 0) return undefined;
  const named = filled
    .slice(0, GAPS_NAMED)
    .map((gap) => `${gap.quantity}, ${gap.hours} h from ${hourInWords(gap.firstHour)}`)
    .join('; ');
  const rest = filled.length > GAPS_NAMED ? `; and ${filled.length - GAPS_NAMED} more` : '';
  return {
    code: 'gaps-filled',
    message: `${filled.length} short ${filled.length === 1 ? 'gap was' : 'gaps were'} bridged on a straight line: ${named}${rest}.`,
  };
}

function pressureNotice(pressurePa: Float64Array, place: Place): Notice | undefined {
  const mean = meanOf(pressurePa);
  const standard = pressureAtAltitudePa(place.elevationM);
  if (Math.abs(mean / standard - 1) <= PRESSURE_SHARE) return undefined;
  return {
    code: 'pressure-against-elevation',
    message:
      `The mean pressure of ${(mean / 1000).toFixed(1)} kPa does not suit an elevation of ${place.elevationM} m ` +
      `(about ${(standard / 1000).toFixed(1)} kPa). It may be reduced to sea level; humidity ratios are off in proportion.`,
  };
}

function windNotice(windSpeed: Float64Array): Notice | undefined {
  const mean = meanOf(windSpeed);
  if (mean <= WINDY_PLACE_M_PER_S) return undefined;
  return {
    code: 'wind-implausible',
    message:
      `The mean wind of ${mean.toFixed(1)} m/s is more than almost any inhabited place has. ` +
      'The column may be in km/h, mph or knots.',
  };
}

function meanOf(series: Float64Array): number {
  let sum = 0;
  for (let hour = 0; hour < series.length; hour++) sum += series[hour]!;
  return sum / series.length;
}
