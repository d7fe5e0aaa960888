import { EngineError } from '../numerics/engine-error.ts';
import type { AirNetwork } from './network.ts';
import type { NetworkConditions, NetworkState } from './network-state.ts';

/** Density of dry air at 101325 Pa, kg/m3, for a temperature in C: 353.2/(t + 273.15). */
function airDensityKgPerM3(temperatureC: number): number {
  return 353.2 / (temperatureC + 273.15);
}

function requireConditions(conditions: NetworkConditions): void {
  const { outdoorTemperatureC, crawlTemperatureC, houseTemperatureC, windMPerS } = conditions;
  const coldest = Math.min(outdoorTemperatureC, crawlTemperatureC, houseTemperatureC);
  const warmest = Math.max(outdoorTemperatureC, crawlTemperatureC, houseTemperatureC);
  if (!(coldest >= -60 && warmest <= 90)) {
    throw new EngineError(
      'out-of-range',
      `air temperatures must be from -60 to 90 C; got ${coldest} to ${warmest}`,
    );
  }
  if (!(windMPerS >= 0 && windMPerS <= 100)) {
    throw new EngineError('out-of-range', `wind speed must be from 0 to 100 m/s; got ${windMPerS}`);
  }
}

function setFans(network: AirNetwork, shares: ArrayLike<number> | undefined, state: NetworkState): void {
  const { density, fanInflow, largest } = state.work;
  const { fanFrom, fanTo, fanFlow, fanByVolume } = network;
  fanInflow[0] = 0;
  fanInflow[1] = 0;
  fanInflow[2] = 0;
  let most = 0;
  for (let k = 0; k < network.fanCount; k += 1) {
    const share = shares === undefined ? 1 : shares[k];
    if (share === undefined || !(share >= 0 && share <= 100)) {
      throw new EngineError(
        'out-of-range',
        `fan shares must be from 0 to 100, one for each fan; got ${share}`,
      );
    }
    const a = fanFrom[k]!;
    const b = fanTo[k]!;
    const flow = fanFlow[k]! * share;
    const mass = fanByVolume[k] === 1 ? flow * density[flow >= 0 ? a : b]! : flow;
    state.fanKgPerS[k] = mass;
    fanInflow[a] = fanInflow[a]! - mass;
    fanInflow[b] = fanInflow[b]! + mass;
    most = Math.max(most, Math.abs(mass));
  }
  largest[1] = most;
}

/**
 * Sets air densities, stack and wind pressure of each opening, and fan flows, for one solve.
 * @throws EngineError `out-of-range` for conditions outside the ranges of `NetworkConditions`; `bad-input` for a state
 * made for another count of openings or fans
 */
export function setDrive(network: AirNetwork, conditions: NetworkConditions, state: NetworkState): void {
  requireConditions(conditions);
  if (state.openingKgPerS.length !== network.openingCount || state.fanKgPerS.length !== network.fanCount) {
    throw new EngineError('bad-input', 'the state was made for a network with other openings or fans');
  }
  const { drive, density } = state.work;
  density[0] = airDensityKgPerM3(conditions.outdoorTemperatureC);
  density[1] = airDensityKgPerM3(conditions.crawlTemperatureC);
  density[2] = airDensityKgPerM3(conditions.houseTemperatureC);
  const speed = conditions.windMPerS * network.windFactor;
  const windPressure = 0.5 * density[0]! * speed * speed;
  const { gravityHeight, windCoefficient, pairStart } = network;
  for (let pair = 0; pair < 3; pair += 1) {
    const lift = density[pair === 0 ? 1 : 2]! - density[pair === 2 ? 1 : 0]!;
    const stop = pairStart[pair + 1]!;
    for (let k = pairStart[pair]!; k < stop; k += 1) {
      drive[k] = lift * gravityHeight[k]! + windPressure * windCoefficient[k]!;
    }
  }
  setFans(network, conditions.fanShares, state);
}
