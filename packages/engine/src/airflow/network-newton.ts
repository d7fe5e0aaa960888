import type { AirNetwork } from './network.ts';
import { PRESSURE_LIMIT_PA } from './network.ts';
import { balance, imbalance, moveAlongTangents, nilMass } from './network-balance.ts';
import type { NetworkState } from './network-state.ts';

const STEP_LIMIT = 40;
const TRIAL_LIMIT = 12;
/** Net mass over largest flow below which it is worth asking whether the tangents will do. */
const TRY_TANGENTS_BELOW = 1e-3;

/** Works out the pressure changes that would balance the tangents of the last balance; false when there are none. */
function setStep(network: AirNetwork, state: NetworkState): boolean {
  const { inflow, slope, step } = state.work;
  const crawlHouse = slope[2]!;
  const crawl = slope[0]! + crawlHouse;
  const house = slope[1]! + crawlHouse;
  let crawlStep = 0;
  let houseStep = 0;
  if (network.crawlHeld) {
    if (!network.houseHeld) houseStep = inflow[2]! / house;
  } else if (network.houseHeld) {
    crawlStep = inflow[1]! / crawl;
  } else {
    // crawl house - crawlHouse^2, without the difference of near-equal products
    const determinant = slope[0]! * slope[1]! + crawlHouse * (slope[0]! + slope[1]!);
    crawlStep = (house * inflow[1]! + crawlHouse * inflow[2]!) / determinant;
    houseStep = (crawl * inflow[2]! + crawlHouse * inflow[1]!) / determinant;
  }
  step[0] = crawlStep;
  step[1] = houseStep;
  return Number.isFinite(crawlStep) && Number.isFinite(houseStep);
}

/**
 * One last step on the tangents of the last balance, which settles mass below what pressures can resolve in a space
 * with a wide opening. Does nothing when the step is not small.
 */
export function settleAlongTangents(network: AirNetwork, state: NetworkState): void {
  const { step } = state.work;
  if (setStep(network, state)) moveAlongTangents(network, state, step[0]!, step[1]!);
}

/** Takes as much of the step as does not overshoot; returns the balances made, or 0 when no pressure moved. */
function takeStep(network: AirNetwork, state: NetworkState, downhill: number): number {
  const { pressuresPa } = state;
  const { inflow, step } = state.work;
  const crawlStart = pressuresPa[1]!;
  const houseStart = pressuresPa[2]!;
  const crawlStep = step[0]!;
  const houseStep = step[1]!;
  let part = 1;
  for (let trial = 1; ; trial += 1) {
    const crawl = crawlStart + part * crawlStep;
    const house = houseStart + part * houseStep;
    if (crawl === crawlStart && house === houseStart) return 0;
    if (Math.abs(crawl) > PRESSURE_LIMIT_PA || Math.abs(house) > PRESSURE_LIMIT_PA) return 0;
    pressuresPa[1] = crawl;
    pressuresPa[2] = house;
    balance(network, state);
    const past = -(inflow[1]! * crawlStep + inflow[2]! * houseStep);
    if (past <= 0.5 * downhill || trial === TRIAL_LIMIT) return trial;
    part *= Math.max(downhill / (downhill + past), 0.05);
  }
}

/**
 * Damped Newton steps on the crawl and house pressures of `state`, from where they stand. Returns the number of
 * balances it made; whether they balance is for the caller to see. The net mass into the zones is the downhill
 * gradient of a convex function of the pressures (each flow rises with its pressure difference), so that the slope
 * along a step tells overshoot; a step that goes past the lowest point is cut back by the secant rule. On a square-
 * root law the full step overshoots to twice its length for ever, and the cut lands on the answer.
 */
export function newtonBalance(network: AirNetwork, state: NetworkState): number {
  const { inflow, step, largest } = state.work;
  balance(network, state);
  let count = 1;
  for (let i = 0; i < STEP_LIMIT; i += 1) {
    const error = imbalance(network, state);
    if (error <= nilMass(state) || !setStep(network, state)) break;
    const crawlStep = step[0]!;
    const houseStep = step[1]!;
    if (error < TRY_TANGENTS_BELOW * largest[0]! && moveAlongTangents(network, state, crawlStep, houseStep)) {
      continue;
    }
    const downhill = inflow[1]! * crawlStep + inflow[2]! * houseStep;
    if (!(downhill > 0)) break;
    const balances = takeStep(network, state, downhill);
    if (balances === 0) break;
    count += balances;
  }
  return count;
}
