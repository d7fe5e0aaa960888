import type { Ending } from '../numerics/solution.ts';
import type { AirNetwork } from './network.ts';

/** Weather and temperatures of one solve. */
export interface NetworkConditions {
  /** Temperatures, C, from -60 to 90. */
  readonly outdoorTemperatureC: number;
  readonly crawlTemperatureC: number;
  readonly houseTemperatureC: number;
  /** Wind speed before `windFactor`, m/s, from 0 to 100. */
  readonly windMPerS: number;
  /** Share of its flow that each fan runs at, in the order of the fans; left out, all run in full. */
  readonly fanShares?: ArrayLike<number>;
}

/** An `Ending` that the next solve overwrites. */
type LiveEnding = { -readonly [K in keyof Ending]: Ending[K] };

/**
 * Room for the answer of a solve, and its warm start. Every field is overwritten by the next solve with this state, so
 * that a year of solves allocates nothing; copy what must last. Flows count from `from` to `to` of the opening.
 */
export interface NetworkState {
  /** How the last solve ended; `iterations` counts balances of the whole network, `residual` is kg/s. */
  readonly ending: LiveEnding;
  /** Pressures at the crawl ground, Pa, above the outdoor air at that height: outside (0), crawl, house. */
  readonly pressuresPa: Float64Array;
  readonly openingPressurePa: Float64Array;
  readonly openingKgPerS: Float64Array;
  /** At the temperature of the zone the air leaves. */
  readonly openingM3PerS: Float64Array;
  readonly fanKgPerS: Float64Array;
  /** Outdoor air that enters the crawl space straight from outside. */
  crawlOutdoorInflowKgPerS: number;
  /** The same in crawl volumes per hour, counted as standard air of 1.2 kg/m3. */
  crawlOutdoorAirChangesPerHour: number;
  crawlToHouseKgPerS: number;
  houseToCrawlKgPerS: number;
  /** Outdoor air that enters the house other than through the crawl space, in kg/s and volumes per hour as above. */
  houseOutdoorInflowKgPerS: number;
  houseOutdoorAirChangesPerHour: number;
  /** Part of all air entering the house that came up from the crawl space, 0..1; 0 when no air enters. */
  houseInflowShareThroughFloor: number;
  /** Crawl less house pressure at the floor, Pa; above zero it drives crawl air up into the house. */
  floorPressurePa: number;
  /** Working room of the solver. */
  readonly work: NetworkWork;
}

/** Working room of the solver, of no meaning between solves. */
interface NetworkWork {
  /** Pressure difference of each sorted opening at equal zone pressures, Pa: stack and wind. */
  readonly drive: Float64Array;
  /** Pressure difference, Pa, mass flow, kg/s, and its slope, kg/(s Pa), of each sorted opening. */
  readonly pressure: Float64Array;
  readonly mass: Float64Array;
  readonly massSlope: Float64Array;
  /** Air density of outside, crawl, house, kg/m3. */
  readonly density: Float64Array;
  /** Net fan mass into outside, crawl, house, kg/s. */
  readonly fanInflow: Float64Array;
  /** Net mass into outside, crawl, house, kg/s. */
  readonly inflow: Float64Array;
  /** Slopes of mass flow by pressure between outside-crawl, outside-house, crawl-house, kg/(s Pa). */
  readonly slope: Float64Array;
  /** Newton step of the crawl and house pressures, Pa. */
  readonly step: Float64Array;
  /** Largest flow of any opening or fan, kg/s; largest fan flow. */
  readonly largest: Float64Array;
}

/** Makes a state for a network; it starts from zero pressures and holds no answer until the first solve. */
export function createNetworkState(network: AirNetwork): NetworkState {
  return {
    ending: { converged: false, reason: 'iteration-limit', residual: Number.NaN, iterations: 0 },
    pressuresPa: new Float64Array(3),
    openingPressurePa: new Float64Array(network.openingCount),
    openingKgPerS: new Float64Array(network.openingCount),
    openingM3PerS: new Float64Array(network.openingCount),
    fanKgPerS: new Float64Array(network.fanCount),
    crawlOutdoorInflowKgPerS: Number.NaN,
    crawlOutdoorAirChangesPerHour: Number.NaN,
    crawlToHouseKgPerS: Number.NaN,
    houseToCrawlKgPerS: Number.NaN,
    houseOutdoorInflowKgPerS: Number.NaN,
    houseOutdoorAirChangesPerHour: Number.NaN,
    houseInflowShareThroughFloor: Number.NaN,
    floorPressurePa: Number.NaN,
    work: {
      drive: new Float64Array(network.openingCount),
      pressure: new Float64Array(network.openingCount),
      mass: new Float64Array(network.openingCount),
      massSlope: new Float64Array(network.openingCount),
      density: new Float64Array(3),
      fanInflow: new Float64Array(3),
      inflow: new Float64Array(3),
      slope: new Float64Array(3),
      step: new Float64Array(2),
      largest: new Float64Array(2),
    },
  };
}
