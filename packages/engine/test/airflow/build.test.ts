import { describe, expect, it } from 'vitest';
import { crawlNetwork } from '../../src/airflow/build.ts';
import type { AssumptionKey, ChosenValues } from '../../src/airflow/crawl-assumptions.ts';
import type { CrawlFacts } from '../../src/airflow/crawl-facts.ts';
import type { NetworkInput } from '../../src/airflow/network.ts';
import { createNetwork } from '../../src/airflow/network.ts';
import type { NetworkConditions } from '../../src/airflow/network-state.ts';
import { createNetworkState } from '../../src/airflow/network-state.ts';
import { solveNetwork } from '../../src/airflow/solve-network.ts';
import { convert } from '../../src/units/convert.ts';
import { summer, winter } from './worked-house.ts';

function solve(input: NetworkInput, given: NetworkConditions) {
  const network = createNetwork(input);
  return solveNetwork(network, given, createNetworkState(network));
}

function closedVents(count: number): CrawlFacts['vents'] {
  return Array.from({ length: count }, () => ({ netFreeAreaM2: 0.03, state: 'closed' as const }));
}

/** A house of which only sizes and vents were taken down. */
const plain: CrawlFacts = {
  floorAreaM2: 130,
  crawlHeightM: 0.9,
  vents: closedVents(9),
  walls: 'as-built',
  floor: 'as-built',
  house: {},
};

function byKey(facts: CrawlFacts, chosen: ChosenValues = {}) {
  const built = crawlNetwork(facts, chosen);
  return { ...built, assumed: new Map(built.assumptions.map((one) => [one.key, one])) };
}

describe('network of the worked house from facts', () => {
  /**
   * Facts of the worked table; its house walls leak at 0.5 and 1.9 m over the floor, ours at the Gauss points 0.53 and
   * 1.97.
   */
  const facts: CrawlFacts = {
    floorAreaM2: 120,
    crawlHeightM: 0.8,
    exposedPerimeterM: 44,
    vents: [{ netFreeAreaM2: 0.8 / 0.6, heightM: 0.3, state: 'open' }],
    walls: 'as-built',
    measuredLeakageAreaM2: 0,
    floor: 'as-built',
    floorLeakageAreaM2: convert(150, 'cm2', 'm2'),
    house: {
      stories: 1,
      volumeM3: 300,
      aboveFloorLeakageAreaM2: convert(500, 'cm2', 'm2'),
      ceilingShare: 0.4,
    },
    shelterClass: 4,
    windMeasured: 'at-eaves',
    windFromDeg: 0,
    ductImbalanceM3PerS: 0,
  };

  it('assumes only the suction over the roof and gives the printed air changes and share within 3 %', () => {
    const { network, assumptions, leakage } = crawlNetwork(facts);
    expect(assumptions.map(({ key }) => key)).toEqual(['ceilingWindCoefficient']);
    expect(leakage.crawlNowM2).toBeCloseTo(0.8, 12);
    const cold = solve(network, winter);
    expect(Math.abs(cold.crawlOutdoorAirChangesPerHour / 12.0 - 1)).toBeLessThan(0.03);
    expect(Math.abs(cold.houseInflowShareThroughFloor / 0.56 - 1)).toBeLessThan(0.03);
    const warm = solve(network, summer);
    expect(Math.abs(warm.crawlOutdoorAirChangesPerHour / 6.1 - 1)).toBeLessThan(0.03);
    expect(warm.houseToCrawlKgPerS).toBeGreaterThan(0);
  });

  it('joins leaks that no pressure can tell apart', () => {
    const { network } = crawlNetwork(facts);
    // 3 kinds of wall for the vents, twice 3 for the house walls, ceiling, floor
    expect(network.openings).toHaveLength(3 + 6 + 2);
    expect(network.openings[1]!.name).toBe('vent 1, east; vent 1, west');
  });
});

describe('assumptions', () => {
  it('lists every value that nobody gave, each within its range, with a reason and a source', () => {
    const { assumptions } = crawlNetwork({ ...plain, vents: closedVents(1) });
    const expected: AssumptionKey[] = [
      'exposedPerimeterM',
      'houseStories',
      'houseVolumeM3',
      'houseAirChangesAt50Pa',
      'floorShareOfHouseLeakage',
      'ceilingShare',
      'ventHeightM',
      'closedVentLeakShare',
      'accessDoorCount',
      'plainDoorLeakageM2',
      'exposedWallHeightM',
      'crawlWallLeakageM2PerM2',
      'sillLeakageM2PerM',
      'unseenCrawlLeakageM2',
      'windFromDeg',
      'ceilingWindCoefficient',
      'ductImbalanceM3PerS',
      'shelterClass',
      'eavesWindFactor',
    ];
    expect(assumptions.map(({ key }) => key)).toEqual(expected);
    for (const one of assumptions) {
      expect(one.value).toBeGreaterThanOrEqual(one.low);
      expect(one.value).toBeLessThanOrEqual(one.high);
      expect(one.why.endsWith('.')).toBe(true);
      expect(one.source.citation.length).toBeGreaterThan(10);
    }
  });

  it('drops an assumption for what is given', () => {
    const { assumed } = byKey({
      ...plain,
      exposedPerimeterM: 47,
      accessDoors: [],
      house: { stories: 2, volumeM3: 610, airChangesAt50Pa: 7, ceilingShare: 0.3 },
      shelterClass: 3,
      ductImbalanceM3PerS: 0.01,
    });
    for (const key of [
      'exposedPerimeterM',
      'accessDoorCount',
      'plainDoorLeakageM2',
      'houseStories',
      'houseVolumeM3',
      'houseAirChangesAt50Pa',
      'ceilingShare',
      'shelterClass',
      'ductImbalanceM3PerS',
    ] as const) {
      expect(assumed.has(key)).toBe(false);
    }
  });

  it('puts a chosen value in place of a guess and still lists it', () => {
    const usual = byKey(plain);
    const high = byKey(plain, { crawlWallLeakageM2PerM2: 17e-4, houseAirChangesAt50Pa: 4 });
    expect(high.assumed.get('crawlWallLeakageM2PerM2')!.value).toBe(17e-4);
    expect(high.leakage.houseM2 / usual.leakage.houseM2).toBeCloseTo(0.4, 12);
  });

  it('guesses a tighter house for a younger one', () => {
    const whole = [1935, 1972, 1995, 2012].map(
      (builtYear) => crawlNetwork({ ...plain, house: { builtYear } }).leakage.houseM2,
    );
    for (let i = 1; i < whole.length; i += 1) expect(whole[i]!).toBeLessThan(whole[i - 1]!);
  });
});

describe('leakage of the crawl space', () => {
  it('is no less than that of the house, vents shut, when as built and not tested (Brennan et al. 1988, abstract)', () => {
    for (const airChangesAt50Pa of [2, 6, 12, 30]) {
      for (const vents of [closedVents(0), closedVents(4), closedVents(16)]) {
        const { leakage } = crawlNetwork({ ...plain, vents, house: { airChangesAt50Pa } });
        expect(leakage.crawlVentsShutM2).toBeGreaterThanOrEqual(leakage.houseM2 * (1 - 1e-12));
        expect(leakage.crawlNowM2).toBeCloseTo(leakage.crawlVentsShutM2, 12);
      }
    }
  });

  it('adds nothing unseen where the known leaks already exceed those of the house', () => {
    const { assumed } = byKey({ ...plain, house: { airChangesAt50Pa: 2 } });
    expect(assumed.has('unseenCrawlLeakageM2')).toBe(false);
  });

  it('is far less when sealed, and adds nothing unseen', () => {
    const vents = closedVents(9).map((vent) => ({ ...vent, state: 'sealed' as const }));
    const sealed = byKey({ ...plain, vents, walls: 'sealed', accessDoors: [{ fit: 'weatherstripped' }] });
    const asBuilt = crawlNetwork(plain);
    expect(sealed.assumed.has('unseenCrawlLeakageM2')).toBe(false);
    expect(sealed.leakage.crawlNowM2).toBeLessThan(asBuilt.leakage.crawlNowM2 / 3);
  });

  it('takes a fan-door test for all of the shell but open vents', () => {
    const tested = crawlNetwork({ ...plain, measuredLeakageAreaM2: 0.031 });
    expect(tested.leakage.crawlNowM2).toBeCloseTo(0.031, 12);
    const opened = crawlNetwork({
      ...plain,
      measuredLeakageAreaM2: 0.031,
      vents: [{ netFreeAreaM2: 0.02, state: 'open' }, ...closedVents(3)],
    });
    expect(opened.leakage.crawlNowM2).toBeCloseTo(0.031 + 0.6 * 0.02, 12);
  });

  it('sums wall, sill, door, gap and vent by their usual leakage', () => {
    const { leakage } = crawlNetwork({
      floorAreaM2: 100,
      crawlHeightM: 1.1,
      faces: [
        { name: 'street', bearingDeg: 200, exposedLengthM: 12 },
        { name: 'yard', bearingDeg: 20, exposedLengthM: 9 },
      ],
      exposedWallHeightM: 0.7,
      vents: [{ face: 'yard', netFreeAreaM2: 0.04, heightM: 0.8, state: 'closed' }],
      accessDoors: [{ face: 'street', fit: 'plain' }],
      gaps: [{ face: 'yard', lengthM: 1.5, widthM: 0.004, heightM: 1 }],
      walls: 'as-built',
      floor: 'as-built',
      house: { leakageAreaM2: 0.02 },
    });
    const expected = 21 * 0.7 * 10e-4 + 21 * 4e-4 + 30e-4 + 0.6 * 1.5 * 0.004 + 0.2 * 0.6 * 0.04;
    expect(leakage.crawlNowM2).toBeCloseTo(expected, 12);
  });

  it('lets more outdoor air in the more it leaks (New Jersey study: moisture followed crawl leakage)', () => {
    const air = [0.004, 0.01, 0.025, 0.08, 0.8].map((measuredLeakageAreaM2) => {
      const { network } = crawlNetwork({ ...plain, measuredLeakageAreaM2 });
      return [winter, summer].map((given) => solve(network, given).crawlOutdoorInflowKgPerS);
    });
    for (let i = 1; i < air.length; i += 1) {
      expect(air[i]![0]!).toBeGreaterThan(air[i - 1]![0]!);
      // a tight crawl space can be filled by house air alone in summer
      expect(air[i]![1]!).toBeGreaterThanOrEqual(air[i - 1]![1]!);
    }
    expect(air.at(-1)![1]!).toBeGreaterThan(air[1]![1]!);
  });
});

describe('floor and house', () => {
  it('splits a blower-door figure into a quarter for the floor and the rest', () => {
    const { leakage } = crawlNetwork({ ...plain, house: { leakageAreaM2: 0.06 } });
    expect(leakage.floorM2).toBeCloseTo(0.015, 12);
    expect(leakage.houseAboveFloorM2).toBeCloseTo(0.045, 12);
    const known = crawlNetwork({ ...plain, floorLeakageAreaM2: 0.022, house: { leakageAreaM2: 0.06 } });
    expect(known.leakage.houseAboveFloorM2).toBeCloseTo(0.038, 12);
  });

  it('seals the floor without taking the leakage off the house walls', () => {
    const sealed = crawlNetwork({ ...plain, floor: 'sealed', house: { leakageAreaM2: 0.06 } });
    expect(sealed.leakage.floorM2).toBeCloseTo(130 * 0.4e-4, 12);
    expect(sealed.leakage.houseAboveFloorM2).toBeCloseTo(0.045, 12);
    expect(sealed.leakage.houseM2).toBeCloseTo(0.06, 12);
    expect(solve(sealed.network, winter).crawlToHouseKgPerS).toBeLessThan(
      solve(crawlNetwork({ ...plain, house: { leakageAreaM2: 0.06 } }).network, winter).crawlToHouseKgPerS,
    );
  });

  it('turns the summer floor flow round by return duct leaks in the crawl space', () => {
    const balanced = solve(crawlNetwork({ ...plain, ductImbalanceM3PerS: 0 }).network, summer);
    const returns = solve(crawlNetwork({ ...plain, ductImbalanceM3PerS: 0.04 }).network, summer);
    const supplies = solve(crawlNetwork({ ...plain, ductImbalanceM3PerS: -0.04 }).network, summer);
    expect(balanced.floorPressurePa).toBeLessThan(0);
    // the house blows back down through the floor what the duct pulls up
    expect(returns.crawlToHouseKgPerS).toBeGreaterThan(0.04);
    expect(returns.floorPressurePa).toBeLessThan(balanced.floorPressurePa);
    expect(supplies.floorPressurePa).toBeGreaterThan(0);
  });
});

describe('published air changes of vented crawl spaces', () => {
  /** Suspended timber floor with 1500 mm2 of vents per meter of wall; sizes and weather are chosen here. */
  it('gives 3 to 13 per hour, as the UK test house had with various air bricks (Hartless and White 1994, abstract)', () => {
    const facts: CrawlFacts = {
      floorAreaM2: 50,
      crawlHeightM: 0.4,
      exposedPerimeterM: 29,
      vents: [{ netFreeAreaM2: 29 * 1500e-6, state: 'open', heightM: 0.3 }],
      walls: 'as-built',
      floor: 'as-built',
      house: { stories: 2 },
    };
    const { network } = crawlNetwork(facts);
    for (const given of [
      { outdoorTemperatureC: 4, crawlTemperatureC: 9, houseTemperatureC: 19, windMPerS: 4 },
      { outdoorTemperatureC: 10, crawlTemperatureC: 12, houseTemperatureC: 20, windMPerS: 4 },
    ]) {
      const rate = solve(network, given).crawlOutdoorAirChangesPerHour;
      expect(rate).toBeGreaterThan(3);
      expect(rate).toBeLessThan(13);
    }
  });

  it('needs other leaks than one 200 mm hole for more than 5 per hour, as the New Zealand building had (Build 152, 11.5)', () => {
    const hole = Math.PI * 0.1 ** 2;
    const facts: CrawlFacts = {
      floorAreaM2: 90,
      crawlHeightM: 0.6,
      vents: [{ netFreeAreaM2: hole, state: 'open' }],
      walls: 'as-built',
      measuredLeakageAreaM2: 0,
      floor: 'as-built',
      house: {},
    };
    const given = { outdoorTemperatureC: 12, crawlTemperatureC: 13, houseTemperatureC: 18, windMPerS: 5 };
    const alone = solve(crawlNetwork(facts).network, given).crawlOutdoorAirChangesPerHour;
    const { measuredLeakageAreaM2: _, ...unseen } = facts;
    const withUnseen = solve(crawlNetwork(unseen).network, given).crawlOutdoorAirChangesPerHour;
    expect(alone).toBeLessThan(5);
    expect(withUnseen).toBeGreaterThan(2 * alone);
  });
});

describe('facts that cannot be', () => {
  it('names the field and what to do', () => {
    const bad: [CrawlFacts, string][] = [
      [{ ...plain, crawlHeightM: 0 }, 'crawl height, m, must be from 0.1 to 10; got 0'],
      [{ ...plain, floorAreaM2: Number.NaN }, 'floor area, m2, must be a number'],
      [{ ...plain, faces: [] }, 'needs at least one face'],
      [
        { ...plain, vents: [{ face: 'west wing', netFreeAreaM2: 0.03, state: 'open' }] },
        'vent 1 is on face west wing, which is not among north, east, south, west',
      ],
      [
        { ...plain, floorLeakageAreaM2: 0.07, house: { leakageAreaM2: 0.06 } },
        'leaves nothing of the house leakage area of 0.06 m2',
      ],
      [{ ...plain, house: { stories: 4 as 3 } }, 'stories must be 1, 2 or 3; got 4'],
    ];
    for (const [facts, message] of bad) expect(() => crawlNetwork(facts)).toThrow(message);
  });
});
