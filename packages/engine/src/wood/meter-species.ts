/**
 * Electrical resistance [MΩ] along the grain between needle pins 1 1/4 in apart at 80 °F, at 7, 8, ... 25 % MC.
 * From memory of James, FPL-GTR-6, Table 1. A published fit of resistance against moisture content, also recalled,
 * returns the Douglas-fir row within 0.25 % MC.
 */
const RESISTANCE_MEGOHM = {
  'douglas-fir': [
    22400, 4780, 1660, 630, 265, 120, 60, 33, 18.6, 11.2, 7.1, 4.6, 3.09, 2.14, 1.51, 1.1, 0.79, 0.6, 0.46,
  ],
  'longleaf-pine': [
    25000, 8700, 3160, 1320, 575, 270, 135, 74, 41.7, 24.0, 14.4, 8.9, 5.76, 3.72, 2.46, 1.66, 1.15, 0.79,
    0.6,
  ],
  'shortleaf-pine': [
    43600, 11750, 3720, 1350, 560, 255, 130, 69, 38.9, 22.4, 13.8, 8.7, 5.76, 3.8, 2.63, 1.82, 1.29, 0.93,
    0.66,
  ],
  'sitka-spruce': [
    22400, 5890, 2140, 830, 365, 165, 83, 44, 25.1, 15.5, 9.8, 6.3, 4.27, 3.02, 2.14, 1.58, 1.17, 0.91, 0.71,
  ],
  'red-oak': [
    14400, 4790, 1590, 630, 265, 125, 63, 32.3, 18.2, 11.3, 7.3, 4.6, 3.02, 2.09, 1.45, 0.95, 0.8, 0.63, 0.5,
  ],
  'white-oak': [
    17400, 3550, 1100, 415, 170, 80, 42, 22, 12.6, 7.2, 4.3, 2.7, 1.7, 1.15, 0.79, 0.6, 0.49, 0.44, 0.41,
  ],
} as const;

const FIRST_PERCENT = 7;

type TabulatedSpecies = keyof typeof RESISTANCE_MEGOHM | 'southern-pine';

function logTable(): Record<TabulatedSpecies, readonly number[]> {
  const logs = Object.fromEntries(
    Object.entries(RESISTANCE_MEGOHM).map(([species, row]) => [species, row.map(Math.log)]),
  ) as Record<keyof typeof RESISTANCE_MEGOHM, number[]>;
  // Framing sold as southern pine is a mix; the two tabulated members differ by 0.2 % MC, so their middle serves.
  const southern = logs['longleaf-pine'].map((value, i) => (value + logs['shortleaf-pine'][i]!) / 2);
  return { ...logs, 'southern-pine': southern };
}

const LOG_RESISTANCE = logTable();

/**
 * Species with resistance data, by the key used in `correctMeterReading`. `southern-pine` is the middle of longleaf and
 * shortleaf. Spruce-pine-fir is missing on purpose: two recalled routes differ by almost 2 % MC.
 */
export const meterSpecies: readonly string[] = Object.keys(LOG_RESISTANCE);

function rowOf(species: string): readonly number[] | undefined {
  return Object.hasOwn(LOG_RESISTANCE, species) ? LOG_RESISTANCE[species as TabulatedSpecies] : undefined;
}

/** Moisture content [%] at a logarithmic resistance within the row; rows fall as the wood gets wetter. */
function percentAt(row: readonly number[], logResistance: number): number {
  let i = 1;
  while (i < row.length - 1 && row[i]! > logResistance) i++;
  return FIRST_PERCENT + i - 1 + (row[i - 1]! - logResistance) / (row[i - 1]! - row[i]!);
}

/** What the species of the wood does to a reading. */
export type SpeciesCorrection =
  | { readonly kind: 'no-data'; readonly species: string }
  | { readonly kind: 'corrected'; readonly change: number; readonly atTableEdge: boolean };

/**
 * Change of a reading from the species of the meter's scale to the species of the wood: the resistance that the scale
 * stands for is looked up in the other species' row, straight between entries of ln MΩ.
 *
 * Outside 7..25 % MC on either side the change at the end of the shared range is kept and `atTableEdge` is true.
 *
 * @param scale species the meter's scale was made for, key as in `meterSpecies`
 * @param species species of the wood, key as in `meterSpecies`
 * @param moistureContent reading at the scale's temperature [fraction]
 * @returns change [fraction], or which species has no data
 * @source James, FPL-GTR-6, Table 1, from memory (`woodSources.electricMetersTable`)
 */
export function speciesCorrection(
  scale: string,
  species: string,
  moistureContent: number,
): SpeciesCorrection {
  if (scale === species) return { kind: 'corrected', change: 0, atTableEdge: false };
  const from = rowOf(scale);
  if (!from) return { kind: 'no-data', species: scale };
  const to = rowOf(species);
  if (!to) return { kind: 'no-data', species };

  const wettest = Math.max(from.at(-1)!, to.at(-1)!);
  const driest = Math.min(from[0]!, to[0]!);
  const asked = 100 * moistureContent;
  const inside = Math.min(Math.max(asked, percentAt(from, driest)), percentAt(from, wettest));
  const i = Math.min(Math.floor(inside) - FIRST_PERCENT, from.length - 2);
  const share = inside - FIRST_PERCENT - i;
  const logResistance = from[i]! + share * (from[i + 1]! - from[i]!);
  return {
    kind: 'corrected',
    change: (percentAt(to, logResistance) - inside) / 100,
    // Lookup and back may miss the end of the table by rounding.
    atTableEdge: Math.abs(asked - inside) > 1e-9,
  };
}
