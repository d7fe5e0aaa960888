import type { AirNetwork } from './network.ts';
import { PRESSURE_LIMIT_PA } from './network.ts';
import { balance } from './network-balance.ts';
import type { NetworkState } from './network-state.ts';

const HALVING_LIMIT = 220;
/** A zone is balanced when its net mass is below this part of the largest flow: well under what the whole asks. */
const BALANCED_SHARE = 1e-13;
const CRAWL = 1;
const HOUSE = 2;

/** Balances the network at the pressure of one zone; false when a zone inside could not be balanced. */
type BalanceAt = (network: AirNetwork, state: NetworkState, counter: Counter) => boolean;

interface Counter {
  count: number;
}

function balanceOnce(network: AirNetwork, state: NetworkState, counter: Counter): boolean {
  balance(network, state);
  counter.count += 1;
  return true;
}

/** For the house pressure as it stands, finds the crawl pressure that balances the crawl space. */
function balanceCrawl(network: AirNetwork, state: NetworkState, counter: Counter): boolean {
  if (network.crawlHeld) return balanceOnce(network, state, counter);
  return balanceZone(network, state, CRAWL, balanceOnce, counter);
}

/** Fall of the net mass into a zone per Pa, the crawl pressure following the house pressure in the outer search. */
function fallPerPa(network: AirNetwork, state: NetworkState, zone: number): number {
  const { slope } = state.work;
  const crawl = slope[0]! + slope[2]!;
  if (zone === CRAWL) return crawl;
  return slope[1]! + (network.crawlHeld || crawl === 0 ? 0 : (slope[2]! * slope[0]!) / crawl);
}

/**
 * Finds the pressure of `zone` at which nothing accumulates in it. Net mass falls as the pressure rises, so that a
 * bracket found by widening holds the answer; Newton steps are taken inside it and halving when they do not shrink it.
 */
function balanceZone(
  network: AirNetwork,
  state: NetworkState,
  zone: number,
  balanceAt: BalanceAt,
  counter: Counter,
): boolean {
  const { pressuresPa } = state;
  const { inflow, largest } = state.work;
  if (!balanceAt(network, state, counter)) return false;
  if (Math.abs(inflow[zone]!) <= BALANCED_SHARE * largest[0]!) return true;
  const rising = inflow[zone]! > 0;
  let low = pressuresPa[zone]!;
  let high = low;
  for (let width = 0.1; ; width *= 4) {
    const next = rising ? high + width : low - width;
    if (Math.abs(next) > PRESSURE_LIMIT_PA) return false;
    pressuresPa[zone] = next;
    if (!balanceAt(network, state, counter)) return false;
    if (rising) {
      low = high;
      high = next;
    } else {
      high = low;
      low = next;
    }
    if (Math.abs(inflow[zone]!) <= BALANCED_SHARE * largest[0]!) return true;
    if (inflow[zone]! > 0 !== rising) break;
  }
  let before = high - low;
  for (let i = 0; i < HALVING_LIMIT; i += 1) {
    const newton: number = pressuresPa[zone]! + inflow[zone]! / fallPerPa(network, state, zone);
    const middle = low + 0.5 * (high - low);
    const width = high - low;
    const next: number = newton > low && newton < high && width <= 0.75 * before ? newton : middle;
    before = width;
    if (next <= low || next >= high) return true;
    pressuresPa[zone] = next;
    if (!balanceAt(network, state, counter)) return false;
    if (Math.abs(inflow[zone]!) <= BALANCED_SHARE * largest[0]!) return true;
    if (inflow[zone]! > 0) low = next;
    else high = next;
  }
  return true;
}

/**
 * Balances the network by searches in brackets, the crawl pressure inside the house pressure. Slow and sure: the
 * referee of the Newton steps, and what is left when they fail. Returns false when a zone has no balance within 1e6
 * Pa.
 */
export function bracketedBalance(network: AirNetwork, state: NetworkState, counter: Counter): boolean {
  return network.houseHeld
    ? balanceCrawl(network, state, counter)
    : balanceZone(network, state, HOUSE, balanceCrawl, counter);
}
