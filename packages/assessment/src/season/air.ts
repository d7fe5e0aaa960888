import { airflow } from '@undercroft/engine';
import type { Assumptions } from '../assumptions.ts';
import { leakageValues } from '../budget/air-exchange.ts';
import { crawlFacts } from '../budget/crawl-facts.ts';
import type { SpaceGeometry } from '../geometry.ts';
import type { SpaceFan, SpaceState } from './space-state.ts';

/** Guesses of the network that a year is run with and that may be drawn otherwise. */
const YEAR_GUESSES = [
  'closedVentLeakShare',
  'sealedVentLeakShare',
  'crawlWallLeakageM2PerM2',
  'sillLeakageM2PerM',
  'plainDoorLeakageM2',
  'weatherstrippedDoorLeakageM2',
  'unseenCrawlLeakageM2',
  'floorShareOfHouseLeakage',
  'sealedFloorLeakageM2PerM2',
  'houseAirChangesAt50Pa',
];

/** 1 cfm for each 50 ft² of floor (residential code R408.3) [m³/s per m²]. */
const EXHAUST_M3_PER_S_M2 = 4.719474e-4 / (50 * 0.09290304);
/** Air of the space that a soil-gas fan draws through leaks of the liner: an estimate of the trade, no source [m³/s]. */
const THROUGH_LINER = { value: 0.01, low: 0.002, high: 0.03, unit: 'm³/s' } as const;

function exhaustM3PerS(fan: SpaceFan, floorAreaM2: number, assumptions: Assumptions): number {
  if (fan.kind === 'circulating-fan') return 0;
  if (fan.kind === 'exhaust-fan') return fan.airflowM3PerS ?? EXHAUST_M3_PER_S_M2 * floorAreaM2;
  return assumptions.band(
    'soilGasFanAir',
    'Air of the space that the soil-gas fan draws',
    THROUGH_LINER,
    'Drawn through leaks of the liner; a smoke pencil at its laps tells.',
  ).value;
}

/** Facts for the pressure network of a space as it stands or would stand. */
export function airFacts(
  state: SpaceState,
  space: SpaceGeometry,
  assumptions: Assumptions,
): airflow.CrawlFacts {
  const facts = crawlFacts(state.job, space);
  const fans = state.fans
    .map((fan): airflow.NetworkFan => {
      const flowM3PerS = exhaustM3PerS(fan, facts.floorAreaM2, assumptions);
      return { name: fan.kind, from: 'crawl', to: 'outside', flowM3PerS };
    })
    .filter((fan) => 'flowM3PerS' in fan && fan.flowM3PerS > 0);
  return {
    ...facts,
    ...(state.wallsSealed ? { walls: 'sealed' as const } : {}),
    ...(state.floorSealed ? { floor: 'sealed' as const } : {}),
    fans: [...(facts.fans ?? []), ...fans],
  };
}

/** Networks by what they were made of, so that cases that share their air share its solutions. */
export type NetworkCache = Map<string, airflow.CrawlNetwork>;

/** So many networks are kept: those of one job and of the change before. */
const KEPT = 8;
const kept: NetworkCache = new Map();

/** Networks that were made last, for the cases of the next assessment too. */
export function keptNetworks(): NetworkCache {
  for (const oldest of [...kept.keys()].slice(0, Math.max(0, kept.size - KEPT))) kept.delete(oldest);
  return kept;
}

/** The pressure network of a space, from the cache where the same one was made before. */
export function airNetwork(
  state: SpaceState,
  space: SpaceGeometry,
  assumptions: Assumptions,
  cache: NetworkCache,
): airflow.CrawlNetwork {
  const facts = airFacts(state, space, assumptions);
  const ducts = state.job.plan.ducts.some((d) => d.carries === 'supply' || d.carries === 'return');
  const keys = ducts ? [...YEAR_GUESSES, 'ductImbalanceM3PerS'] : YEAR_GUESSES;
  const chosen: airflow.ChosenValues = Object.fromEntries(
    leakageValues(facts, assumptions, keys).map(({ key, value }) => [key, value]),
  );
  const key = JSON.stringify([facts, chosen]);
  const made = cache.get(key) ?? airflow.crawlNetwork(facts, chosen);
  // The newest stand at the end.
  cache.delete(key);
  cache.set(key, made);
  return made;
}
