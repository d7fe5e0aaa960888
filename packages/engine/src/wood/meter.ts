import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import type { Source } from '../sources/source.ts';
import { meterNotices, uncorrectedSpecies, uncorrectedTemperature } from './meter-notices.ts';
import type { MeterReading } from './meter-reading.ts';
import { speciesCorrection } from './meter-species.ts';
import {
  DEFAULT_CALIBRATION_C,
  type MeterTemperatureMethod,
  meterTemperatureRules,
} from './meter-temperature.ts';
import { woodSources } from './sources.ts';

/** How to correct. */
export interface MeterOptions {
  /** Default `ten-degrees-fahrenheit`, the rule of the Wood Handbook. */
  readonly temperatureMethod?: MeterTemperatureMethod;
  /** Doubt of one corrected reading in one piece [fraction]; default 0.02. */
  readonly doubt?: number;
}

/** One line of the calculation sheet. */
export interface MeterStep {
  readonly what: 'reading' | 'temperature' | 'species';
  /** Change made by this line [fraction]; 0 for the reading itself. */
  readonly change: number;
  /** Moisture content after this line [fraction]. */
  readonly moistureContent: number;
  /** Where the rule stands; null for the reading itself. */
  readonly source: Source | null;
}

/** A corrected reading. */
export interface MeterResult {
  /** Display value as it was given [fraction]. */
  readonly reading: number;
  /** Corrected moisture content [fraction]. */
  readonly moistureContent: number;
  /** Corrected value less the doubt, not below 0 [fraction]. */
  readonly low: number;
  /** Corrected value plus the doubt [fraction]. */
  readonly high: number;
  readonly steps: readonly MeterStep[];
  readonly notices: readonly Notice[];
}

/** One reading in one piece lies within about 2 % MC of the truth (Swedish Wood, quoted). */
const DEFAULT_DOUBT = 0.02;

/**
 * Moisture content from a pin meter: temperature first, then species, never what the meter did itself.
 *
 * Without a wood temperature or without species data that correction is 0 and a notice says so
 * (`uncorrected-for-temperature`, `uncorrected-for-species`). Other notices: `outside-range` (wood outside 0..32 °C),
 * `outside-species-table` (change kept from the table's end), `above-meter-range`, `calibration-not-used`,
 * `treated-wood`, `high-temperature-dried`, and `below-zero` when the corrections would leave less than nothing, in
 * which case the value is 0.
 *
 * @throws EngineError `not-finite`, `out-of-range`, naming the input
 * @source temperature: the chosen rule's own source; species: James, FPL-GTR-6, Table 1, from memory
 */
export function correctMeterReading(input: MeterReading, options: MeterOptions = {}): MeterResult {
  const reading = requireRange('meter reading (fraction, 0.16 for 16 %)', input.reading, 0, 3);
  const doubt = requireRange('doubt of a reading (fraction)', options.doubt ?? DEFAULT_DOUBT, 0, 0.5);
  const method = options.temperatureMethod ?? 'ten-degrees-fahrenheit';
  const steps: MeterStep[] = [{ what: 'reading', change: 0, moistureContent: reading, source: null }];
  const notices = meterNotices(input, method);
  let mc = reading;

  if (input.meterCorrects === 'nothing') {
    const calibrationC = requireRange(
      'calibration temperature (°C)',
      input.calibrationTemperatureC ?? DEFAULT_CALIBRATION_C,
      0,
      50,
    );
    if (input.woodTemperatureC === null) {
      notices.push(uncorrectedTemperature(calibrationC));
    } else {
      const woodC = requireRange('wood temperature (°C)', input.woodTemperatureC, -40, 80);
      const rule = meterTemperatureRules[method];
      const next = rule.correct(mc, woodC, calibrationC);
      steps.push({ what: 'temperature', change: next - mc, moistureContent: next, source: rule.source });
      mc = next;
    }
  }

  if (input.meterCorrects !== 'temperature-and-species') {
    const scale = input.scaleSpecies ?? 'douglas-fir';
    const correction =
      input.species === null
        ? ({ kind: 'no-data', species: 'not recorded' } as const)
        : speciesCorrection(scale, input.species, mc);
    if (correction.kind === 'no-data') {
      notices.push(uncorrectedSpecies(correction.species));
    } else {
      mc += correction.change;
      steps.push({
        what: 'species',
        change: correction.change,
        moistureContent: mc,
        source: woodSources.electricMetersTable,
      });
      if (correction.atTableEdge) {
        notices.push({
          code: 'outside-species-table',
          message:
            'The reading lies outside the resistance table (7 to 25 % MC); the species change at its end was kept.',
        });
      }
    }
  }

  if (mc < 0) {
    notices.push({
      code: 'below-zero',
      message: `The corrections would leave ${(100 * mc).toFixed(1)} % MC; shown as 0. The reading is too low to use.`,
    });
    mc = 0;
  }
  return { reading, moistureContent: mc, low: Math.max(0, mc - doubt), high: mc + doubt, steps, notices };
}
