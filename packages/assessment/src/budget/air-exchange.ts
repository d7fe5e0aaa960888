import { airflow, type moisture } from '@undercroft/engine';
import type { Assumptions } from '../assumptions.ts';

/** Air that the space exchanges, as volumes of standard air [m³/s]. */
export interface AirExchange {
  readonly fromOutdoorsM3PerS: moisture.Band;
  readonly fromHouseM3PerS: moisture.Band;
  /** Into the space from the house: positive comes down, negative goes up. */
  readonly houseNetM3PerS: moisture.Band;
}

/** Weather and temperatures that drive the air. */
export interface AirDrive {
  readonly outdoorC: number;
  readonly crawlC: number;
  readonly houseC: number;
  readonly windMPerS: number;
}

const STANDARD_AIR_KG_PER_M3 = 1.2;

/** Guesses of the network that make it leakier or tighter. */
const LEAKAGE_GUESSES: readonly string[] = [
  'closedVentLeakShare',
  'sealedVentLeakShare',
  'crawlWallLeakageM2PerM2',
  'sillLeakageM2PerM',
  'plainDoorLeakageM2',
  'weatherstrippedDoorLeakageM2',
  'floorShareOfHouseLeakage',
  'houseAirChangesAt50Pa',
];

const TITLES: Readonly<Record<string, readonly [title: string, unit: string]>> = {
  closedVentLeakShare: ['Leak of a vent that is shut, share of open', 'fraction'],
  sealedVentLeakShare: ['Leak of a sealed vent, share of open', 'fraction'],
  crawlWallLeakageM2PerM2: ['Leakage of the exposed wall', 'm²/m²'],
  sillLeakageM2PerM: ['Leakage under the sill plate', 'm²/m'],
  plainDoorLeakageM2: ['Leakage round the access door', 'm²'],
  weatherstrippedDoorLeakageM2: ['Leakage round the access door', 'm²'],
  floorShareOfHouseLeakage: ['Floor leakage, share of the whole house', 'fraction'],
  houseAirChangesAt50Pa: ['Air changes of the house at 50 Pa', '1/h'],
  unseenCrawlLeakageM2: ['Leaks of the space that were not seen', 'm²'],
  sealedFloorLeakageM2PerM2: ['Leakage of the sealed floor', 'm²/m²'],
  ductImbalanceM3PerS: ['Duct leakage out of balance, return side positive', 'm³/s'],
};

/**
 * Notes the guesses of a network and gives the values to make it with.
 * @param keys which of its guesses are noted and may be chosen otherwise
 */
export function leakageValues(
  facts: airflow.CrawlFacts,
  assumptions: Assumptions,
  keys: readonly string[] = LEAKAGE_GUESSES,
): airflow.Assumption[] {
  const guesses = airflow.crawlNetwork(facts).assumptions.filter((a) => keys.includes(a.key));
  return guesses.map((guess) => {
    const { key, value, low, high, why } = guess;
    const [title, unit] = TITLES[key];
    return { ...guess, value: assumptions.band(key, title, { value, low, high, unit }, why).value };
  });
}

interface Flows {
  readonly outdoors: number;
  readonly down: number;
  readonly net: number;
}

type Solve = (drive: AirDrive) => Flows;

/** Flows by weather through one network, which is built once. */
function flowsThrough(facts: airflow.CrawlFacts, chosen: airflow.ChosenValues, windShare: number): Solve {
  const network = airflow.createNetwork(airflow.crawlNetwork(facts, chosen).network);
  return (drive) => {
    const state = airflow.solveNetwork(
      network,
      {
        outdoorTemperatureC: drive.outdoorC,
        crawlTemperatureC: drive.crawlC,
        houseTemperatureC: drive.houseC,
        windMPerS: drive.windMPerS * windShare,
      },
      airflow.createNetworkState(network),
    );
    if (!state.ending.converged)
      throw new Error(`the pressure network did not settle: ${state.ending.reason}`);
    return {
      outdoors: state.crawlOutdoorInflowKgPerS / STANDARD_AIR_KG_PER_M3,
      down: state.houseToCrawlKgPerS / STANDARD_AIR_KG_PER_M3,
      net: (state.houseToCrawlKgPerS - state.crawlToHouseKgPerS) / STANDARD_AIR_KG_PER_M3,
    };
  };
}

function bandOf(value: number, a: number, b: number): moisture.Band {
  return { value, low: Math.min(value, a, b), high: Math.max(value, a, b), assumed: true };
}

/** The air of a space in any weather. */
export interface AirOfSpace {
  /** With usual leaks, without a range. */
  readonly middle: (drive: AirDrive) => Readonly<Record<keyof AirExchange, number>>;
  /**
   * With its range: all leakage guesses at their low ends and half the wind, and at their high ends and half as much wind
   * again.
   */
  readonly withRange: (drive: AirDrive) => AirExchange;
}

/** Air exchange of a space by its pressure network. */
export function airOfSpace(facts: airflow.CrawlFacts, assumptions: Assumptions): AirOfSpace {
  const guesses = leakageValues(facts, assumptions);
  const end = (side: 'low' | 'high'): airflow.ChosenValues =>
    Object.fromEntries(guesses.map((g) => [g.key, g[side]]));
  const usual = flowsThrough(facts, {}, 1);
  return {
    middle: (drive) => {
      const { outdoors, down, net } = usual(drive);
      return { fromOutdoorsM3PerS: outdoors, fromHouseM3PerS: down, houseNetM3PerS: net };
    },
    withRange: (drive) => {
      const middle = usual(drive);
      const tight = flowsThrough(facts, end('low'), 0.5)(drive);
      const leaky = flowsThrough(facts, end('high'), 1.5)(drive);
      return {
        fromOutdoorsM3PerS: bandOf(middle.outdoors, tight.outdoors, leaky.outdoors),
        fromHouseM3PerS: bandOf(middle.down, tight.down, leaky.down),
        houseNetM3PerS: bandOf(middle.net, tight.net, leaky.net),
      };
    },
  };
}

/** The air in one weather, with its range; see `AirOfSpace`. */
export function airExchange(
  facts: airflow.CrawlFacts,
  drive: AirDrive,
  assumptions: Assumptions,
): AirExchange {
  return airOfSpace(facts, assumptions).withRange(drive);
}
