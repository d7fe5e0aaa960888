import type { Ending } from '../numerics/solution.ts';
import type { AirNetwork } from './network.ts';
import { balance, imbalance, nilMass, trappedFanMass } from './network-balance.ts';
import { bracketedBalance } from './network-brackets.ts';
import { setDrive } from './network-drive.ts';
import { newtonBalance, settleAlongTangents } from './network-newton.ts';
import type { NetworkConditions, NetworkState } from './network-state.ts';

/** Density of standard air, kg/m3, at which air changes are counted. */
const STANDARD_AIR_KG_PER_M3 = 1.2;
const SECONDS_PER_HOUR = 3600;

function end(state: NetworkState, reason: Ending['reason'], residual: number, iterations: number): void {
  state.ending.converged = reason === 'tolerance-met';
  state.ending.reason = reason;
  state.ending.residual = residual;
  state.ending.iterations = iterations;
}

function sumUp(network: AirNetwork, state: NetworkState): void {
  const { pairStart, place, direction, fanFrom, fanTo } = network;
  const { openingPressurePa, openingKgPerS, openingM3PerS, fanKgPerS, pressuresPa } = state;
  const { pressure, mass, density } = state.work;
  let crawlOutdoor = 0;
  let houseOutdoor = 0;
  let up = 0;
  let down = 0;
  for (let pair = 0; pair < 3; pair += 1) {
    const volumeA = 1 / density[pair === 2 ? 1 : 0]!;
    const volumeB = 1 / density[pair === 0 ? 1 : 2]!;
    let along = 0;
    let against = 0;
    const stop = pairStart[pair + 1]!;
    for (let k = pairStart[pair]!; k < stop; k += 1) {
      const flow = mass[k]!;
      const i = place[k]!;
      const sign = direction[k]!;
      if (flow > 0) along += flow;
      else against -= flow;
      openingPressurePa[i] = sign * pressure[k]!;
      openingKgPerS[i] = sign * flow;
      openingM3PerS[i] = sign * flow * (flow > 0 ? volumeA : volumeB);
    }
    if (pair === 0) crawlOutdoor = along;
    else if (pair === 1) houseOutdoor = along;
    else {
      up = along;
      down = against;
    }
  }
  for (let k = 0; k < network.fanCount; k += 1) {
    const flow = fanKgPerS[k]!;
    const a = flow < 0 ? fanTo[k]! : fanFrom[k]!;
    const b = flow < 0 ? fanFrom[k]! : fanTo[k]!;
    const size = Math.abs(flow);
    if (a === 0 && b === 1) crawlOutdoor += size;
    else if (a === 0) houseOutdoor += size;
    else if (a === 1 && b === 2) up += size;
    else if (b === 1) down += size;
  }
  const perHour = SECONDS_PER_HOUR / STANDARD_AIR_KG_PER_M3;
  const houseInflow = houseOutdoor + up;
  state.crawlOutdoorInflowKgPerS = crawlOutdoor;
  state.crawlOutdoorAirChangesPerHour = (crawlOutdoor * perHour) / network.crawlVolumeM3;
  state.crawlToHouseKgPerS = up;
  state.houseToCrawlKgPerS = down;
  state.houseOutdoorInflowKgPerS = houseOutdoor;
  state.houseOutdoorAirChangesPerHour = (houseOutdoor * perHour) / network.houseVolumeM3;
  state.houseInflowShareThroughFloor = houseInflow > 0 ? up / houseInflow : 0;
  state.floorPressurePa =
    pressuresPa[1]! - pressuresPa[2]! + (density[2]! - density[1]!) * network.floorGravityHeight;
}

/** Starts from the pressures of the last answer, or from zero when there is none. False when no answer can exist. */
function start(network: AirNetwork, conditions: NetworkConditions, state: NetworkState): boolean {
  setDrive(network, conditions, state);
  const { pressuresPa, ending } = state;
  if (!ending.converged) pressuresPa.fill(0);
  if (network.crawlHeld) pressuresPa[1] = 0;
  if (network.houseHeld) pressuresPa[2] = 0;
  const trapped = trappedFanMass(network, state);
  if (trapped === 0) return true;
  pressuresPa.fill(0);
  balance(network, state);
  sumUp(network, state);
  end(state, 'no-bracket', trapped, 1);
  return false;
}

function finishByBrackets(network: AirNetwork, state: NetworkState, balancesBefore: number): void {
  const counter = { count: balancesBefore };
  const found = bracketedBalance(network, state, counter);
  if (found && imbalance(network, state) > nilMass(state)) settleAlongTangents(network, state);
  const residual = imbalance(network, state);
  const reason = !found ? 'no-bracket' : residual <= nilMass(state) ? 'tolerance-met' : 'stagnated';
  end(state, reason, residual, counter.count);
}

/**
 * Finds the crawl and house pressures at which no air accumulates, and every flow, in `state`, which is also returned.
 * Starts from the last answer in `state`, which makes an hourly run fast; the answer does not depend on that start
 * beyond the tolerance. Damped Newton steps, then searches in brackets; always ends, and `state.ending` says how:
 * - `tolerance-met`: the net mass into each zone is below 1e-10 of the largest flow, or below 1e-15 kg/s;
 * - `no-bracket`: a fan forces air into or out of a zone that has no open path, and the flows mean nothing;
 * - `stagnated`: pressures are exact to rounding yet the net mass, in `residual`, kg/s, is above the tolerance, as with
 *   a vast opening between two zones that only pin holes tie to the outdoors.
 * A zone that no open path ties to the outdoors is held at zero pressure.
 * Wind pressure is C_p rho_o (windFactor wind)^2 / 2 on the outdoor side; density 353.2/(t + 273.15); straight line
 * below 1e-4 Pa. Source: zone pressure network, computed.
 * @throws EngineError `out-of-range` for conditions outside the ranges of `NetworkConditions`
 */
export function solveNetwork(
  network: AirNetwork,
  conditions: NetworkConditions,
  state: NetworkState,
): NetworkState {
  if (!start(network, conditions, state)) return state;
  const balances = newtonBalance(network, state);
  const residual = imbalance(network, state);
  if (residual <= nilMass(state)) end(state, 'tolerance-met', residual, balances);
  else finishByBrackets(network, state, balances);
  sumUp(network, state);
  return state;
}

/** The same answer by searches in brackets alone, some hundred times slower: the referee of `solveNetwork`. */
export function solveNetworkByBrackets(
  network: AirNetwork,
  conditions: NetworkConditions,
  state: NetworkState,
): NetworkState {
  if (!start(network, conditions, state)) return state;
  finishByBrackets(network, state, 0);
  sumUp(network, state);
  return state;
}
