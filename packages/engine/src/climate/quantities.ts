/** The hourly columns that are read of a weather file, in the units of `RawHours`. */
export type QuantityKey =
  | 'temperatureC'
  | 'dewPointC'
  | 'relativeHumidityPercent'
  | 'pressurePa'
  | 'windSpeedMPerS'
  | 'windFromDeg'
  | 'globalHorizontalWPerM2';

/** A quantity with the range outside which a value cannot be weather. */
export interface Quantity {
  readonly key: QuantityKey;
  /** As it stands in messages. */
  readonly name: string;
  readonly min: number;
  readonly max: number;
}

/**
 * The quantities and their limits. The limits are a little wider than the extremes measured on land at stations where
 * houses stand (air −89 to 57 °C, dew point to 35 °C, station pressure 500 to 1085 hPa; from memory), and a solar hour
 * a little above the solar constant, which broken cloud can reach; small negative solar values are sensor offset.
 */
export const QUANTITIES: Readonly<Record<QuantityKey, Quantity>> = {
  temperatureC: { key: 'temperatureC', name: 'dry bulb', min: -90, max: 57 },
  dewPointC: { key: 'dewPointC', name: 'dew point', min: -90, max: 36 },
  relativeHumidityPercent: { key: 'relativeHumidityPercent', name: 'relative humidity', min: 0, max: 110 },
  pressurePa: { key: 'pressurePa', name: 'station pressure', min: 45_000, max: 110_000 },
  windSpeedMPerS: { key: 'windSpeedMPerS', name: 'wind speed', min: 0, max: 75 },
  windFromDeg: { key: 'windFromDeg', name: 'wind direction', min: 0, max: 360 },
  globalHorizontalWPerM2: {
    key: 'globalHorizontalWPerM2',
    name: 'global horizontal radiation',
    min: -20,
    max: 1500,
  },
};

/** Names and factors of the pressure units met in weather files, to Pa. */
const PRESSURE_UNITS: readonly (readonly [string, number])[] = [
  ['Pa', 1],
  ['mbar (hPa)', 100],
  ['kPa', 1000],
  ['inches of mercury', 3386.39],
  ['psi', 6894.76],
];

/**
 * The unit that a column seems to be in, judged by its smallest and largest value, when it does not fit the expected
 * one; `undefined` when no common unit fits.
 * @param lowest smallest value of the column as written in the file
 * @param highest largest value of the column as written in the file
 */
export function guessUnit(key: QuantityKey, lowest: number, highest: number): string | undefined {
  if (key === 'temperatureC' || key === 'dewPointC') {
    if (lowest >= 180 && highest <= 335) return 'kelvin';
    if (lowest >= -130 && highest <= 135) return 'degrees Fahrenheit';
    if (lowest >= -900 && highest <= 570) return 'tenths of a degree Celsius';
    return undefined;
  }
  if (key === 'pressurePa') {
    return guessPressureUnit(lowest, highest);
  }
  if (key === 'relativeHumidityPercent' && highest <= 1.1) return 'fractions 0 to 1';
  if (key === 'windSpeedMPerS' && lowest >= 0 && highest <= 270) return 'km/h or mph';
  if (key === 'globalHorizontalWPerM2') {
    if (highest <= 1.5) return 'kWh/m²';
    if (highest <= 5400) return 'kJ/m²';
  }
  return undefined;
}

/** Of the units that fit, the one in which the pressure comes nearest to where most houses stand, 95 kPa. */
function guessPressureUnit(lowest: number, highest: number): string | undefined {
  const { min, max } = QUANTITIES.pressurePa;
  let guess: string | undefined;
  let nearest = Infinity;
  for (const [unit, factor] of PRESSURE_UNITS) {
    if (!(lowest * factor >= min && highest * factor <= max)) continue;
    const distance = Math.abs(((lowest + highest) / 2) * factor - 95_000);
    if (distance < nearest) {
      nearest = distance;
      guess = unit;
    }
  }
  return guess;
}
