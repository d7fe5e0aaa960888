import { EngineError } from '../numerics/engine-error.ts';

/**
 * Shelter from wind: 1 none, 2 isolated rural house, 3 buildings across the street, 4 town on large lots, 5 close-
 * built.
 */
export type ShelterClass = 1 | 2 | 3 | 4 | 5;
/** Stories above the crawl space. */
export type Stories = 1 | 2 | 3;

/**
 * Local wind speed at the eaves over that at a weather station, by stories: G of the enhanced model.
 * Source: ASHRAE Fundamentals, chapter Ventilation and Infiltration, read.
 */
const EAVES_WIND = [0.48, 0.59, 0.67] as const;
/** Wind speed left by shelter, classes 1 to 5. Same source, read. */
const SHELTER_WIND = [1.0, 0.9, 0.7, 0.5, 0.3] as const;
/** With a flue, which stands above part of the shelter. One story read; two and three stories from memory. */
const SHELTER_WIND_FLUE = [
  [1.1, 1.02, 0.86, 0.7, 0.54],
  [1.07, 0.98, 0.81, 0.64, 0.47],
  [1.06, 0.97, 0.79, 0.61, 0.43],
] as const;

/** @throws EngineError `bad-input` for anything but the classes 1 to 5 */
export function requireShelterClass(shelterClass: number): asserts shelterClass is ShelterClass {
  if (![1, 2, 3, 4, 5].includes(shelterClass)) {
    throw new EngineError('bad-input', `shelter class must be 1, 2, 3, 4 or 5; got ${shelterClass}`);
  }
}

/** @throws EngineError `bad-input` for anything but 1, 2 or 3 stories */
export function requireStories(stories: number): asserts stories is Stories {
  if (![1, 2, 3].includes(stories)) {
    throw new EngineError('bad-input', `stories must be 1, 2 or 3; got ${stories}`);
  }
}

/**
 * Local wind speed at the eaves over the speed at a weather station: 0.48, 0.59, 0.67 for one to three stories.
 * @throws EngineError `bad-input` for another count of stories
 */
export function eavesWindFactor(stories: Stories): number {
  requireStories(stories);
  return EAVES_WIND[stories - 1]!;
}

/**
 * Part of the local wind speed that shelter leaves: 1.0, 0.9, 0.7, 0.5, 0.3 for classes 1 to 5; more with a flue.
 * Source: ASHRAE Fundamentals, read; two- and three-story houses with a flue from memory.
 * @throws EngineError `bad-input` for another class or count of stories
 */
export function shelterWindFactor(shelterClass: ShelterClass, flue = false, stories: Stories = 1): number {
  requireShelterClass(shelterClass);
  requireStories(stories);
  return (flue ? SHELTER_WIND_FLUE[stories - 1]! : SHELTER_WIND)[shelterClass - 1]!;
}
