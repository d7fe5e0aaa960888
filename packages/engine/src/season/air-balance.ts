import { MINIMUM_OFF_S } from '../dehumidifier/part-load.ts';
import type { CompiledCase } from './compiled-case.ts';
import {
  capacityKgPerS,
  intakeHumidity,
  isDefrosting,
  powerAtFullW,
  RATING_FLOOR_C,
  runShareOf,
  SWITCHING_BAND,
} from './machine.ts';
import type { StepDrive, StepResult } from './state.ts';

/** Mass ratio of water vapor to dry air. */
export const MASS_RATIO = 0.621945;

/** Linear balance of the vapor in the air during one step, and what came out of it. */
export interface AirBalance {
  /** kg/s, and kg/s per unit of humidity ratio. */
  source: number;
  conductance: number;
  meanHumidity: number;
  endHumidity: number;
  /** Vapor that falls out because the air cannot hold it, kg/s. */
  fogKgPerS: number;
  machineKgPerS: number;
  readonly removal: Float64Array;
}

export function createAirBalance(machines: number): AirBalance {
  return {
    source: 0.5,
    conductance: 0.5,
    meanHumidity: 0.005,
    endHumidity: 0.005,
    fogKgPerS: 0.5,
    machineKgPerS: 0.5,
    removal: new Float64Array(machines),
  };
}

function humidityOf(vaporPa: number, pressurePa: number): number {
  // Air that would boil has no humidity ratio; 0.6 of the pressure stands for it and is never met below 85 °C.
  const p = Math.min(vaporPa, 0.6 * pressurePa);
  return (MASS_RATIO * p) / (pressurePa - p);
}

/**
 * Humidity of the air at the end of the step and its mean, with the machines and the limit of saturation. The air
 * relaxes exponentially to its balance; a machine that can hold its set-point, and air that is saturated, are held at
 * that humidity for the whole step. Either way C (end − start) = dt (source − conductance·mean − taken out) exactly.
 */
export function balanceAir(
  c: CompiledCase,
  b: AirBalance,
  drive: StepDrive,
  airC: number,
  saturationPa: number,
  startHumidity: number,
): void {
  const capacity = c.airMassKg / drive.seconds;
  const { source, conductance } = b;
  const x = conductance / capacity;
  const decay = Math.exp(-x);
  const first = x > 1e-5 ? (1 - decay) / x : 1 - 0.5 * x;
  const second = x > 1e-5 ? (1 - first) / x : 0.5 - x / 6;
  b.fogKgPerS = 0;
  b.machineKgPerS = 0;
  const saturated = humidityOf(saturationPa, drive.pressurePa);
  let full = false;
  if (c.machines.length > 0) {
    b.removal.fill(0);
    if (drive.machinesOn && conductance > 0) {
      const held = holdSetPoint(c, b, drive, airC, saturationPa, startHumidity, capacity);
      if (held >= 0) {
        b.meanHumidity = held;
        b.endHumidity = held;
        return;
      }
      full = held === ALL_FULL;
    }
  }
  let relative = startHumidity / saturated;
  const off = source / conductance;
  for (let pass = full ? 3 : 1; pass > 0; pass--) {
    if (full) fullCapacity(c, b, airC, intakeOf(c, off, relative, saturated));
    const net = (source - b.machineKgPerS) / capacity;
    b.meanHumidity = startHumidity * first + net * second;
    b.endHumidity = startHumidity * decay + net * first;
    relative = b.meanHumidity / saturated;
  }
  if (b.endHumidity > saturated) {
    if (full) fullCapacity(c, b, airC, 1);
    const surplus =
      source - conductance * saturated - capacity * (saturated - startHumidity) - b.machineKgPerS;
    if (surplus > 0) {
      b.fogKgPerS = surplus;
      b.meanHumidity = saturated;
      b.endHumidity = saturated;
    }
  }
}

const ALL_OFF = -1;
const ALL_FULL = -2;

/** Tries each set-point from the highest; the humidity that is held, or `ALL_OFF`, or `ALL_FULL`. */
function holdSetPoint(
  c: CompiledCase,
  b: AirBalance,
  drive: StepDrive,
  airC: number,
  saturationPa: number,
  start: number,
  capacity: number,
): number {
  const { machines } = c;
  const off = b.source / b.conductance;
  for (let j = 0; j < machines.length; j++) {
    const machine = machines[j]!;
    const atIntake = humidityOf(machine.setPoint * saturationPa, drive.pressurePa);
    const target =
      off > atIntake ? Math.max(off - machine.planCoefficient * (off - atIntake), 0.2 * atIntake) : atIntake;
    const needed = b.source - b.conductance * target - capacity * (target - start);
    let lower = 0;
    for (let k = j + 1; k < machines.length; k++) {
      const cap = capacityKgPerS(machines[k]!, airC, machine.setPoint);
      b.removal[k] = cap;
      lower += cap;
    }
    if (needed < lower) continue;
    const own = capacityKgPerS(machine, airC, machine.setPoint);
    if (needed >= lower + own) {
      if (j === 0) return ALL_FULL;
      continue;
    }
    b.removal.fill(0, 0, j);
    b.removal[j] = needed - lower;
    b.machineKgPerS = needed;
    return target;
  }
  b.removal.fill(0);
  return ALL_OFF;
}

function intakeOf(c: CompiledCase, off: number, relative: number, saturated: number): number {
  const eta = c.machines[0]!.planCoefficient;
  return eta === 1 ? Math.min(relative, 1) : intakeHumidity(off / saturated, relative, eta);
}

function fullCapacity(c: CompiledCase, b: AirBalance, airC: number, relativeHumidity: number): void {
  let sum = 0;
  for (let j = 0; j < c.machines.length; j++) {
    const cap = capacityKgPerS(c.machines[j]!, airC, relativeHumidity);
    b.removal[j] = cap;
    sum += cap;
  }
  b.machineKgPerS = sum;
}

/** Power, running time and starts of the machines for the removal that the balance found. */
export function runMachines(
  c: CompiledCase,
  b: AirBalance,
  airC: number,
  saturationPa: number,
  pressurePa: number,
  out: StepResult,
): void {
  out.machineKgPerS = b.machineKgPerS;
  out.machineW = 0;
  out.runShare = 0;
  out.startsPerHour = 0;
  out.defrosting = false;
  out.belowRating = false;
  if (b.machineKgPerS <= 0) return;
  const saturated = humidityOf(saturationPa, pressurePa);
  for (let j = 0; j < c.machines.length; j++) {
    const removal = b.removal[j]!;
    if (removal <= 0) continue;
    const machine = c.machines[j]!;
    const off = b.source / b.conductance / saturated;
    const relative = intakeHumidity(off, b.meanHumidity / saturated, machine.planCoefficient);
    const capacity = Math.max(capacityKgPerS(machine, airC, relative), removal);
    const run = runShareOf(removal, capacity);
    out.machineW += run * powerAtFullW(machine, airC, relative);
    out.runShare += run;
    if (run < 1) {
      const natural = (c.airMassKg * SWITCHING_BAND * saturated) / removal;
      out.startsPerHour += (3600 * (1 - run)) / Math.max(MINIMUM_OFF_S, natural);
    }
    if (isDefrosting(machine, airC)) out.defrosting = true;
    if (airC < RATING_FLOOR_C) out.belowRating = true;
  }
}
