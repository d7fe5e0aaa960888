import { HUMIDISTAT_DIFFERENTIAL } from '../dehumidifier/part-load.ts';
import { requireRange } from '../numerics/require-range.ts';
import { relativeHumidityFromHumidityRatio } from '../psychrometrics/humidity-ratio.ts';
import type { Arrangement, FieldMachine } from './arrangement.ts';
import { setCirculation } from './duty-evaluator.ts';
import type { FieldModel, SpreadExchange } from './field-model.ts';
import { type FieldSystem, fieldSystem } from './field-system.ts';
import { createOperator, type LaneOperator } from './lane-operator.ts';
import { LANES } from './lanes.ts';
import { coldShareOf, type MachineAtWork, machineAtWork } from './machine-closure.ts';
import { AIR_J_PER_KG_K, AIR_KG_PER_M3 } from './mixing.ts';
import { movedAir } from './moved-air.ts';
import { solveLanes } from './solve-lanes.ts';

/** How a stretch of hours is run. */
export interface FieldDayOptions {
  /** Background mixing, m²/s. */
  readonly mixingM2PerS: number;
  /** State at the start, by cell; see `SteadyField`. */
  readonly start: { readonly humidityRatio: Float64Array; readonly temperatureC: Float64Array };
  /** Length of a step, s, 10 to 3600; 300 by default. */
  readonly stepS?: number;
  /** Hours to run, 24 by default, up to 24 × 31. */
  readonly hours?: number;
  /** The humidistat switches so far above and below its setting; 0.03 by default. */
  readonly differential?: number;
  /** Humidity ratios and temperatures that the exchanges of the site draw to at a time, in their order. */
  readonly drawnTo?: (timeS: number) => {
    readonly vapor?: readonly number[];
    readonly heat?: readonly number[];
  };
}

/** The end of one step. */
export interface FieldDayStep {
  readonly timeS: number;
  readonly running: boolean;
  readonly sensorRelativeHumidity: number;
  readonly meanRelativeHumidity: number;
  readonly highestRelativeHumidity: number;
}

/** What came of a stretch of hours. */
export interface FieldDay {
  readonly steps: readonly FieldDayStep[];
  readonly runShare: number;
  readonly starts: number;
  readonly waterKg: number;
  readonly energyKWh: number;
  readonly humidityRatio: Float64Array;
  readonly temperatureC: Float64Array;
  /** Water and heat that came in less what went out and what the air took up, over what came in. */
  readonly balance: { readonly water: number; readonly heat: number };
  /** Whether every step was solved to its tolerance. */
  readonly converged: boolean;
}

const TOLERANCE = 1e-10;

/**
 * The field through hours, by implicit steps, with a humidistat that switches: on above its setting by the differential,
 * off below it by as much. Error falls in proportion to the step.
 * @throws EngineError for figures or places that make no sense
 */
export function fieldDay(model: FieldModel, arrangement: Arrangement, options: FieldDayOptions): FieldDay {
  const stepS = requireRange('step (s)', options.stepS ?? 300, 10, 3600);
  const hours = requireRange('hours', options.hours ?? 24, stepS / 3600, 24 * 31);
  const differential = requireRange(
    'differential of the humidistat (fraction)',
    options.differential ?? HUMIDISTAT_DIFFERENTIAL,
    0,
    0.2,
  );
  requireRange('background mixing (m²/s)', options.mixingM2PerS, 1e-5, 10);
  const machine = arrangement.machine ?? null;
  const air = movedAir(model, arrangement);
  const system = fieldSystem(model, arrangement, air, options.mixingM2PerS);
  const { pressurePa } = model;
  const { count } = model.mesh;
  const resting = inTime(model, system, machine?.fanAlwaysOn === true ? 1 : 0, stepS);
  const running = machine === null ? null : inTime(model, system, 1, stepS);

  const humidityRatio = options.start.humidityRatio.slice();
  const temperatureC = options.start.temperatureC.slice();
  const given = new Float64Array(LANES * count);
  const steps: FieldDayStep[] = [];
  const sums = { on: 0, starts: 0, water: 0, joules: 0, waterIn: 0, waterNet: 0, heatIn: 0, heatNet: 0 };
  const held = { water: stored(system, humidityRatio), heat: stored(system, temperatureC) };
  let on = false;
  let converged = true;
  const read = (): number =>
    relativeHumidityFromHumidityRatio(
      temperatureC[system.sensor]!,
      humidityRatio[system.sensor]!,
      pressurePa,
    );
  const count1 = Math.max(1, Math.round((hours * 3600) / stepS));
  for (let k = 1; k <= count1; k += 1) {
    const timeS = k * stepS;
    if (machine !== null) {
      const reading = read();
      const was = on;
      if (reading > machine.setPoint + differential) on = true;
      else if (reading < machine.setPoint - differential) on = false;
      if (coldShareOf(machine, temperatureC[system.intake]!) === 0) on = false;
      if (on && !was) sums.starts += 1;
    }
    const { water, heat } = givenAt(model, system, options.drawnTo?.(timeS));
    for (let i = 0; i < count; i += 1) {
      const capacity = system.volumeM3[i]! / stepS;
      given[LANES * i] = water[i]! + capacity * humidityRatio[i]!;
      given[LANES * i + 2] = heat[i]! + capacity * temperatureC[i]!;
    }
    const moving = on ? running! : resting;
    const ending = solveLanes(moving.operator, given, moving.lanes, model.room(0).solver, TOLERANCE);
    converged &&= ending.converged;
    const work = machine === null ? null : workIn(moving, system, machine, on, temperatureC, pressurePa);
    for (let i = 0; i < count; i += 1) {
      const at = LANES * i;
      humidityRatio[i] = moving.lanes[at]! + (work?.waterGiven ?? 0) * moving.gain[at + 1]!;
      temperatureC[i] = moving.lanes[at + 2]! + (work?.heatGiven ?? 0) * moving.gain[at + 3]!;
    }
    if (work !== null) {
      if (on) sums.on += 1;
      sums.water += work.removalKgPerS * stepS;
      sums.joules += work.electricW * stepS;
    }
    book(
      system,
      water,
      humidityRatio,
      0,
      work === null ? 0 : -work.removalKgPerS / AIR_KG_PER_M3,
      (gain, net) => {
        sums.waterIn += gain * stepS;
        sums.waterNet += net * stepS;
      },
    );
    const warmth = work === null ? 0 : work.heatW / (AIR_KG_PER_M3 * AIR_J_PER_KG_K);
    book(system, heat, temperatureC, 2, warmth, (gain, net) => {
      sums.heatIn += gain * stepS;
      sums.heatNet += net * stepS;
    });
    steps.push({
      timeS,
      running: on,
      ...readings(model, humidityRatio, temperatureC, machine === null ? Number.NaN : read()),
    });
  }
  return {
    steps,
    runShare: sums.on / count1,
    starts: sums.starts,
    waterKg: sums.water,
    energyKWh: sums.joules / 3.6e6,
    humidityRatio,
    temperatureC,
    balance: {
      water: (sums.waterNet - (stored(system, humidityRatio) - held.water)) / sums.waterIn,
      heat: (sums.heatNet - (stored(system, temperatureC) - held.heat)) / sums.heatIn,
    },
    converged,
  };
}

/** A step of time with the machine in one state. */
interface Moving {
  readonly operator: LaneOperator;
  /** Lanes of humidity and temperature of the last step that was taken so. */
  readonly lanes: Float64Array;
  /** Change in a step for one unit given at the outlet, in the other lanes. */
  readonly gain: Float64Array;
  readonly circulation: number;
}

function inTime(model: FieldModel, system: FieldSystem, circulation: number, stepS: number): Moving {
  const loss = system.loss.slice();
  for (let i = 0; i < loss.length; i += 1) {
    loss[i] = loss[i]! + system.volumeM3[Math.floor(i / LANES)]! / stepS;
  }
  const operator = createOperator(model.levels);
  setCirculation(operator, { ...system, loss }, circulation);
  const gain = new Float64Array(loss.length);
  if (system.outlet >= 0) {
    const unit = new Float64Array(loss.length);
    unit[LANES * system.outlet + 1] = 1;
    unit[LANES * system.outlet + 3] = 1;
    solveLanes(operator, unit, gain, model.room(0).solver, TOLERANCE);
  }
  return { operator, lanes: new Float64Array(loss.length), gain, circulation };
}

function workIn(
  { lanes, gain, circulation }: Moving,
  { intake, sensor }: FieldSystem,
  machine: FieldMachine,
  on: boolean,
  temperatureC: Float64Array,
  pressurePa: number,
): MachineAtWork {
  const at = LANES * intake;
  const read = LANES * sensor;
  return machineAtWork(
    machine,
    {
      intakeWater: lanes[at]!,
      intakeHeat: lanes[at + 2]!,
      sensorWater: lanes[read]!,
      sensorHeat: lanes[read + 2]!,
      intakeWaterGain: gain[at + 1]!,
      intakeHeatGain: gain[at + 3]!,
      sensorWaterGain: gain[read + 1]!,
      sensorHeatGain: gain[read + 3]!,
    },
    on ? 1 : 0,
    circulation,
    coldShareOf(machine, temperatureC[intake]!),
    pressurePa,
  );
}

/** What cells are given at a time, the exchanges drawing to other values than the site says. */
function givenAt(
  model: FieldModel,
  system: FieldSystem,
  drawnTo: { readonly vapor?: readonly number[]; readonly heat?: readonly number[] } | undefined,
): { readonly water: Float64Array; readonly heat: Float64Array } {
  const changed = (
    base: Float64Array,
    exchanges: readonly SpreadExchange[],
    values: readonly number[] | undefined,
  ): Float64Array => {
    if (values === undefined) return base;
    const result = base.slice();
    exchanges.forEach(({ cells, conductance, drawnTo: usual }, k) => {
      const change = (values[k] ?? usual) - usual;
      if (change === 0) return;
      for (let c = 0; c < cells.length; c += 1) {
        result[cells[c]!] = result[cells[c]!]! + conductance[c]! * change;
      }
    });
    return result;
  };
  return {
    water: changed(system.waterGiven, model.vapor, drawnTo?.vapor),
    heat: changed(system.heatGiven, model.heat, drawnTo?.heat),
  };
}

function stored({ volumeM3 }: FieldSystem, state: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < volumeM3.length; i += 1) sum += volumeM3[i]! * state[i]!;
  return sum;
}

/** Books what a step brought: all that came in, and what is left of it after what went out. */
function book(
  { loss }: FieldSystem,
  given: Float64Array,
  state: Float64Array,
  lane: number,
  machine: number,
  add: (gain: number, net: number) => void,
): void {
  let gain = Math.max(0, machine);
  let net = machine;
  for (let i = 0; i < state.length; i += 1) {
    const q = given[i]! - loss[LANES * i + lane]! * state[i]!;
    if (q > 0) gain += q;
    net += q;
  }
  add(gain, net);
}

function readings(
  { mesh, pressurePa }: FieldModel,
  humidityRatio: Float64Array,
  temperatureC: Float64Array,
  sensorRelativeHumidity: number,
): Omit<FieldDayStep, 'timeS' | 'running'> {
  let sum = 0;
  let highest = 0;
  for (let i = 0; i < mesh.count; i += 1) {
    const rh = relativeHumidityFromHumidityRatio(temperatureC[i]!, humidityRatio[i]!, pressurePa);
    sum += mesh.areaM2[i]! * rh;
    highest = Math.max(highest, rh);
  }
  return {
    sensorRelativeHumidity,
    meanRelativeHumidity: sum / mesh.floorM2,
    highestRelativeHumidity: highest,
  };
}
