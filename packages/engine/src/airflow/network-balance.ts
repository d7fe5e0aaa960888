import type { AirNetwork } from './network.ts';
import { LINEAR_BELOW_PA } from './network.ts';
import type { NetworkState } from './network-state.ts';
import { raise } from './pressure-power.ts';

/** A constant of this file is folded into the compiled loop; one that is imported is fetched each time. */
const LINEAR_PA = LINEAR_BELOW_PA;
/** Net mass of a zone counts as nil below this part of the largest flow, and below this many kg/s in any case. */
const NIL_SHARE = 1e-10;
const NIL_KG_PER_S = 1e-15;
/** Step over pressure difference up to which a flow may follow its tangent. */
const TANGENT_SHARE = 1e-4;

/** Flow of every opening at the pressures of the state, net mass into each zone, and slopes. */
export function balance(network: AirNetwork, state: NetworkState): void {
  const { pairStart, coefficient, exponent, exponentKind, linearSlope } = network;
  const { pressuresPa } = state;
  const { drive, pressure, mass, massSlope, density, fanInflow, inflow, slope, largest } = state.work;
  let most = largest[1]!;
  inflow[0] = fanInflow[0]!;
  inflow[1] = fanInflow[1]!;
  inflow[2] = fanInflow[2]!;
  for (let pair = 0; pair < 3; pair += 1) {
    const a = pair === 2 ? 1 : 0;
    const b = pair === 0 ? 1 : 2;
    const difference = pressuresPa[a]! - pressuresPa[b]!;
    const densityA = density[a]!;
    const densityB = density[b]!;
    const stop = pairStart[pair + 1]!;
    let massSum = 0;
    let slopeSum = 0;
    for (let k = pairStart[pair]!; k < stop; k += 1) {
      const across = drive[k]! + difference;
      const size = Math.abs(across);
      const upstream = across > 0 ? densityA : densityB;
      let flow: number;
      let flowSlope: number;
      if (size < LINEAR_PA) {
        flowSlope = linearSlope[k]! * upstream;
        flow = flowSlope * size;
      } else {
        flow = coefficient[k]! * raise(size, exponentKind[k]!, exponent[k]!) * upstream;
        flowSlope = (exponent[k]! * flow) / size;
      }
      if (flow > most) most = flow;
      if (across < 0) flow = -flow;
      pressure[k] = across;
      mass[k] = flow;
      massSlope[k] = flowSlope;
      massSum += flow;
      slopeSum += flowSlope;
    }
    slope[pair] = slopeSum;
    inflow[a] = inflow[a]! - massSum;
    inflow[b] = inflow[b]! + massSum;
  }
  largest[0] = most;
}

/**
 * Moves the flows of the last balance along their tangents to pressures changed by the given steps, when every opening
 * moves by so little, 1e-4 of its pressure difference, that the tangent is the power law within 2e-9; otherwise changes
 * nothing and returns false. A full Newton step then balances to rounding without raising a power once more.
 */
export function moveAlongTangents(
  network: AirNetwork,
  state: NetworkState,
  crawlStep: number,
  houseStep: number,
): boolean {
  const { pairStart } = network;
  const { pressure, mass, massSlope, fanInflow, inflow } = state.work;
  for (let pair = 0; pair < 3; pair += 1) {
    const size = Math.abs(pairStep(pair, crawlStep, houseStep));
    const stop = pairStart[pair + 1]!;
    for (let k = pairStart[pair]!; k < stop; k += 1) {
      const across = Math.abs(pressure[k]!);
      if (size > TANGENT_SHARE * across && across + size >= LINEAR_PA) return false;
    }
  }
  inflow[1] = fanInflow[1]!;
  inflow[2] = fanInflow[2]!;
  for (let pair = 0; pair < 3; pair += 1) {
    const a = pair === 2 ? 1 : 0;
    const b = pair === 0 ? 1 : 2;
    const change = pairStep(pair, crawlStep, houseStep);
    const stop = pairStart[pair + 1]!;
    let massSum = 0;
    for (let k = pairStart[pair]!; k < stop; k += 1) {
      const flow = mass[k]! + massSlope[k]! * change;
      pressure[k] = pressure[k]! + change;
      mass[k] = flow;
      massSum += flow;
    }
    inflow[a] = inflow[a]! - massSum;
    inflow[b] = inflow[b]! + massSum;
  }
  state.pressuresPa[1] = state.pressuresPa[1]! + crawlStep;
  state.pressuresPa[2] = state.pressuresPa[2]! + houseStep;
  return true;
}

/** How far the pressure difference of a pair of zones moves when crawl and house move. */
function pairStep(pair: number, crawlStep: number, houseStep: number): number {
  if (pair === 0) return -crawlStep;
  return pair === 1 ? -houseStep : crawlStep - houseStep;
}

/** Largest net mass into a zone whose pressure is sought, kg/s, at the last balance. */
export function imbalance(network: AirNetwork, state: NetworkState): number {
  const { inflow } = state.work;
  const crawl = network.crawlHeld ? 0 : Math.abs(inflow[1]!);
  const house = network.houseHeld ? 0 : Math.abs(inflow[2]!);
  return Math.max(crawl, house);
}

/** Net mass, kg/s, that still counts as nil at the last balance. */
export function nilMass(state: NetworkState): number {
  const share = NIL_SHARE * state.work.largest[0]!;
  return Math.max(share, NIL_KG_PER_S);
}

/** Fan mass, kg/s, forced into or out of zones that have no open path to the outdoors; 0 when there is none. */
export function trappedFanMass(network: AirNetwork, state: NetworkState): number {
  const { fanInflow, largest } = state.work;
  let trapped = 0;
  if (network.joinedButShut) trapped = Math.abs(fanInflow[1]! + fanInflow[2]!);
  else {
    if (network.crawlHeld) trapped = Math.abs(fanInflow[1]!);
    if (network.houseHeld) trapped = Math.max(trapped, Math.abs(fanInflow[2]!));
  }
  return trapped > NIL_SHARE * largest[1]! ? trapped : 0;
}
