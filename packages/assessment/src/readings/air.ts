import { psychrometrics, wood } from '@undercroft/engine';
import type { Job } from '@undercroft/record';
import type { ReadingMeaning } from '../assessment.ts';
import { percentWords, placeWords, temperatureWords } from './words.ts';

type AirReading = Job['readings']['air'][number];

/** Air state of a reading at the pressure of the place. */
export function stateOf(
  reading: { readonly temperatureC: number; readonly relativeHumidity: number },
  pressurePa: number,
): psychrometrics.AirState {
  const { temperatureC, relativeHumidity } = reading;
  return psychrometrics.airState({ temperatureC, relativeHumidity, pressurePa });
}

/** Mean of the air readings of one place, as temperature and water content, or undefined where none was taken. */
export function meanAir(
  readings: readonly AirReading[],
  where: AirReading['where'],
  pressurePa: number,
): { readonly temperatureC: number; readonly humidityRatio: number; readonly count: number } | undefined {
  const states = readings.filter((r) => r.where === where).map((r) => stateOf(r, pressurePa));
  if (states.length === 0) return undefined;
  const mean = (pick: (s: psychrometrics.AirState) => number) =>
    states.reduce((sum, s) => sum + pick(s), 0) / states.length;
  return {
    temperatureC: mean((s) => s.temperatureC),
    humidityRatio: mean((s) => s.humidityRatio),
    count: states.length,
  };
}

/** Air above 80 % RH feeds mold; above 60 % a closed space is past its usual upper alarm. */
const ALARM = 0.8;
const WATCH = 0.6;

function crawlSentence(state: psychrometrics.AirState): string {
  const settles = wood.woodEquilibrium({
    temperatureC: state.temperatureC,
    relativeHumidity: state.relativeHumidity,
  }).value;
  const atWood =
    settles === null
      ? 'wood would go toward fiber saturation'
      : `wood settles at ${percentWords(settles, 1)}`;
  return `Anything colder than ${temperatureWords(state.dewPointC)} is wet in this air; left like this, ${atWood}.`;
}

/** Humidity of this air once it has the temperature of the space; above 1 it drops water there. */
function humidityAt(crawlC: number, state: psychrometrics.AirState, pressurePa: number): number {
  const saturated = psychrometrics.saturationPressurePa(crawlC);
  return state.vaporPressurePa >= saturated
    ? state.vaporPressurePa / saturated
    : psychrometrics.relativeHumidityFromHumidityRatio(crawlC, state.humidityRatio, pressurePa);
}

function outsideSentence(
  state: psychrometrics.AirState,
  crawlC: number | undefined,
  there: number | undefined,
): string {
  const grams = `${(1000 * state.humidityRatio).toFixed(1)} g of water per kg of air`;
  if (crawlC === undefined || there === undefined) return `It holds ${grams}.`;
  if (there >= 1)
    return `It holds ${grams}: cooled to the ${temperatureWords(crawlC)} of the space it drops water.`;
  return `It holds ${grams}: at the ${temperatureWords(crawlC)} of the space that is ${percentWords(there)} RH.`;
}

/** What one air reading says. */
export function airMeaning(
  reading: AirReading,
  pressurePa: number,
  crawlC: number | undefined,
): ReadingMeaning {
  const state = stateOf(reading, pressurePa);
  const inCrawl = reading.where === 'crawl';
  const there = inCrawl || crawlC === undefined ? undefined : humidityAt(crawlC, state, pressurePa);
  const level = state.relativeHumidity >= ALARM ? 'alarm' : state.relativeHumidity > WATCH ? 'watch' : 'fine';
  const name = { crawl: 'Air of the space', outdoor: 'Outdoor air', house: 'House air' }[reading.where];
  return {
    id: reading.id,
    kind: 'air',
    ...(reading.place.at === undefined ? {} : { at: reading.place.at }),
    place: placeWords(reading.place),
    when: reading.when,
    who: reading.who,
    shown: `${name}: ${temperatureWords(reading.temperatureC)}, ${percentWords(reading.relativeHumidity)} RH`,
    means: inCrawl ? crawlSentence(state) : outsideSentence(state, crawlC, there),
    state: inCrawl ? level : 'fine',
    figures: {
      temperatureC: state.temperatureC,
      relativeHumidity: state.relativeHumidity,
      dewPointC: state.dewPointC,
      humidityRatio: state.humidityRatio,
      vaporPressurePa: state.vaporPressurePa,
      ...(there === undefined ? {} : { humidityInSpace: there }),
    },
    notices: [],
  };
}
