import { EngineError } from '../numerics/engine-error.ts';
import { requireRange } from '../numerics/require-range.ts';
import type { Assumer } from './crawl-assumptions.ts';
import { guessAirChanges, usual } from './crawl-assumptions.ts';
import type { CrawlFacts } from './crawl-facts.ts';
import { lawFromBlowerDoor, leakageAreaM2 } from './opening.ts';
import type { Stories } from './shelter.ts';
import { requireStories } from './shelter.ts';
import { airflowSources } from './sources.ts';

/** Story height the single-zone models were worked out for, m. */
export const STORY_HEIGHT_M = 2.5;

/** House above a crawl space, in leakage areas at 4 Pa, m2. */
export interface HouseLeakage {
  readonly stories: Stories;
  readonly volumeM3: number;
  /** Whole house, floor included, as a blower door sees it before the floor is sealed. */
  readonly wholeM2: number;
  readonly aboveFloorM2: number;
  /** Floor as it is now. */
  readonly floorM2: number;
  readonly ceilingShare: number;
}

function wholeHouseM2(facts: CrawlFacts, volumeM3: number, { assume }: Assumer): number {
  const { house } = facts;
  if (house.leakageAreaM2 !== undefined) {
    return requireRange('house leakage area, m2,', house.leakageAreaM2, 1e-4, 10);
  }
  const changes = house.airChangesAt50Pa ?? assume('houseAirChangesAt50Pa', guessAirChanges(house.builtYear));
  const perHour = requireRange('house air changes per hour at 50 Pa', changes, 0.01, 200);
  return leakageAreaM2(lawFromBlowerDoor((perHour * volumeM3) / 3600));
}

/**
 * Splits the leakage of the house into floor and rest. A measured floor is taken off the whole; otherwise the floor is
 * a share of it.
 */
export function houseLeakage(facts: CrawlFacts, assumer: Assumer): HouseLeakage {
  const { house, floorAreaM2 } = facts;
  const { assume } = assumer;
  const stories = house.stories ?? assume('houseStories', usual.houseStories);
  requireStories(stories);
  const guessed = floorAreaM2 * STORY_HEIGHT_M * stories;
  const volumeM3 =
    house.volumeM3 ??
    assume('houseVolumeM3', {
      value: guessed,
      low: 0.9 * guessed,
      high: 1.3 * guessed,
      why: 'The volume of the house was not given; floor area times stories of 2.5 m is taken.',
      source: airflowSources.tradeHabit,
    });
  const measured =
    facts.floorLeakageAreaM2 === undefined
      ? undefined
      : requireRange('floor leakage area, m2,', facts.floorLeakageAreaM2, 0, 10);
  const above = house.aboveFloorLeakageAreaM2;
  const whole = above === undefined ? wholeHouseM2(facts, volumeM3, assumer) : undefined;
  const share =
    measured !== undefined && facts.floor === 'as-built'
      ? undefined
      : requireRange('floor share', assume('floorShareOfHouseLeakage', usual.floorShare), 0, 0.9);
  let aboveFloorM2: number;
  let asBuiltFloorM2: number;
  if (above !== undefined) {
    aboveFloorM2 = requireRange('house leakage area above the floor, m2,', above, 1e-4, 10);
    asBuiltFloorM2 = share === undefined ? measured! : (aboveFloorM2 * share) / (1 - share);
  } else {
    asBuiltFloorM2 = share === undefined ? measured! : whole! * share;
    aboveFloorM2 = whole! - asBuiltFloorM2;
  }
  if (!(aboveFloorM2 > 0)) {
    throw new EngineError(
      'bad-input',
      `the floor leakage area of ${asBuiltFloorM2} m2 leaves nothing of the house leakage area of ${whole} m2; check both`,
    );
  }
  let floorM2 = measured ?? asBuiltFloorM2;
  if (measured === undefined && facts.floor === 'sealed') {
    floorM2 = floorAreaM2 * assume('sealedFloorLeakageM2PerM2', usual.sealedFloor);
  }
  return {
    stories,
    volumeM3,
    wholeM2: aboveFloorM2 + asBuiltFloorM2,
    aboveFloorM2,
    floorM2,
    ceilingShare: house.ceilingShare ?? assume('ceilingShare', usual.ceilingShare),
  };
}
