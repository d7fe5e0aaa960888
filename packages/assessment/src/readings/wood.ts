import { wood } from '@undercroft/engine';
import type { Job } from '@undercroft/record';
import type { ReadingMeaning } from '../assessment.ts';
import { percentWords, placeWords } from './words.ts';

type WoodReading = Job['readings']['wood'][number];

/** Framing at 17 to 18 % is too wet for a space with a dehumidifier: common practice, no source. */
const TOO_WET_WITH_MACHINE = 0.17;

/** A pin reading corrected once, with its range. */
export function corrected(reading: WoodReading): wood.MeterResult {
  return wood.correctMeterReading({
    reading: reading.shown,
    meterCorrects: reading.meterCorrects,
    woodTemperatureC: reading.woodTemperatureC ?? null,
    species: reading.species ?? null,
    scaleSpecies: reading.meterScale,
    calibrationTemperatureC: reading.calibrationC,
  });
}

/** What one pin reading says. */
export function woodMeaning(reading: WoodReading, dehumidifierRuns: boolean): ReadingMeaning {
  const result = corrected(reading);
  const band = wood.woodBand(result.moistureContent);
  const tooWet = dehumidifierRuns && result.moistureContent >= TOO_WET_WITH_MACHINE;
  const state = result.moistureContent >= 0.2 ? 'alarm' : result.moistureContent >= 0.16 ? 'watch' : 'fine';
  const humidity =
    reading.woodTemperatureC === undefined
      ? undefined
      : wood.equilibriumRelativeHumidity(reading.woodTemperatureC, result.moistureContent);
  const asAir =
    humidity === undefined
      ? ''
      : humidity >= 1
        ? ' It is as wet as wood gets in air.'
        : ` Air at the wood of about ${percentWords(humidity)} RH keeps it there.`;
  const change = (what: 'temperature' | 'species') => result.steps.find((s) => s.what === what)?.change;
  const [byTemperature, bySpecies] = [change('temperature'), change('species')];
  const machine = tooWet ? ' Too wet for a space with a dehumidifier (common practice).' : '';
  return {
    id: reading.id,
    kind: 'wood',
    ...(reading.place.at === undefined ? {} : { at: reading.place.at }),
    place: placeWords(reading.place),
    when: reading.when,
    who: reading.who,
    shown: `${reading.member[0].toUpperCase()}${reading.member.slice(1)}: meter shows ${percentWords(reading.shown, 1)}`,
    means: `${percentWords(result.moistureContent, 1)} corrected (${percentWords(result.low, 1)} to ${percentWords(result.high, 1)}). ${band.meaning}${asAir}${machine}`,
    state,
    figures: {
      moistureContent: result.moistureContent,
      low: result.low,
      high: result.high,
      ...(byTemperature === undefined ? {} : { temperatureChange: byTemperature }),
      ...(bySpecies === undefined ? {} : { speciesChange: bySpecies }),
      ...(humidity === undefined ? {} : { relativeHumidity: humidity }),
    },
    notices: result.notices,
  };
}
