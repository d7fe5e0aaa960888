import { EngineError } from '../numerics/engine-error.ts';

/** Something of a given temperature that heat flows to or from. */
export interface HeatCoupling {
  /** W/K, 0 or more. */
  readonly conductanceWPerK: number;
  /** °C. */
  readonly temperatureC: number;
}

/**
 * Temperature of a space in °C at which the heat through all its couplings adds up to nothing: their mean, weighted by
 * conductance. Given heat (machines, people) enters as watts.
 *
 * Source: steady heat balance; with the couplings of ISO 13370:2017 it is that standard's temperature of an underfloor
 * space.
 * @param gainW heat given off inside the space, W
 * @throws EngineError `bad-input` when nothing couples the space to anything
 */
export function steadyTemperatureC(couplings: readonly HeatCoupling[], gainW = 0): number {
  let conductance = 0;
  let heat = gainW;
  for (const { conductanceWPerK, temperatureC } of couplings) {
    conductance += conductanceWPerK;
    heat += conductanceWPerK * temperatureC;
  }
  if (!(conductance > 0)) {
    throw new EngineError('bad-input', 'a space without any heat coupling has no steady temperature');
  }
  return heat / conductance;
}
