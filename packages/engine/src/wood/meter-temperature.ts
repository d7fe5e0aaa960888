import type { Source } from '../sources/source.ts';
import { woodSources } from './sources.ts';

/**
 * How a reading is brought to the temperature its scale was made for. `ten-degrees-fahrenheit`: 0.5 % MC for each 10 °F,
 * the default. `ten-kelvin`: 1.6 % MC for each 10 K, from tests on Nordic softwood. `douglas-fir-equation`: a fitted
 * equation for the Douglas-fir scale, recalled from memory.
 */
export type MeterTemperatureMethod = 'ten-degrees-fahrenheit' | 'ten-kelvin' | 'douglas-fir-equation';

interface TemperatureRule {
  readonly source: Source;
  /** Reading and result as fractions, temperatures in °C. */
  readonly correct: (reading: number, woodC: number, calibrationC: number) => number;
}

/** MC per K: 0.5 % MC per 10 °F. */
const PER_KELVIN_HANDBOOK = (0.005 / 10) * 1.8;
/** MC per K: 1.6 % MC per 10 K. */
const PER_KELVIN_NORDIC = 0.016 / 10;

/** Pfaff and Garrahan's equation as recalled: R in % on the Douglas-fir scale, x in °C; neutral at 22.6 °C. */
function douglasFirEquation(reading: number, woodC: number): number {
  const r = 100 * reading;
  return (r + 0.567 - 0.026 * woodC + 0.000051 * woodC * woodC) / (0.881 * 1.0056 ** woodC) / 100;
}

/** The selectable rules, each with where it stands. */
export const meterTemperatureRules: Readonly<Record<MeterTemperatureMethod, TemperatureRule>> = {
  'ten-degrees-fahrenheit': {
    source: woodSources.woodHandbookCh13,
    correct: (reading, woodC, calibrationC) => reading + PER_KELVIN_HANDBOOK * (calibrationC - woodC),
  },
  'ten-kelvin': {
    source: woodSources.nordicFieldTests,
    correct: (reading, woodC, calibrationC) => reading + PER_KELVIN_NORDIC * (calibrationC - woodC),
  },
  'douglas-fir-equation': { source: woodSources.pfaffGarrahan, correct: douglasFirEquation },
};

/** Scales are normally made for Douglas-fir at 70 °F [°C] (Garrahan). */
export const DEFAULT_CALIBRATION_C = 21.1;
