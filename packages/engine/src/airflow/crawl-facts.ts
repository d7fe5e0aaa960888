import type { NetworkFan } from './network.ts';
import type { ShelterClass, Stories } from './shelter.ts';

/** One side of the crawl space that faces the outdoors. */
export interface CrawlFace {
  readonly name: string;
  /** Compass bearing that the wall looks towards, degrees from north, clockwise. */
  readonly bearingDeg: number;
  /** Length of wall exposed to the outdoors, m. */
  readonly exposedLengthM: number;
}

/** A foundation vent as it stands. */
export interface CrawlVent {
  readonly name?: string;
  /** Name of its face; left out, the vent is spread evenly over all faces. */
  readonly face?: string;
  /** Area that mesh and louver leave, m2; usually 50 to 75 % of the gross hole (common practice). */
  readonly netFreeAreaM2: number;
  /** Middle of the vent above the crawl ground, m. */
  readonly heightM?: number;
  /** `closed`: its own damper or a loose board; `sealed`: a fitted panel with sealant all round. */
  readonly state: 'open' | 'closed' | 'sealed';
}

/** A door or hatch from outdoors into the crawl space. */
export interface CrawlAccessDoor {
  readonly name?: string;
  readonly face?: string;
  readonly fit: 'plain' | 'weatherstripped';
  readonly heightM?: number;
}

/** A gap to the outdoors that was measured on site. */
export interface CrawlGap {
  readonly name?: string;
  readonly face?: string;
  readonly lengthM: number;
  readonly widthM: number;
  readonly heightM: number;
}

/** What is known of the house above. Leakage areas are effective ones at 4 Pa, m2. */
export interface HouseFacts {
  readonly stories?: Stories;
  readonly volumeM3?: number;
  readonly builtYear?: number;
  /** Blower-door result of the whole house, floor included: one of leakage area or air changes per hour at 50 Pa. */
  readonly leakageAreaM2?: number;
  readonly airChangesAt50Pa?: number;
  /** Leakage of walls and ceiling without the floor, where it is known apart; goes before the two above. */
  readonly aboveFloorLeakageAreaM2?: number;
  /** Part of the leakage above the floor that is in the ceiling, 0 to 1. */
  readonly ceilingShare?: number;
}

/** Physical facts of a crawl space and its house, from which `crawlNetwork` makes a pressure network. */
export interface CrawlFacts {
  readonly floorAreaM2: number;
  /** Ground to the underside of the floor, m. */
  readonly crawlHeightM: number;
  /** Sides that face the outdoors; left out, four equal ones that look north, east, south and west. */
  readonly faces?: readonly CrawlFace[];
  /** Used when `faces` is left out. */
  readonly exposedPerimeterM?: number;
  /** Height of wall above outside grade, m. */
  readonly exposedWallHeightM?: number;
  readonly vents: readonly CrawlVent[];
  /** Left out, one plain door is assumed; an empty list says that there is none. */
  readonly accessDoors?: readonly CrawlAccessDoor[];
  readonly gaps?: readonly CrawlGap[];
  /** `sealed`: rim, sill, wall and penetrations were air-sealed on purpose. */
  readonly walls: 'as-built' | 'sealed';
  /** Leakage of the crawl space to outdoors by a fan-door test with all vents shut, effective area at 4 Pa, m2. */
  readonly measuredLeakageAreaM2?: number;
  /** `sealed`: holes through the floor were sealed on purpose. */
  readonly floor: 'as-built' | 'sealed';
  /** Leakage of the floor between crawl space and house, effective area at 4 Pa, m2. */
  readonly floorLeakageAreaM2?: number;
  readonly house: HouseFacts;
  readonly shelterClass?: ShelterClass;
  /** Compass bearing the wind comes from, degrees. */
  readonly windFromDeg?: number;
  /** Where the wind speeds of the conditions are measured; left out, at a weather station. */
  readonly windMeasured?: 'weather-station' | 'at-eaves';
  /** Duct leakage out of balance, m3/s: above zero, return leaks draw crawl air into the house; below, supply leaks. */
  readonly ductImbalanceM3PerS?: number;
  /** Fans of the house and the crawl space, such as bath, kitchen, crawl exhaust or supply. */
  readonly fans?: readonly NetworkFan[];
}
