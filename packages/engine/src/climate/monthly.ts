import { vaporPressureFromHumidityRatioPa } from '../psychrometrics/humidity-ratio.ts';
import { HOURS_PER_YEAR, MONTH_START_HOUR } from './calendar.ts';
import { stationDewPointC } from './station-dew-point.ts';
import type { ClimateYear } from './year.ts';

/** What a month is like on average. Means are over all its hours. */
export interface ClimateMonth {
  /** Mean dry bulb, °C. */
  readonly temperatureMeanC: number;
  /** Mean of (highest minus lowest hour) of the days, K. */
  readonly dailyRangeK: number;
  /** Mean dew point as weather stations report it (over liquid water), °C. */
  readonly dewPointMeanC: number;
  /** Mean humidity ratio, kg/kg dry air; above that of the mean dew point, because saturation rises steeply. */
  readonly humidityRatioMean: number;
  /** Mean station pressure, Pa. */
  readonly pressurePa: number;
  readonly windSpeedMPerS: number;
  /** Lowest hour, °C, where known. */
  readonly temperatureMinC?: number;
  /** Highest hour, °C, where known. */
  readonly temperatureMaxC?: number;
  /** Mean solar radiation on a horizontal plane over all hours, nights included, W/m², where known. */
  readonly globalHorizontalMeanWPerM2?: number;
}

/** Twelve months, January first, and what they come from. */
export interface MonthlyClimate {
  readonly months: readonly ClimateMonth[];
  readonly source: string;
}

/**
 * Monthly means, daily ranges and extremes of a year of hours.
 * @param year a complete climate year
 */
export function monthlyOf(year: ClimateYear): MonthlyClimate {
  const dewPoint = new Float64Array(HOURS_PER_YEAR);
  for (let hour = 0; hour < HOURS_PER_YEAR; hour++) {
    dewPoint[hour] = stationDewPointC(
      vaporPressureFromHumidityRatioPa(year.humidityRatio[hour]!, year.pressurePa[hour]!),
    );
  }
  const temperature = monthMeans(year.temperatureC);
  const range = meanDailyRanges(year.temperatureC);
  const extremes = monthExtremes(year.temperatureC);
  const dew = monthMeans(dewPoint);
  const humidity = monthMeans(year.humidityRatio);
  const pressure = monthMeans(year.pressurePa);
  const wind = monthMeans(year.windSpeedMPerS);
  const solar = monthMeans(year.globalHorizontalWPerM2);
  const months = temperature.map(
    (temperatureMeanC, m): ClimateMonth => ({
      temperatureMeanC,
      dailyRangeK: range[m]!,
      dewPointMeanC: dew[m]!,
      humidityRatioMean: humidity[m]!,
      pressurePa: pressure[m]!,
      windSpeedMPerS: wind[m]!,
      temperatureMinC: extremes[m]!.min,
      temperatureMaxC: extremes[m]!.max,
      globalHorizontalMeanWPerM2: solar[m]!,
    }),
  );
  return { months, source: year.source };
}

/** Mean of an hourly series over each month, January first. */
export function monthMeans(series: Float64Array): number[] {
  const means: number[] = [];
  for (let month = 0; month < 12; month++) {
    const end = MONTH_START_HOUR[month + 1]!;
    let sum = 0;
    for (let hour = MONTH_START_HOUR[month]!; hour < end; hour++) sum += series[hour]!;
    means.push(sum / (end - MONTH_START_HOUR[month]!));
  }
  return means;
}

/** Mean over the days of each month of the day's highest minus its lowest hour. */
export function meanDailyRanges(series: Float64Array): number[] {
  const ranges: number[] = [];
  for (let month = 0; month < 12; month++) {
    const end = MONTH_START_HOUR[month + 1]!;
    let sum = 0;
    for (let day = MONTH_START_HOUR[month]!; day < end; day += 24) {
      let lowest = Infinity;
      let highest = -Infinity;
      for (let hour = day; hour < day + 24; hour++) {
        if (series[hour]! < lowest) lowest = series[hour]!;
        if (series[hour]! > highest) highest = series[hour]!;
      }
      sum += highest - lowest;
    }
    ranges.push((24 * sum) / (end - MONTH_START_HOUR[month]!));
  }
  return ranges;
}

/** Lowest and highest hour of each month. */
export function monthExtremes(series: Float64Array): { min: number; max: number }[] {
  const extremes: { min: number; max: number }[] = [];
  for (let month = 0; month < 12; month++) {
    let min = Infinity;
    let max = -Infinity;
    for (let hour = MONTH_START_HOUR[month]!; hour < MONTH_START_HOUR[month + 1]!; hour++) {
      if (series[hour]! < min) min = series[hour]!;
      if (series[hour]! > max) max = series[hour]!;
    }
    extremes.push({ min, max });
  }
  return extremes;
}
