import type { Source } from '../sources/source.ts';
import { airflowSources } from './sources.ts';

/** A usual value with the range in which it was found. */
export interface TypicalLeakage {
  /** What it is, in the words of the trade. */
  readonly subject: string;
  /** What one unit of it is: square meters of leakage per this. */
  readonly per: 'm2' | 'm' | 'each';
  /** Effective leakage area at 4 Pa, m2 per unit; best guess and range. */
  readonly leakageM2: number;
  readonly lowM2: number;
  readonly highM2: number;
  readonly source: Source;
}

const fromTable = airflowSources.ashraeLeakageTable;

/**
 * Usual effective leakage areas at 4 Pa. All are recalled from the ASHRAE table of component leakage areas, and marked
 * so. A component sum is a guess: the same component spreads over its whole range from house to house.
 */
export const typicalLeakage = {
  crawlExposedWall: {
    subject: 'crawl space wall, exposed part, general',
    per: 'm2',
    leakageM2: 10e-4,
    lowM2: 8e-4,
    highM2: 17e-4,
    source: fromTable,
  },
  wallVent: {
    subject: 'one foundation vent, 200 x 400 mm, open',
    per: 'each',
    leakageM2: 129e-4,
    lowM2: 129e-4,
    highM2: 129e-4,
    source: fromTable,
  },
  accessDoorPlain: {
    subject: 'access door, not weatherstripped',
    per: 'each',
    leakageM2: 30e-4,
    lowM2: 10e-4,
    highM2: 30e-4,
    source: fromTable,
  },
  accessDoorWeatherstripped: {
    subject: 'access door, weatherstripped',
    per: 'each',
    leakageM2: 18e-4,
    lowM2: 8e-4,
    highM2: 18e-4,
    source: fromTable,
  },
  sillUncaulked: {
    subject: 'sill plate, not caulked',
    per: 'm',
    leakageM2: 4e-4,
    lowM2: 1e-4,
    highM2: 4e-4,
    source: fromTable,
  },
  sillCaulked: {
    subject: 'sill plate, caulked',
    per: 'm',
    leakageM2: 0.8e-4,
    lowM2: 0.4e-4,
    highM2: 1.2e-4,
    source: fromTable,
  },
  floorHoleUncaulked: {
    subject: 'pipe or wire hole through the floor, not caulked',
    per: 'each',
    leakageM2: 6e-4,
    lowM2: 2e-4,
    highM2: 24e-4,
    source: fromTable,
  },
  floorHoleCaulked: {
    subject: 'pipe or wire hole through the floor, caulked',
    per: 'each',
    leakageM2: 2e-4,
    lowM2: 1e-4,
    highM2: 2e-4,
    source: fromTable,
  },
  floorOverCrawl: {
    subject: 'floor over a crawl space, general',
    per: 'm2',
    leakageM2: 2.2e-4,
    lowM2: 0.4e-4,
    highM2: 4.9e-4,
    source: fromTable,
  },
} as const satisfies Record<string, TypicalLeakage>;
