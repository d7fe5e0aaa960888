import { coldFactor } from '../dehumidifier/frost.ts';
import { CONDENSATION_HEAT_J_PER_KG, runningPowerW } from '../dehumidifier/heat.ts';
import { relativeCapacity } from '../dehumidifier/surfaces.ts';
import { relativeHumidityFromHumidityRatio } from '../psychrometrics/humidity-ratio.ts';
import type { FieldMachine } from './arrangement.ts';
import { AIR_J_PER_KG_K, AIR_KG_PER_M3 } from './mixing.ts';

/**
 * The air at intake and humidistat as it answers to the machine: state without what the machine gives, and change of
 * state for each m³/s times unit given at the outlet.
 */
export interface MachineResponse {
  /** Humidity ratio and °C. */
  readonly intakeWater: number;
  readonly intakeHeat: number;
  readonly sensorWater: number;
  readonly sensorHeat: number;
  readonly intakeWaterGain: number;
  readonly intakeHeatGain: number;
  readonly sensorWaterGain: number;
  readonly sensorHeatGain: number;
}

/** A machine at work at one share of the time. */
export interface MachineAtWork {
  /** Share of the time that it runs. */
  readonly duty: number;
  readonly removalKgPerS: number;
  /** Electric power of compressor and fan, mean over time, W. */
  readonly electricW: number;
  /** Heat that it gives to the air, mean over time, W. */
  readonly heatW: number;
  readonly intakeHumidityRatio: number;
  readonly intakeC: number;
  readonly intakeRelativeHumidity: number;
  readonly sensorRelativeHumidity: number;
  /** Share of the time that its air flows. */
  readonly circulation: number;
  /** Air that it moves, mean over time, m³/s. */
  readonly flowM3PerS: number;
  /** What it gives at the outlet in all: its air flow with it, m³/s times humidity ratio and times °C. */
  readonly waterGiven: number;
  readonly heatGiven: number;
  readonly converged: boolean;
}

/** Change of the intake state at which the iteration ends, in humidity ratio and K. */
const WATER_STEP = 1e-13;
const HEAT_STEP = 1e-10;
const MOST_STEPS = 60;
/** Steps for slopes, in humidity ratio and K. */
const WATER_PROBE = 1e-6;
const HEAT_PROBE = 1e-3;

/** Water in proportion to time, or less by what each start loses. Source: part-load curve of `partLoadFactor`. */
function removalShare(duty: number, ideal: boolean): number {
  return ideal ? duty : (0.9 * duty) / (1 - 0.1 * duty);
}

/**
 * The machine and the air at its intake, each of which makes the other: the water that it removes there, the heat that it
 * gives, and the state that comes of both. Newton's method on the intake state.
 * @param duty share of the time that it runs, 0..1
 * @param circulation share of the time that its air flows; above the duty when the fan runs on
 * @param flowM3PerS its air flow at full run
 * @param coldShare share of the running time that removes water in cold air, 0..1; see `coldShareOf`
 */
export function machineAtWork(
  machine: FieldMachine,
  response: MachineResponse,
  duty: number,
  circulation: number,
  coldShare: number,
  pressurePa: number,
): MachineAtWork {
  const flow = circulation * machine.flowM3PerS;
  const share = removalShare(duty, machine.cycling === 'ideal') * coldShare;
  // The air that comes back to the intake carries its own state along.
  const waterBack = 1 - flow * response.intakeWaterGain;
  const heatBack = 1 - flow * response.intakeHeatGain;
  const fanW = (machine.fanPowerW ?? 0) * Math.max(0, circulation - duty);
  let removal = 0;
  let electric = 0;
  const work = (w: number, t: number): void => {
    const relative = relativeHumidityFromHumidityRatio(t, w, pressurePa);
    removal = (share * machine.ratedKgPerDay * relativeCapacity(t, relative)) / 86_400;
    electric =
      coldShare === 0 ? 0 : duty * runningPowerW(machine.ratedKgPerDay, machine.ratedLPerKWh, t, relative);
  };
  const waterAt = (): number =>
    (response.intakeWater - (removal / AIR_KG_PER_M3) * response.intakeWaterGain) / waterBack;
  const heatW = (): number => electric + fanW + removal * CONDENSATION_HEAT_J_PER_KG;
  const heatAt = (): number =>
    (response.intakeHeat + (heatW() / (AIR_KG_PER_M3 * AIR_J_PER_KG_K)) * response.intakeHeatGain) / heatBack;

  let w = response.intakeWater / waterBack;
  let t = response.intakeHeat / heatBack;
  let converged = false;
  for (let step = 0; step < MOST_STEPS && !converged; step += 1) {
    work(w, t);
    const fw = w - waterAt();
    const ft = t - heatAt();
    work(w + WATER_PROBE, t);
    const fww = 1 + (w - waterAt() - fw) / WATER_PROBE;
    const ftw = (t - heatAt() - ft) / WATER_PROBE;
    work(w, t + HEAT_PROBE);
    const fwt = (w - waterAt() - fw) / HEAT_PROBE;
    const ftt = 1 + (t - heatAt() - ft) / HEAT_PROBE;
    const det = fww * ftt - fwt * ftw;
    let dw = (fw * ftt - ft * fwt) / det;
    let dt = (ft * fww - fw * ftw) / det;
    if (!Number.isFinite(dw) || !Number.isFinite(dt)) {
      dw = fw;
      dt = ft;
    }
    // The fits bend where they fall to zero: no more than a few kelvin, nor below dry air, at a time.
    const damp = Math.min(1, 5 / Math.abs(dt), (0.5 * w) / Math.abs(dw));
    w -= damp * dw;
    t -= damp * dt;
    converged = Math.abs(dw) < WATER_STEP && Math.abs(dt) < HEAT_STEP;
  }
  work(w, t);
  const waterGiven = flow * w - removal / AIR_KG_PER_M3;
  const heatGiven = flow * t + heatW() / (AIR_KG_PER_M3 * AIR_J_PER_KG_K);
  return {
    duty,
    removalKgPerS: removal,
    electricW: electric + fanW,
    heatW: heatW(),
    intakeHumidityRatio: w,
    intakeC: t,
    intakeRelativeHumidity: relativeHumidityFromHumidityRatio(t, w, pressurePa),
    sensorRelativeHumidity: relativeHumidityFromHumidityRatio(
      response.sensorHeat + heatGiven * response.sensorHeatGain,
      response.sensorWater + waterGiven * response.sensorWaterGain,
      pressurePa,
    ),
    circulation,
    flowM3PerS: flow,
    waterGiven,
    heatGiven,
    converged,
  };
}

/** Share of its running time that a machine removes water at an intake temperature; 0 where it is too cold for it. */
export function coldShareOf(machine: FieldMachine, intakeC: number): number {
  return coldFactor(intakeC, machine.cold ?? 'low-temperature', machine.lowestIntakeC);
}
