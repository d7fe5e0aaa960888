import { describe, expect, test } from 'vitest';
import { correctMeterReading } from '../../src/wood/meter.ts';
import { speciesCorrection } from '../../src/wood/meter-species.ts';
import type { MeterTemperatureMethod } from '../../src/wood/meter-temperature.ts';

/** The rows printed as 32.2 and 4.4 °C are 90 and 40 °F. */
const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;

/**
 * Reading %, wood °C, then the corrected value by the fitted equation, by 0.5 % MC per 10 °F from 70 °F and by 1.6 % MC
 * per 10 K from 20 °C. Equation recalled from memory (Pfaff and Garrahan 1986); the rules seen in quotation (Wood
 * Handbook FPL-GTR-282 ch. 13; SP report PX21326). All worked out by a second program.
 */
const TEMPERATURE: readonly (readonly [number, number, number, number, number])[] = [
  [16, 0, 18.8, 17.9, 19.2],
  [16, 10, 17.51, 17.0, 17.6],
  [16, 21, 16.2, 16.0, 15.8],
  [16, celsius(90), 14.96, 15.0, 14.0],
  [18, celsius(40), 20.43, 19.5, 20.5],
  [12, 5, 13.73, 13.5, 14.4],
];

/** Half of the last printed digit, and a hair for the decimal fraction. */
const HUNDREDTH = 0.005 + 1e-9;
const TENTH = 0.05 + 1e-9;

function corrected(
  reading: number,
  woodC: number,
  temperatureMethod: MeterTemperatureMethod,
  base: number,
): number {
  const { moistureContent } = correctMeterReading(
    {
      reading: reading / 100,
      meterCorrects: 'nothing',
      woodTemperatureC: woodC,
      species: 'douglas-fir',
      calibrationTemperatureC: base,
    },
    { temperatureMethod },
  );
  return 100 * moistureContent;
}

describe('pin meter, temperature', () => {
  test.each(TEMPERATURE)(
    'reading %d percent in wood at %d °C',
    (reading, woodC, equation, fahrenheit, kelvin) => {
      const seventyF = celsius(70);
      expect(Math.abs(corrected(reading, woodC, 'douglas-fir-equation', 20) - equation)).toBeLessThan(
        HUNDREDTH,
      );
      expect(
        Math.abs(corrected(reading, woodC, 'ten-degrees-fahrenheit', seventyF) - fahrenheit),
      ).toBeLessThan(TENTH);
      expect(Math.abs(corrected(reading, woodC, 'ten-kelvin', 20) - kelvin)).toBeLessThan(TENTH);
    },
  );

  test('the fitted equation is neutral at 22.6 °C', () => {
    expect(Math.abs(corrected(16, 22.6, 'douglas-fir-equation', 20) - 16)).toBeLessThan(TENTH);
  });
});

/** True % MC on a Douglas-fir scale, worked out from the recalled resistance table by a second program. */
const SPECIES = [
  'douglas-fir',
  'longleaf-pine',
  'shortleaf-pine',
  'sitka-spruce',
  'red-oak',
  'white-oak',
] as const;
const TRUE_MC: readonly (readonly [number, readonly number[]])[] = [
  [12, [12, 13.2, 13.1, 12.5, 12.1, 11.5]],
  [14, [14, 15.4, 15.3, 14.5, 14.0, 13.4]],
  [16, [16, 17.5, 17.5, 16.7, 16.0, 15.2]],
  [18, [18, 19.5, 19.5, 18.8, 18.0, 16.9]],
  [20, [20, 21.4, 21.6, 21.0, 19.9, 18.5]],
];

describe('pin meter, species (James, FPL-GTR-6, Table 1, from memory)', () => {
  /** The table itself is recalled; entries of these rows agree to the printed digit. */
  const tolerance = TENTH;
  for (const [reading, row] of TRUE_MC) {
    test.each(row.map((mc, i) => [SPECIES[i]!, mc] as const))(
      `reading ${reading} percent in %s is %d percent`,
      (species, mc) => {
        const correction = speciesCorrection('douglas-fir', species, reading / 100);
        expect(correction).toMatchObject({ kind: 'corrected', atTableEdge: false });
        const change = correction.kind === 'corrected' ? correction.change : Number.NaN;
        expect(Math.abs(reading + 100 * change - mc)).toBeLessThan(tolerance);
      },
    );
  }

  test('southern pine lies between longleaf and shortleaf', () => {
    const change = (species: string) => {
      const correction = speciesCorrection('douglas-fir', species, 0.17);
      return correction.kind === 'corrected' ? correction.change : Number.NaN;
    };
    const [low, high] = [change('longleaf-pine'), change('shortleaf-pine')].sort((a, b) => a - b);
    expect(change('southern-pine')).toBeGreaterThanOrEqual(low!);
    expect(change('southern-pine')).toBeLessThanOrEqual(high!);
  });
});
