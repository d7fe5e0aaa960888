/** Reads a printed figure to SI by definitions of the units, written down here apart from the engine's. */

const INCH = 0.0254;
const FOOT = 12 * INCH;
const POUND = 0.45359237;
const GALLON = 231 * INCH ** 3;
const BTU = 1055.05585262;
/** 1 grain / (h ft² inHg), inHg 3386.389 Pa, in ng/(s m² Pa). */
const PERM = (POUND / 7000 / (3600 * FOOT ** 2 * 3386.389)) * 1e12;
/** h ft² °F/Btu in m² K/W. */
const R_VALUE = (3600 * FOOT ** 2 * (5 / 9)) / BTU;
/** Inch of water at 60 °F. */
const INCH_OF_WATER = 248.84;

function figure(text: string): number {
  const mixed = /^(-?\d+) (\d+)\/(\d+)$/.exec(text);
  if (mixed) return Number(mixed[1]) + Number(mixed[2]) / Number(mixed[3]);
  const fraction = /^(\d+)\/(\d+)$/.exec(text);
  if (fraction) return Number(fraction[1]) / Number(fraction[2]);
  return Number(text);
}

/** Factor to the unit that the engine keeps, by printed unit. */
const UNITS: Record<string, number> = {
  '': 1,
  '%': 0.01,
  points: 0.01,
  in: INCH,
  ft: FOOT,
  mil: INCH / 1000,
  m: 1,
  mm: 0.001,
  'ft²': FOOT ** 2,
  'm²': 1,
  perm: PERM,
  'ng/(s·m²·Pa)': 1,
  'cfm per 50 ft²': (FOOT ** 3 * 1000) / 60 / (50 * FOOT ** 2),
  'L/(s·m²)': 1,
  'pint/day per 1000 ft²': (GALLON * 1000) / 8 / (1000 * FOOT ** 2),
  'L/(d·m²)': 1,
  'in² per ft²': 1 / 144,
  'cm² per m²': 1e-4,
  'in per ft': 1 / 12,
  'mm/m': 0.001,
  'in in 10 ft': 1 / 120,
  'mm in 3.05 m': 0.001 / 3.05,
  'lb/ft³': POUND / FOOT ** 3,
  'kg/m³': 1,
  'lbf/in': (POUND * 9.80665) / INCH,
  'kN/m': 1000,
  g: 0.001,
  'R-': R_VALUE,
  'RSI ': 1,
  'pCi/L': 37,
  'Bq/m³': 1,
  gpm: (GALLON * 1000) / 60,
  'L/s': 1,
  'L/kWh': 1,
  'ft³ per 1000 Btu/h': FOOT ** 3 / ((1000 * BTU) / 3.6e6),
  'm³/kW': 1,
  'in w.c.': INCH_OF_WATER,
  Pa: 1,
  '°F difference': 5 / 9,
  K: 1,
  ppm: 1,
  h: 1,
  'per h': 1,
  months: 1,
  years: 1,
};

/** A printed limit: its figure or figures in the kept unit, and half a step of the last printed digit. */
export function readPrinted(text: string): { readonly values: readonly number[]; readonly step: number } {
  const prefixed = /^(R-|RSI )(\d+(?:\.\d+)?)$/.exec(text);
  const parts =
    prefixed ?? /^(-?\d+ \d+\/\d+|\d+\/\d+|-?\d+(?:\.\d+)?)(?:-(\d+(?:\.\d+)?))? ?(.*)$/.exec(text);
  if (!parts) throw new Error(`cannot read "${text}"`);
  const unit = prefixed ? prefixed[1] : parts[3];
  const numbers = prefixed ? [prefixed[2]] : [parts[1], parts[2]].filter((each) => each !== undefined);
  const factor = UNITS[unit];
  if (factor === undefined) throw new Error(`unknown unit "${unit}" in "${text}"`);
  const decimals = Math.max(...numbers.map((each) => /\.(\d+)$/.exec(each)?.[1].length ?? 0));
  return { values: numbers.map((each) => figure(each) * factor), step: 10 ** -decimals * Math.abs(factor) };
}
