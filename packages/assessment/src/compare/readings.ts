import type { Job } from '@undercroft/record';
import type { Assessment, ReadingMeaning } from '../assessment.ts';
import { percentWords, temperatureWords } from '../readings/words.ts';
import type { FigurePair, ReadingPair } from './comparison.ts';
import { type Pair, type Paired, type Placed, pairUp } from './pairs.ts';

/**
 * Differences that two good instruments may show at the same air, wood or surface. Common practice, no source: 3 points of
 * relative humidity, 1 point of moisture content, 1.5 K of a surface by infrared.
 */
const DOUBT = { relativeHumidity: 0.03, moistureContent: 0.01, surfaceK: 1.5 } as const;

/** Whether a difference is no more than a doubt, but for what is lost in rounding. */
const within = (difference: number, doubt: number): boolean => Math.abs(difference) <= doubt + 1e-9;

/** What a reading is of, so that a joist is not held against a sill. */
function sortsOf({ readings }: Job): Map<string, string> {
  return new Map([
    ...readings.air.map((r) => [r.id, `air ${r.where}`] as const),
    ...readings.surface.map((r) => [r.id, `surface ${r.of}`] as const),
    ...readings.wood.map((r) => [r.id, `wood ${r.member}`] as const),
  ]);
}

function placed(job: Job, assessment: Assessment): Placed<ReadingMeaning>[] {
  const sorts = sortsOf(job);
  return assessment.readings.map((item) => {
    // Outdoors and in the house there is one place of a kind, whatever words were written for it.
    const sort = sorts.get(item.id) ?? item.kind;
    const one = sort === 'air outdoor' || sort === 'air house';
    const at = one ? { xM: 0, yM: 0 } : item.at;
    return { id: item.id, sort, item, ...(at === undefined ? {} : { at }) };
  });
}

function figurePairs({ before, after }: Pair<ReadingMeaning>): FigurePair[] {
  const [was, is] = [before.item.figures, after.item.figures];
  return Object.keys(was)
    .filter((figure) => is[figure] !== undefined)
    .map((figure) => ({
      figure,
      before: was[figure],
      after: is[figure],
      difference: is[figure] - was[figure],
    }));
}

const grams = (humidityRatio: number): string => `${(1000 * humidityRatio).toFixed(1)} g of water per kg`;

type Told = Pick<ReadingPair, 'turn' | 'means'>;

/** Drier or wetter, and whether by water or only by warmth. */
function airTold(by: ReadonlyMap<string, FigurePair>, inSpace: boolean): Told {
  const humidity = by.get('relativeHumidity');
  const water = by.get('humidityRatio');
  if (humidity === undefined || water === undefined) return { turn: 'same', means: 'Nothing can be told.' };
  const held = `It held ${grams(water.before)} of air and holds ${grams(water.after)} now.`;
  if (!inSpace) return { turn: 'same', means: held };
  if (within(humidity.difference, DOUBT.relativeHumidity)) {
    return { turn: 'same', means: `As humid as it was, within the doubt of the instruments. ${held}` };
  }
  const drier = humidity.difference < 0;
  const points = Math.round(Math.abs(100 * humidity.difference));
  const byWarmth = drier ? water.difference >= 0 : water.difference <= 0;
  const why = byWarmth
    ? ` That is by its temperature alone: it holds no ${drier ? 'less' : 'more'} water.`
    : '';
  return {
    turn: drier ? 'better' : 'worse',
    means: `${drier ? 'Drier' : 'More humid'} by ${points} points of relative humidity. ${held}${why}`,
  };
}

function surfaceTold(by: ReadonlyMap<string, FigurePair>): Told {
  const temperature = by.get('temperatureC');
  const dew = by.get('dewPointC');
  if (temperature === undefined || dew === undefined) {
    return { turn: 'same', means: 'Without air readings beside both nothing follows.' };
  }
  const [was, is] = [temperature.before - dew.before, temperature.after - dew.after];
  const change = is - was;
  const over = (k: number) => `${Math.abs(k).toFixed(1)} K ${k >= 0 ? 'above' : 'below'} the dew point`;
  const now = `It was ${over(was)} and is ${over(is)} now.`;
  if (within(change, DOUBT.surfaceK)) return { turn: 'same', means: `${now} That is within the doubt.` };
  return { turn: change > 0 ? 'better' : 'worse', means: now };
}

function woodTold(by: ReadonlyMap<string, FigurePair>, pair: Pair<ReadingMeaning>): Told {
  const water = by.get('moistureContent');
  if (water === undefined) return { turn: 'same', means: 'Nothing can be told.' };
  const [was, is] = [pair.before.item.state, pair.after.item.state];
  const figures = `${percentWords(water.before, 1)} and ${percentWords(water.after, 1)} now, corrected`;
  if (within(water.difference, DOUBT.moistureContent)) {
    return { turn: 'same', means: `${figures}: within the doubt of the meters.` };
  }
  const drier = water.difference < 0;
  const state = was === is ? '' : ` It was ${stateWords(was)} and is ${stateWords(is)}.`;
  return {
    turn: drier ? 'better' : 'worse',
    means: `${figures}: ${drier ? 'drier' : 'wetter'}.${state}`,
  };
}

const stateWords = (state: ReadingMeaning['state']): string =>
  ({ fine: 'dry enough', watch: 'to be watched', alarm: 'too wet' })[state];

function told(pair: Pair<ReadingMeaning>, figures: readonly FigurePair[]): Told {
  const by = new Map(figures.map((f) => [f.figure, f]));
  switch (pair.before.item.kind) {
    case 'air':
      return airTold(by, pair.before.sort === 'air crawl');
    case 'surface':
      return surfaceTold(by);
    case 'wood':
      return woodTold(by, pair);
  }
}

function shown(pair: Pair<ReadingMeaning>): ReadingPair {
  const { before, after, apartM } = pair;
  const figures = figurePairs(pair);
  const { at } = after.item;
  return {
    kind: after.item.kind,
    beforeId: before.id,
    afterId: after.id,
    place: after.item.place,
    ...(at === undefined ? {} : { at }),
    ...(apartM === undefined || at === undefined ? {} : { apartM }),
    shown: { before: before.item.shown, after: after.item.shown },
    figures,
    ...told(pair, figures),
  };
}

/** Readings of one kind at one place, side by side, and those without a partner. */
export function readingPairs(
  before: { readonly job: Job; readonly assessment: Assessment },
  after: { readonly job: Job; readonly assessment: Assessment },
  withinM: number,
): { readonly pairs: ReadingPair[]; readonly left: Paired<ReadingMeaning> } {
  const left = pairUp(
    placed(before.job, before.assessment),
    placed(after.job, after.assessment),
    withinM,
    false,
  );
  return { pairs: left.pairs.map(shown), left };
}

/** What the weather did to a comparison: outdoor air that held other amounts of water, or another temperature. */
export function weatherNotice(pairs: readonly ReadingPair[], before: Job, after: Job): string | undefined {
  const outdoor = (job: Job) => job.readings.air.find((r) => r.where === 'outdoor');
  const [was, is] = [outdoor(before), outdoor(after)];
  if (was === undefined || is === undefined) {
    return pairs.some((p) => p.kind === 'air')
      ? 'Outdoor air was not read at both visits, so what is the weather and what is the work cannot be told apart.'
      : undefined;
  }
  const pair = pairs.find((p) => p.beforeId === was.id && p.afterId === is.id);
  const water = pair?.figures.find((f) => f.figure === 'humidityRatio');
  if (water === undefined || Math.abs(water.difference) < 0.001) return undefined;
  return `Outdoor air held ${grams(water.before)} at ${temperatureWords(was.temperatureC)} then and ${grams(water.after)} at ${temperatureWords(is.temperatureC)} now: part of the difference is the weather.`;
}
