import { coldFactor } from '../dehumidifier/frost.ts';
import { runningPowerW } from '../dehumidifier/heat.ts';
import { HUMIDISTAT_DIFFERENTIAL, partLoadFactor } from '../dehumidifier/part-load.ts';
import { relativeCapacity } from '../dehumidifier/surfaces.ts';
import type { SeasonMachine } from './season-case.ts';

/** Coldest test air behind the capacity surface, °C (65 °F). */
export const RATING_FLOOR_C = (65 - 32) / 1.8;
/** From switching on to switching off, as relative humidity. */
export const SWITCHING_BAND = 2 * HUMIDISTAT_DIFFERENTIAL;

/** Machines switch themselves off above this intake temperature, °C. Common practice, no source. */
const HOTTEST_INTAKE_C = 40;

/** Water that a running machine removes, kg/s, at the air of its intake; 0 where it is too cold or too hot for it. */
export function capacityKgPerS(
  machine: SeasonMachine,
  temperatureC: number,
  relativeHumidity: number,
): number {
  const cold = coldFactor(temperatureC, machine.cold, machine.lowestIntakeC);
  if (cold === 0 || temperatureC > HOTTEST_INTAKE_C) return 0;
  return (machine.ratedKgPerDay / 86_400) * cold * relativeCapacity(temperatureC, relativeHumidity);
}

/** Electric power of a running machine, W. */
export function powerAtFullW(machine: SeasonMachine, temperatureC: number, relativeHumidity: number): number {
  return runningPowerW(machine.ratedKgPerDay, machine.ratedLPerKWh, temperatureC, relativeHumidity);
}

/** Share of the time that a machine runs to remove `removal` of the `capacity` it would remove running through. */
export function runShareOf(removal: number, capacity: number): number {
  const load = removal / capacity;
  return load >= 1 ? 1 : load / partLoadFactor(load);
}

/** Whether a machine that runs at this intake temperature loses time to defrosting. */
export function isDefrosting(machine: SeasonMachine, temperatureC: number): boolean {
  return coldFactor(temperatureC, machine.cold, machine.lowestIntakeC) < 1;
}

/**
 * What the intake sees when the mean is known: W_in = W_off − (W_off − W_mean)/eta, all relative to saturation.
 * @param off humidity that the space would have with the machine off, relative
 * @param mean mean humidity of the space, relative
 * @param eta plan coefficient, 1 for well-mixed air
 */
export function intakeHumidity(off: number, mean: number, eta: number): number {
  const seen = eta === 1 || off <= mean ? mean : off - (off - mean) / eta;
  return seen < 0 ? 0 : Math.min(seen, 1);
}
