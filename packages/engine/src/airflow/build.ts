import { requireRange } from '../numerics/require-range.ts';
import type { Assumer, Assumption, ChosenValues } from './crawl-assumptions.ts';
import { createAssumer, usual } from './crawl-assumptions.ts';
import type { CrawlFace, CrawlFacts } from './crawl-facts.ts';
import type { HouseLeakage } from './crawl-house.ts';
import { houseLeakage, STORY_HEIGHT_M } from './crawl-house.ts';
import { crawlFaces, crawlShell } from './crawl-shell.ts';
import type { NetworkFan, NetworkInput, NetworkOpening } from './network.ts';
import { CRACK_EXPONENT, lawFromLeakageArea } from './opening.ts';
import { eavesWindFactor, requireShelterClass, shelterWindFactor } from './shelter.ts';
import { airflowSources } from './sources.ts';
import { wallPressureCoefficient } from './wind-pressure.ts';

/** Leaks of a uniform wall, lumped at two heights so that pressure varying along it is averaged rightly (Gauss). */
const WALL_HEIGHT_SHARES = [0.5 - 0.5 / Math.sqrt(3), 0.5 + 0.5 / Math.sqrt(3)] as const;

/** A pressure network made from facts, and everything that had to be assumed. */
export interface CrawlNetwork {
  /** For `createNetwork`. Heights count from the crawl ground. */
  readonly network: NetworkInput;
  readonly assumptions: readonly Assumption[];
  /** Effective leakage areas at 4 Pa, m2. */
  readonly leakage: {
    /** Crawl space to outdoors, as a fan-door test with every vent shut finds it. */
    readonly crawlVentsShutM2: number;
    /** Crawl space to outdoors as it stands. */
    readonly crawlNowM2: number;
    readonly floorM2: number;
    readonly houseAboveFloorM2: number;
    /** Whole house, floor included, before the floor is sealed. */
    readonly houseM2: number;
  };
}

function opening(
  name: string,
  to: 'crawl' | 'house',
  heightM: number,
  leakageM2: number,
  windCoefficient: number,
  exponent = CRACK_EXPONENT,
): NetworkOpening {
  const law = lawFromLeakageArea(leakageM2, exponent);
  return { name, from: 'outside', to, heightM, ...law, windCoefficient };
}

/** Joins openings that no pressure can tell apart, such as those of two sides alike to the wind. */
function joinAlike(openings: readonly NetworkOpening[]): NetworkOpening[] {
  const joined = new Map<string, NetworkOpening>();
  for (const one of openings) {
    const key = `${one.from}|${one.to}|${one.heightM}|${one.exponent}|${Math.round(1e9 * one.windCoefficient)}`;
    const twin = joined.get(key);
    joined.set(
      key,
      twin === undefined
        ? one
        : { ...twin, name: `${twin.name}; ${one.name}`, coefficient: twin.coefficient + one.coefficient },
    );
  }
  return [...joined.values()];
}

function houseOpenings(
  house: HouseLeakage,
  faces: readonly CrawlFace[],
  floorHeightM: number,
  windOn: (face: CrawlFace) => number,
  { assume }: Assumer,
): NetworkOpening[] {
  const height = STORY_HEIGHT_M * house.stories;
  const ceilingShare = requireRange('ceiling share', house.ceilingShare, 0, 1);
  const length = faces.reduce((sum, face) => sum + face.exposedLengthM, 0);
  const walls = faces.flatMap((face) =>
    WALL_HEIGHT_SHARES.map((share, i) => {
      const part = length > 0 ? face.exposedLengthM / length : 1 / faces.length;
      const leakage = (house.aboveFloorM2 * (1 - ceilingShare) * part) / WALL_HEIGHT_SHARES.length;
      const name = `house wall ${i === 0 ? 'low' : 'high'}, ${face.name}`;
      return opening(name, 'house', floorHeightM + share * height, leakage, windOn(face));
    }),
  );
  const suction = assume('ceilingWindCoefficient', usual.ceilingWindCoefficient);
  return [
    ...joinAlike(walls),
    opening('ceiling', 'house', floorHeightM + height, house.aboveFloorM2 * ceilingShare, suction),
    {
      name: 'floor',
      from: 'crawl',
      to: 'house',
      heightM: floorHeightM,
      ...lawFromLeakageArea(house.floorM2),
      windCoefficient: 0,
    },
  ];
}

function windFactor(facts: CrawlFacts, house: HouseLeakage, { assume }: Assumer): number {
  const shelterClass = facts.shelterClass ?? assume('shelterClass', usual.shelterClass);
  requireShelterClass(shelterClass);
  const shelter = shelterWindFactor(shelterClass);
  if (facts.windMeasured === 'at-eaves') return shelter;
  const eaves = eavesWindFactor(house.stories);
  return (
    shelter *
    assume('eavesWindFactor', {
      value: eaves,
      low: 0.7 * eaves,
      high: 1,
      why: `Wind at the eaves is taken as ${eaves} of that at the weather station.`,
      source: airflowSources.ashraeInfiltration,
    })
  );
}

function ductFan(facts: CrawlFacts, { assume }: Assumer): NetworkFan[] {
  const imbalance = facts.ductImbalanceM3PerS ?? assume('ductImbalanceM3PerS', usual.ductImbalanceM3PerS);
  if (imbalance === 0) return [];
  return imbalance > 0
    ? [{ name: 'return duct leakage', from: 'crawl', to: 'house', flowM3PerS: imbalance }]
    : [{ name: 'supply duct leakage', from: 'house', to: 'crawl', flowM3PerS: -imbalance }];
}

/**
 * Makes the pressure network of a crawl space and its house from physical facts. What the facts leave out is assumed
 * and listed, each with a range, a reason and a source; `chosen` puts other values in place of the usual ones, for
 * bands. The leaks are: vents, access doors and measured gaps where they are; wall and rim spread over the faces;
 * house walls at two heights; ceiling; floor. The wind comes from one side: make one network for each direction that
 * counts. An as-built crawl space without a test is never tighter, vents shut, than the house above it.
 * @throws EngineError for facts outside their ranges, unknown face names, a floor that leaks more than the whole house
 */
export function crawlNetwork(facts: CrawlFacts, chosen: ChosenValues = {}): CrawlNetwork {
  requireRange('floor area, m2,', facts.floorAreaM2, 1, 10_000);
  const h = requireRange('crawl height, m,', facts.crawlHeightM, 0.1, 10);
  const assumer = createAssumer(chosen);
  const faces = crawlFaces(facts, assumer);
  const house = houseLeakage(facts, assumer);
  const shell = crawlShell(facts, faces, house.wholeM2, assumer);
  const firstFace = faces[0]!.bearingDeg;
  const windFromDeg =
    facts.windFromDeg ??
    assumer.assume('windFromDeg', {
      value: firstFace,
      low: 0,
      high: 360,
      why: `The wind is taken square onto the face ${faces[0]!.name}.`,
      source: airflowSources.tradeHabit,
    });
  const windOn = (face: CrawlFace) => wallPressureCoefficient(windFromDeg - face.bearingDeg);
  const crawlOpenings = shell.leaks.map((leak) =>
    opening(leak.name, 'crawl', leak.heightM, leak.leakageM2, windOn(leak.face), leak.exponent),
  );
  return {
    network: {
      openings: [...joinAlike(crawlOpenings), ...houseOpenings(house, faces, h, windOn, assumer)],
      fans: [...ductFan(facts, assumer), ...(facts.fans ?? [])],
      crawlVolumeM3: facts.floorAreaM2 * h,
      houseVolumeM3: house.volumeM3,
      floorHeightM: h,
      windFactor: windFactor(facts, house, assumer),
    },
    assumptions: assumer.list,
    leakage: {
      crawlVentsShutM2: shell.ventsShutM2,
      crawlNowM2: shell.leaks.reduce((sum, leak) => sum + leak.leakageM2, 0),
      floorM2: house.floorM2,
      houseAboveFloorM2: house.aboveFloorM2,
      houseM2: house.wholeM2,
    },
  };
}
