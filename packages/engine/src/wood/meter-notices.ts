import type { Notice } from '../numerics/notice.ts';
import type { MeterReading } from './meter-reading.ts';
import type { MeterTemperatureMethod } from './meter-temperature.ts';

/** Conductance meters are useful below about 30 % MC [fraction] (James, FPL-GTR-6, abstract). */
const METER_LIMIT = 0.3;

/** Wood temperatures over which the temperature rules were laid side by side [°C]. */
const COMPARED = { minC: 0, maxC: 32.2 } as const;

/** Notices that follow from the reading itself, before any correction. */
export function meterNotices(input: MeterReading, method: MeterTemperatureMethod): Notice[] {
  const notices: Notice[] = [];
  const correctsTemperature = input.meterCorrects === 'nothing' && input.woodTemperatureC !== null;
  const t = input.woodTemperatureC;
  if (correctsTemperature && t !== null && (t < COMPARED.minC || t > COMPARED.maxC)) {
    notices.push({
      code: 'outside-range',
      message: `Wood at ${t} °C is outside ${COMPARED.minC} to ${COMPARED.maxC} °C, where the rules were compared; the correction is rough.`,
    });
  }
  if (
    correctsTemperature &&
    method === 'douglas-fir-equation' &&
    (input.calibrationTemperatureC !== undefined || (input.scaleSpecies ?? 'douglas-fir') !== 'douglas-fir')
  ) {
    notices.push({
      code: 'calibration-not-used',
      message:
        'The fitted equation knows only the Douglas-fir scale near 22.6 °C; the stated calibration was not used for temperature.',
    });
  }
  if (input.reading > METER_LIMIT) {
    notices.push({
      code: 'above-meter-range',
      message:
        'Pin meters lose meaning above about 30 % MC; read this as "wet, above fiber saturation", not as a number.',
    });
  }
  if (input.preservativeTreated) {
    notices.push({
      code: 'treated-wood',
      message:
        'Waterborne preservative can make a pin meter read 1 to 2 % MC high (common practice); nothing was subtracted.',
    });
  }
  if (input.highTemperatureDried) {
    notices.push({
      code: 'high-temperature-dried',
      message:
        'In lumber dried at 82 °C or more, ordinary corrections overstate moisture content by 0.6 to 4.5 % MC; nothing was subtracted.',
    });
  }
  return notices;
}

/** Notice for a reading whose wood temperature nobody took. */
export function uncorrectedTemperature(calibrationC: number): Notice {
  return {
    code: 'uncorrected-for-temperature',
    message: `No wood temperature was recorded; the reading holds for wood at ${calibrationC} °C. Cold wood reads too dry, warm wood too wet.`,
  };
}

/** Notice for a reading in wood, or on a scale, whose resistance is not known here. */
export function uncorrectedSpecies(species: string): Notice {
  const reason =
    species === 'not recorded' ? 'the species was not recorded' : `no resistance data for ${species}`;
  const mixed =
    species === 'spruce-pine-fir'
      ? ' Two recalled corrections for this group differ by almost 2 % MC, so neither is used.'
      : '';
  return { code: 'uncorrected-for-species', message: `Uncorrected for species: ${reason}.${mixed}` };
}
