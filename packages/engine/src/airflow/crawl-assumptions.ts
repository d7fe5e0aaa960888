import { requireRange } from '../numerics/require-range.ts';
import type { Source } from '../sources/source.ts';
import { typicalLeakage } from './leakage-values.ts';
import { airflowSources } from './sources.ts';

/** What `crawlNetwork` can assume when nobody said it. Leakage areas are effective ones at 4 Pa. */
export type AssumptionKey =
  | 'exposedPerimeterM'
  | 'exposedWallHeightM'
  | 'ventHeightM'
  | 'closedVentLeakShare'
  | 'sealedVentLeakShare'
  | 'crawlWallLeakageM2PerM2'
  | 'sillLeakageM2PerM'
  | 'accessDoorCount'
  | 'plainDoorLeakageM2'
  | 'weatherstrippedDoorLeakageM2'
  | 'unseenCrawlLeakageM2'
  | 'floorShareOfHouseLeakage'
  | 'sealedFloorLeakageM2PerM2'
  | 'houseAirChangesAt50Pa'
  | 'houseVolumeM3'
  | 'houseStories'
  | 'ceilingShare'
  | 'ceilingWindCoefficient'
  | 'shelterClass'
  | 'eavesWindFactor'
  | 'windFromDeg'
  | 'ductImbalanceM3PerS';

/** A value that nobody measured or said, with the range it may lie in and why it was taken. */
export interface Assumption {
  readonly key: AssumptionKey;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** One sentence for the reader of a figure. */
  readonly why: string;
  readonly source: Source;
}

/** An assumption before it is taken up. */
export type Guess = Omit<Assumption, 'key'>;

/** Values that stand in for the usual guesses, for bands and what-if. */
export type ChosenValues = Partial<Record<AssumptionKey, number>>;

/** Takes up guesses, or the values chosen in their place, and keeps the list of them. */
export interface Assumer {
  readonly assume: (key: AssumptionKey, guess: Guess) => number;
  readonly list: readonly Assumption[];
}

export function createAssumer(chosen: ChosenValues): Assumer {
  const list: Assumption[] = [];
  return {
    list,
    assume: (key, guess) => {
      const value = requireRange(`assumed ${key}`, chosen[key] ?? guess.value, -1e9, 1e9);
      if (!list.some((one) => one.key === key)) list.push({ key, ...guess, value });
      return value;
    },
  };
}

function fromTable(typical: (typeof typicalLeakage)[keyof typeof typicalLeakage], why: string): Guess {
  return {
    value: typical.leakageM2,
    low: typical.lowM2,
    high: typical.highM2,
    why,
    source: typical.source,
  };
}

const habit = airflowSources.tradeHabit;

/** Guesses that do not depend on the other facts. */
export const usual = {
  closedVentLeakShare: {
    value: 0.2,
    low: 0.05,
    high: 0.5,
    why: 'A vent shut by its own damper or a loose board is taken to leak a fifth of what it passes open.',
    source: habit,
  },
  sealedVentLeakShare: {
    value: 0.02,
    low: 0,
    high: 0.1,
    why: 'A vent with a fitted, sealed panel is taken to leak a fiftieth of what it passes open.',
    source: habit,
  },
  asBuiltWall: fromTable(
    typicalLeakage.crawlExposedWall,
    'Leakage of the exposed crawl space wall was not measured; the general value per wall area is taken.',
  ),
  sealedWall: {
    value: 1e-4,
    low: 0.3e-4,
    high: 8e-4,
    why: 'Leakage of the sealed wall was not measured, and no survey of sealed crawl spaces was found; a tenth of the usual wall is taken.',
    source: habit,
  },
  asBuiltSill: fromTable(
    typicalLeakage.sillUncaulked,
    'Leakage under the sill plate was not measured; a sill that is not caulked is taken.',
  ),
  sealedSill: fromTable(
    typicalLeakage.sillCaulked,
    'Leakage under the sealed sill plate was not measured; a caulked sill is taken.',
  ),
  accessDoorCount: {
    value: 1,
    low: 0,
    high: 2,
    why: 'No access door was recorded; one plain door from outdoors is taken.',
    source: habit,
  },
  plainDoor: fromTable(
    typicalLeakage.accessDoorPlain,
    'Leakage round the access door was not measured; a door without weatherstrip is taken.',
  ),
  strippedDoor: fromTable(
    typicalLeakage.accessDoorWeatherstripped,
    'Leakage round the access door was not measured; a weatherstripped door is taken.',
  ),
  floorShare: {
    value: 0.25,
    low: 0.1,
    high: 0.5,
    why: 'Leakage through the floor was not measured; a quarter of the leakage of the house is taken, and it is more with ducts in the crawl space.',
    source: airflowSources.ashraeInfiltration,
  },
  sealedFloor: {
    value: typicalLeakage.floorOverCrawl.lowM2,
    low: 0.2e-4,
    high: typicalLeakage.floorOverCrawl.leakageM2,
    why: 'Leakage of the sealed floor was not measured; the tight end of usual floors is taken.',
    source: typicalLeakage.floorOverCrawl.source,
  },
  houseStories: {
    value: 1,
    low: 1,
    high: 2,
    why: 'The stories of the house were not given; one is taken.',
    source: habit,
  },
  ceilingShare: {
    value: 1 / 3,
    low: 0.2,
    high: 0.5,
    why: 'Where the house leaks was not measured; a third of the leakage above the floor is put in the ceiling, the rest in the walls.',
    source: airflowSources.ashraeInfiltration,
  },
  ceilingWindCoefficient: {
    value: -0.4,
    low: -0.7,
    high: 0,
    why: 'Wind suction above the ceiling is taken as that over a low roof.',
    source: airflowSources.ashraeWindPressure,
  },
  shelterClass: {
    value: 4,
    low: 3,
    high: 5,
    why: 'Shelter from wind was not recorded; a house among neighbors on larger lots is taken.',
    source: airflowSources.ashraeInfiltration,
  },
  ductImbalanceM3PerS: {
    value: 0,
    low: -0.05,
    high: 0.05,
    why: 'Duct leakage in the crawl space was not measured; balanced ducts are taken. Leakage of one side alone can turn the floor flow round.',
    source: habit,
  },
} as const satisfies Record<string, Guess>;

/** Air changes per hour at 50 Pa by building period: middle class of a leakage survey, and its 10 and 90 % classes. */
const SURVEY = [
  { before: 1960, value: 20, low: 7, high: 40 },
  { before: 1980, value: 15, low: 6, high: 30 },
  { before: 2000, value: 10, low: 4, high: 25 },
  { before: 10_000, value: 8, low: 3, high: 20 },
] as const;

/** Guess of the air changes at 50 Pa of a house from its year, or of any house. */
export function guessAirChanges(builtYear: number | undefined): Guess {
  const row = builtYear === undefined ? undefined : SURVEY.find(({ before }) => builtYear < before);
  const { value, low, high } = row ?? { value: 10, low: 4, high: 30 };
  const house = row === undefined ? 'houses of any age' : `houses built about ${builtYear}`;
  return {
    value,
    low,
    high,
    why: `No blower-door test of the house; the middle of a survey of ${house} is taken, ${value} air changes per hour at 50 Pa.`,
    source: airflowSources.leakageSurvey,
  };
}
