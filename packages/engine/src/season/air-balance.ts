import { MINIMUM_OFF_S } from '../dehumidifier/part-load.ts';
import { decayOf } from './decay.ts';
import { loopConstants } from './loop-constants.ts';
import { loopRoom } from './loop-room.ts';
import {
  capacityKgPerS,
  intakeHumidity,
  isDefrosting,
  powerAtFullW,
  RATING_FLOOR_C,
  runShareOf,
  SWITCHING_BAND,
} from './machine.ts';
import { stepPlaces } from './step-values.ts';

const { BELOW_RATING, DEFROSTING, MACHINES_W, RUN_SHARE, STARTS_PER_HOUR } = stepPlaces;
const { MASS_RATIO } = loopConstants;

const { balance: b, c, parts, values } = loopRoom;

/** Humidity ratio; air that would boil gets that of six tenths of its pressure, never met below 85 °C. */
export function humidityRatioOf(vaporPa: number, pressurePa: number): number {
  const p = Math.min(vaporPa, 0.6 * pressurePa);
  return (MASS_RATIO * p) / (pressurePa - p);
}

/**
 * Humidity of the air at the end of the step and its mean, with the machines and the limit of saturation. The air
 * relaxes exponentially to its balance; a machine that can hold its set-point, and air that is saturated, are held at
 * that humidity for the whole step. Either way C (end − start) = dt (source − conductance·mean − taken out) exactly.
 */
export function balanceAir(): void {
  const { source, conductance, capacity, start, saturated } = b;
  b.fogKgPerS = 0;
  b.machineKgPerS = 0;
  let first = parts.removal.length;
  if (parts.removal.length > 0) {
    parts.removal.fill(0);
    if (b.machinesOn && conductance > 0) {
      first = holdSetPoint();
      if (first === HELD) return;
    }
  }
  const full = first < parts.removal.length;
  const x = conductance / capacity;
  const decay = decayOf(x);
  const held = x > 1e-5 ? (1 - decay) / x : 1 - 0.5 * x;
  const second = x > 1e-5 ? (1 - held) / x : 0.5 - x / 6;
  if (full) solveFull(first, start * held, second / capacity);
  const net = (source - b.machineKgPerS) / capacity;
  b.mean = start * held + net * second;
  b.end = start * decay + net * held;
  if (full && b.end < b.target) {
    // It gets there before the step is over, and holds.
    scaleRemoval(source - conductance * b.target - capacity * (b.target - start));
    b.mean = b.target;
    b.end = b.target;
    return;
  }
  if (b.end > saturated) {
    const before = b.machineKgPerS;
    if (full) runFull(first, 1);
    const surplus = source - conductance * saturated - capacity * (saturated - start) - b.machineKgPerS;
    if (surplus > 0) {
      b.fogKgPerS = surplus;
      b.mean = saturated;
      b.end = saturated;
    } else if (full && b.machineKgPerS + surplus >= 0) {
      // The machines alone keep the air below saturation when they see it saturated: hold it there.
      scaleRemoval(b.machineKgPerS + surplus);
      b.mean = saturated;
      b.end = saturated;
    } else if (full) scaleRemoval(before);
  }
}

const HELD = -1;

/**
 * Tries each set-point from the highest. When one can be held, sets humidities and removals and returns `HELD`; else
 * returns the first machine that runs through (with all of lower set-point), or their number when all stand still.
 */
function holdSetPoint(): number {
  const { machines } = parts;
  const off = b.source / b.conductance;
  for (let j = 0; j < machines.length; j++) {
    const machine = machines[j]!;
    const atIntake = humidityRatioOf(machine.setPoint * b.saturationPa, b.pressurePa);
    const target =
      off > atIntake ? Math.max(off - machine.planCoefficient * (off - atIntake), 0.2 * atIntake) : atIntake;
    if (target >= b.saturated) continue;
    const needed = b.source - b.conductance * target - b.capacity * (target - b.start);
    let lower = 0;
    for (let k = j + 1; k < machines.length; k++) {
      const cap = capacityKgPerS(machines[k]!, b.airC, machine.setPoint);
      parts.removal[k] = cap;
      lower += cap;
    }
    if (needed < lower) continue;
    const own = capacityKgPerS(machine, b.airC, machine.setPoint);
    if (needed >= lower + own) {
      parts.removal.fill(0);
      b.target = target;
      return j;
    }
    parts.removal.fill(0, 0, j);
    parts.removal[j] = needed - lower;
    b.machineKgPerS = needed;
    b.mean = target;
    b.end = target;
    return HELD;
  }
  parts.removal.fill(0);
  return machines.length;
}

/**
 * Removal of machines that run through at the mean humidity that it leads to: mean = base + (source − removal)·gain, by
 * Newton's method with a numeric slope; capacity rises with humidity, so there is one answer.
 */
function solveFull(first: number, base: number, gain: number): void {
  const relativeOf = b.kappa / b.saturationPa;
  const off = (b.source / b.conductance) * relativeOf;
  const eta = parts.machines[first]!.planCoefficient;
  let mean = b.start;
  for (let pass = 0; pass < 3; pass++) {
    const probe = 0.01 / relativeOf;
    runFull(first, intakeHumidity(off, (mean + probe) * relativeOf, eta));
    const more = b.machineKgPerS;
    runFull(first, intakeHumidity(off, mean * relativeOf, eta));
    const slope = (more - b.machineKgPerS) / probe;
    mean = (base + (b.source - b.machineKgPerS + slope * mean) * gain) / (1 + slope * gain);
    if (mean < 0) mean = 0;
  }
  runFull(first, intakeHumidity(off, mean * relativeOf, eta));
}

function runFull(first: number, relativeHumidity: number): void {
  let sum = 0;
  for (let j = first; j < parts.machines.length; j++) {
    const cap = capacityKgPerS(parts.machines[j]!, b.airC, relativeHumidity);
    parts.removal[j] = cap;
    sum += cap;
  }
  b.machineKgPerS = sum;
}

function scaleRemoval(to: number): void {
  const factor = b.machineKgPerS > 0 ? to / b.machineKgPerS : 0;
  for (let j = 0; j < parts.removal.length; j++) parts.removal[j] = parts.removal[j]! * factor;
  b.machineKgPerS = to;
}

/** Power, running time and starts of the machines for the removal that the balance found. */
export function runMachines(): void {
  values[MACHINES_W] = 0;
  values[RUN_SHARE] = 0;
  values[STARTS_PER_HOUR] = 0;
  values[DEFROSTING] = 0;
  values[BELOW_RATING] = 0;
  if (b.machineKgPerS <= 0) return;
  let watts = 0;
  for (let j = 0; j < parts.machines.length; j++) {
    const removal = parts.removal[j]!;
    if (removal <= 0) continue;
    const machine = parts.machines[j]!;
    const relativeOf = b.kappa / b.saturationPa;
    const off = (b.source / b.conductance) * relativeOf;
    const relative = intakeHumidity(off, b.mean * relativeOf, machine.planCoefficient);
    const capacity = Math.max(capacityKgPerS(machine, b.airC, relative), removal);
    const run = runShareOf(removal, capacity);
    watts += run * powerAtFullW(machine, b.airC, relative);
    values[RUN_SHARE] = values[RUN_SHARE]! + run;
    if (run < 1) {
      // The air alone swings through the band; the longest of that and the machine's rest is the time off.
      const natural = (c.airMassKg * SWITCHING_BAND * b.saturated) / removal;
      const offSeconds = Math.max(natural, MINIMUM_OFF_S);
      values[STARTS_PER_HOUR] = values[STARTS_PER_HOUR]! + (3600 * (1 - run)) / offSeconds;
    }
    if (isDefrosting(machine, b.airC)) values[DEFROSTING] = 1;
    if (b.airC < RATING_FLOOR_C) values[BELOW_RATING] = 1;
  }
  values[MACHINES_W] = watts;
}
