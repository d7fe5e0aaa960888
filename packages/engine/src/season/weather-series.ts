import { HOURS_PER_YEAR, monthOfHour } from '../climate/calendar.ts';
import { EngineError } from '../numerics/engine-error.ts';
import { loopConstants } from './loop-constants.ts';
import type { SeasonWeather } from './season-case.ts';

const { MASS_RATIO } = loopConstants;

/** The weather of a year in equal steps of one or more hours, with what the calendar says. */
export interface WeatherSeries {
  readonly steps: number;
  readonly hoursPerStep: number;
  readonly temperatureC: Float64Array;
  readonly humidityRatio: Float64Array;
  readonly vaporPa: Float64Array;
  readonly pressurePa: Float64Array;
  readonly windMPerS: Float64Array;
  readonly solarWPerM2: Float64Array;
  readonly month: Uint8Array;
  readonly yearCos: Float64Array;
  readonly yearSin: Float64Array;
}

/** Weather by the hour and in blocks for spin-up, with means. */
export interface PreparedWeather {
  readonly hourly: WeatherSeries;
  readonly coarse: WeatherSeries;
  readonly monthMeanC: Float64Array;
  readonly meanPressurePa: number;
  readonly meanC: number;
}

/** Hours in one step of the spin-up: day and night apart. */
export const COARSE_HOURS = 12;

/**
 * Checks the weather and prepares it for any number of cases.
 * @throws EngineError `bad-input` for arrays that are not 8760 long; `out-of-range` or `not-finite` naming the hour
 */
export function prepareWeather(weather: SeasonWeather): PreparedWeather {
  const temperatureC = hours('temperature in °C', weather.temperatureC, -60, 60);
  const humidityRatio = hours('humidity ratio in kg/kg', weather.humidityRatio, 0, 0.1);
  const pressurePa = hours('pressure in Pa', weather.pressurePa, 50_000, 120_000);
  const windMPerS = hours('wind speed in m/s', weather.windSpeedMPerS, 0, 100);
  const sun = weather.globalHorizontalWPerM2;
  const solarWPerM2 =
    sun === undefined ? new Float64Array(HOURS_PER_YEAR) : hours('solar radiation in W/m²', sun, 0, 2000);
  const hourly = calendar(1, temperatureC, humidityRatio, pressurePa, windMPerS, solarWPerM2);
  const monthMeanC = new Float64Array(12);
  const count = new Float64Array(12);
  for (let i = 0; i < HOURS_PER_YEAR; i++) {
    const m = hourly.month[i]!;
    monthMeanC[m] = monthMeanC[m]! + temperatureC[i]!;
    count[m] = count[m]! + 1;
  }
  for (let m = 0; m < 12; m++) monthMeanC[m] = monthMeanC[m]! / count[m]!;
  return {
    hourly,
    coarse: calendar(
      COARSE_HOURS,
      blocks(temperatureC),
      blocks(humidityRatio),
      blocks(pressurePa),
      blocks(windMPerS),
      blocks(solarWPerM2),
    ),
    monthMeanC,
    meanPressurePa: mean(pressurePa),
    meanC: mean(temperatureC),
  };
}

function hours(name: string, values: ArrayLike<number>, min: number, max: number): Float64Array {
  if (values.length !== HOURS_PER_YEAR) {
    throw new EngineError(
      'bad-input',
      `weather ${name} must have ${HOURS_PER_YEAR} hours; got ${values.length}`,
    );
  }
  const out = values instanceof Float64Array ? values : Float64Array.from(values);
  for (let i = 0; i < out.length; i++) {
    const value = out[i]!;
    if (!(value >= min && value <= max)) {
      throw new EngineError(
        Number.isFinite(value) ? 'out-of-range' : 'not-finite',
        `weather ${name} must be from ${min} to ${max}; hour ${i} has ${value}`,
      );
    }
  }
  return out;
}

function blocks(values: Float64Array): Float64Array {
  const out = new Float64Array(values.length / COARSE_HOURS);
  for (let i = 0; i < values.length; i++) {
    const block = Math.floor(i / COARSE_HOURS);
    out[block] = out[block]! + values[i]! / COARSE_HOURS;
  }
  return out;
}

function mean(values: Float64Array): number {
  return values.reduce((sum, v) => sum + v, 0) / values.length;
}

function calendar(
  hoursPerStep: number,
  temperatureC: Float64Array,
  humidityRatio: Float64Array,
  pressurePa: Float64Array,
  windMPerS: Float64Array,
  solarWPerM2: Float64Array,
): WeatherSeries {
  const steps = temperatureC.length;
  const month = new Uint8Array(steps);
  const yearCos = new Float64Array(steps);
  const yearSin = new Float64Array(steps);
  const vaporPa = new Float64Array(steps);
  for (let i = 0; i < steps; i++) {
    month[i] = monthOfHour(i * hoursPerStep);
    const angle = (2 * Math.PI * (i + 0.5)) / steps;
    yearCos[i] = Math.cos(angle);
    yearSin[i] = Math.sin(angle);
    vaporPa[i] = (pressurePa[i]! * humidityRatio[i]!) / (MASS_RATIO + humidityRatio[i]!);
  }
  return {
    steps,
    hoursPerStep,
    temperatureC,
    humidityRatio,
    vaporPa,
    pressurePa,
    windMPerS,
    solarWPerM2,
    month,
    yearCos,
    yearSin,
  };
}
