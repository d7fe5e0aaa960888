import { EngineError } from '../numerics/engine-error.ts';
import { requireRange } from '../numerics/require-range.ts';
import { exponentKind } from './pressure-power.ts';

/** The three bodies of air of the network. Outdoor pressure is the zero; crawl and house pressures are sought. */
export type AirZone = 'outside' | 'crawl' | 'house';

/** One path of air between two zones, at one height, obeying Q = C dp^n. */
export interface NetworkOpening {
  readonly name?: string;
  readonly from: AirZone;
  readonly to: AirZone;
  /** Height above the crawl ground, m, from -20 to 50. */
  readonly heightM: number;
  /** C in m3/s at 1 Pa, from 0 to 1e6; 0 closes the path. */
  readonly coefficient: number;
  /** n, from 0.5 (vents, doors ajar) to 1 (laminar); cracks 0.65. */
  readonly exponent: number;
  /** Pressure coefficient of the wall on the outdoor side, from -3 to 3; ignored between crawl and house. */
  readonly windCoefficient: number;
}

/** A given flow from one zone to another, by mass, or by volume at the temperature of the zone it is drawn from. */
export type NetworkFan = {
  readonly name?: string;
  readonly from: AirZone;
  readonly to: AirZone;
} & ({ readonly flowKgPerS: number } | { readonly flowM3PerS: number });

/** What `createNetwork` needs. */
export interface NetworkInput {
  readonly openings: readonly NetworkOpening[];
  readonly fans?: readonly NetworkFan[];
  readonly crawlVolumeM3: number;
  readonly houseVolumeM3: number;
  /** Height of the floor between crawl space and house above the crawl ground, m. */
  readonly floorHeightM: number;
  /** Local wind speed at the walls over the wind speed in the conditions, 0 to 2: shelter times height. */
  readonly windFactor: number;
}

/**
 * Openings and fans as flat arrays, made once by `createNetwork` and read by every solve. Not to be changed. Openings
 * stand sorted by what they join: outside-crawl, outside-house, crawl-house, each counted from the first to the second.
 */
export interface AirNetwork {
  readonly openingCount: number;
  readonly fanCount: number;
  /** Which sorted opening is the first of each of the three pairs of zones, and one past the last. */
  readonly pairStart: Uint32Array;
  /** g times the height, J/kg. */
  readonly gravityHeight: Float64Array;
  readonly coefficient: Float64Array;
  readonly exponent: Float64Array;
  readonly exponentKind: Uint8Array;
  /** Slope of the straight line that stands in for the power law near zero, m3/(s Pa). */
  readonly linearSlope: Float64Array;
  /** Pressure coefficient of the outdoor side; 0 between crawl and house. */
  readonly windCoefficient: Float64Array;
  /** For each sorted opening its number in the input, and -1 where the input counts it the other way. */
  readonly place: Uint32Array;
  readonly direction: Int8Array;
  readonly fanFrom: Uint8Array;
  readonly fanTo: Uint8Array;
  readonly fanFlow: Float64Array;
  /** 1 where `fanFlow` is m3/s, 0 where it is kg/s. */
  readonly fanByVolume: Uint8Array;
  readonly crawlVolumeM3: number;
  readonly houseVolumeM3: number;
  /** g times the height of the floor, J/kg. */
  readonly floorGravityHeight: number;
  readonly windFactor: number;
  /** A zone that no open path ties to the outdoors has no pressure of its own and is held at zero. */
  readonly crawlHeld: boolean;
  readonly houseHeld: boolean;
  /** Crawl and house are joined to each other and to nothing else. */
  readonly joinedButShut: boolean;
}

const GRAVITY = 9.80665;
/** A zone that would need more than this to balance has a fan and nothing to draw through, Pa. */
export const PRESSURE_LIMIT_PA = 1e6;
/** Below this pressure difference the power law gives way to a straight line, so that its slope stays finite. */
export const LINEAR_BELOW_PA = 1e-4;
const ZONES: Record<AirZone, number> = { outside: 0, crawl: 1, house: 2 };

/** Numbers of the two zones, outside 0, crawl 1, house 2. */
function zonePair(what: string, path: { from: AirZone; to: AirZone }): [number, number] {
  const from = ZONES[path.from];
  const to = ZONES[path.to];
  if (from === undefined || to === undefined) {
    throw new EngineError(
      'bad-input',
      `${what} must join outside, crawl or house; got ${String(path.from)} and ${String(path.to)}`,
    );
  }
  if (from === to)
    throw new EngineError('bad-input', `${what} must join two different zones; got ${path.from}`);
  return [from, to];
}

function label(kind: string, index: number, name: string | undefined): string {
  return `${kind} ${index + 1}${name ? ` (${name})` : ''}`;
}

/** Number of the pair a path joins: outside-crawl 0, outside-house 1, crawl-house 2. */
function pairNumber(from: number, to: number): number {
  return from + to - 1;
}

function flattenOpenings(openings: readonly NetworkOpening[]) {
  const n = openings.length;
  const flat = {
    openingCount: n,
    pairStart: new Uint32Array(4),
    gravityHeight: new Float64Array(n),
    coefficient: new Float64Array(n),
    exponent: new Float64Array(n),
    exponentKind: new Uint8Array(n),
    linearSlope: new Float64Array(n),
    windCoefficient: new Float64Array(n),
    place: new Uint32Array(n),
    direction: new Int8Array(n),
  };
  const zones = openings.map((opening, i) => zonePair(label('opening', i, opening.name), opening));
  let k = 0;
  for (let pair = 0; pair < 3; pair += 1) {
    flat.pairStart[pair] = k;
    openings.forEach((opening, i) => {
      const [from, to] = zones[i]!;
      if (pairNumber(from, to) !== pair) return;
      const what = label('opening', i, opening.name);
      const coefficient = requireRange(`${what}: coefficient`, opening.coefficient, 0, 1e6);
      const exponent = requireRange(`${what}: exponent`, opening.exponent, 0.5, 1);
      const wind = requireRange(`${what}: wind coefficient`, opening.windCoefficient, -3, 3);
      const height = requireRange(`${what}: height, m,`, opening.heightM, -20, 50);
      flat.gravityHeight[k] = GRAVITY * height;
      flat.coefficient[k] = coefficient;
      flat.exponent[k] = exponent;
      flat.exponentKind[k] = exponentKind(exponent);
      flat.linearSlope[k] = coefficient * LINEAR_BELOW_PA ** (exponent - 1);
      flat.windCoefficient[k] = pair === 2 ? 0 : wind;
      flat.place[k] = i;
      flat.direction[k] = from < to ? 1 : -1;
      k += 1;
    });
  }
  flat.pairStart[3] = k;
  return flat;
}

function flattenFans(fans: readonly NetworkFan[]) {
  const n = fans.length;
  const flat = {
    fanCount: n,
    fanFrom: new Uint8Array(n),
    fanTo: new Uint8Array(n),
    fanFlow: new Float64Array(n),
    fanByVolume: new Uint8Array(n),
  };
  fans.forEach((fan, i) => {
    const what = label('fan', i, fan.name);
    const [from, to] = zonePair(what, fan);
    const byVolume = 'flowM3PerS' in fan;
    flat.fanFrom[i] = from;
    flat.fanTo[i] = to;
    flat.fanFlow[i] = requireRange(`${what}: flow`, byVolume ? fan.flowM3PerS : fan.flowKgPerS, -1000, 1000);
    flat.fanByVolume[i] = byVolume ? 1 : 0;
  });
  return flat;
}

/**
 * Makes a network from openings and fans. No range is repaired: a value outside its range throws.
 * @throws EngineError `bad-input`, `not-finite`, `out-of-range`
 */
export function createNetwork(input: NetworkInput): AirNetwork {
  const { openings } = input;
  /** Whether an open path joins outside-crawl, outside-house, crawl-house. */
  const joined = [false, false, false];
  const flat = flattenOpenings(openings);
  for (const opening of openings) {
    if (opening.coefficient > 0) joined[pairNumber(ZONES[opening.from], ZONES[opening.to])] = true;
  }
  const [outsideCrawl, outsideHouse, crawlHouse] = joined;
  return {
    ...flat,
    ...flattenFans(input.fans ?? []),
    crawlVolumeM3: requireRange('crawl volume, m3,', input.crawlVolumeM3, 0.01, 1e6),
    houseVolumeM3: requireRange('house volume, m3,', input.houseVolumeM3, 0.01, 1e6),
    floorGravityHeight: GRAVITY * requireRange('floor height, m,', input.floorHeightM, -20, 50),
    windFactor: requireRange('wind factor', input.windFactor, 0, 2),
    crawlHeld: !outsideCrawl && !crawlHouse,
    houseHeld: !outsideHouse && !(crawlHouse && outsideCrawl),
    joinedButShut: !outsideCrawl && !outsideHouse && crawlHouse === true,
  };
}
