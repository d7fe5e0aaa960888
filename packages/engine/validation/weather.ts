import { readWeather } from '../src/climate/read-weather.ts';
import { stationById } from '../src/climate/stations.ts';
import { synthesizeYear } from '../src/climate/synthesize.ts';
import type { ClimateYear } from '../src/climate/year.ts';
import { prototypeWeather } from '../test/season/prototype-year.ts';

/** Weather that is no station: the stylized year of the prototype, from monthly means. */
export const STYLIZED_EAST = 'stylized-east-carolina';

/** Seed of the synthesized hours; another seed is another order of the same weather. */
const SEED = 1;

/** A decompressed weather file. */
export interface WeatherFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/**
 * The year of a place: from its file where there is one, else synthesized from the built-in monthly statistics.
 * @param fileOf finds the file of a station id
 * @throws Error for an unknown id or a file that cannot be read
 */
export function yearOf(place: string, fileOf: (station: string) => WeatherFile | undefined): ClimateYear {
  if (place === STYLIZED_EAST) return stylizedYear();
  const file = fileOf(place);
  if (file !== undefined) {
    const read = readWeather(file.bytes, file.name);
    if (read.ok) return read.year;
    throw new Error(read.issues.map((issue) => issue.message).join('\n'));
  }
  const station = stationById(place);
  if (station === undefined) throw new Error(`${place} is neither a weather file nor a built-in station`);
  return synthesizeYear(station.monthly, station.place, SEED);
}

function stylizedYear(): ClimateYear {
  const weather = prototypeWeather();
  const none = new Float64Array(weather.temperatureC.length);
  return {
    place: {
      name: 'Stylized east of North Carolina',
      latitudeDeg: 36,
      longitudeDeg: -77.5,
      elevationM: 10,
      utcOffsetHours: -5,
    },
    temperatureC: Float64Array.from(weather.temperatureC),
    relativeHumidity: none,
    humidityRatio: Float64Array.from(weather.humidityRatio),
    pressurePa: Float64Array.from(weather.pressurePa),
    windSpeedMPerS: Float64Array.from(weather.windSpeedMPerS),
    windFromDeg: none,
    globalHorizontalWPerM2: none,
    source:
      'Monthly means of temperature and dew point joined by straight lines, one day like the next, 2 m/s of wind, no sun',
    kind: 'synthesized',
    notices: [],
    repairs: {
      count: 0,
      filled: [],
      dewPointFromRelativeHumidity: 0,
      dewPointLowered: 0,
      negativeSolarZeroed: 0,
    },
  };
}
