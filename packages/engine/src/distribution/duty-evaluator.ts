import type { Ending } from '../numerics/solution.ts';
import type { FieldMachine } from './arrangement.ts';
import type { EvaluatorRoom } from './evaluator-room.ts';
import type { FieldSystem } from './field-system.ts';
import { type LaneOperator, updateOperator } from './lane-operator.ts';
import { LANES } from './lanes.ts';
import { type MachineAtWork, type MachineResponse, machineAtWork } from './machine-closure.ts';
import { solveLanes } from './solve-lanes.ts';

/** What a duty leads to. */
export interface DutyTrial {
  readonly work: MachineAtWork;
  /** Relative humidity at the humidistat above its set-point. */
  readonly excess: number;
  readonly ending: Ending;
}

/**
 * Solves one system for one duty after another, each from the solution before. Lanes: humidity ratio without what the
 * machine gives, its change for one unit given at the outlet, and both again for temperature.
 */
export interface DutyEvaluator {
  readonly system: FieldSystem;
  /** The four lanes of the last trial. */
  readonly lanes: Float64Array;
  readonly try: (duty: number, tolerance: number) => DutyTrial;
  /** Time removes water only in this share; set once the temperature at the intake is known. */
  coldShare: number;
}

/** A start is carried on at most so far beyond two solutions, in distances between them. */
const LONGEST_LEAP = 2;

/**
 * @param start lanes to start from, or null to start from nothing
 */
export function dutyEvaluator(
  system: FieldSystem,
  machine: FieldMachine,
  pressurePa: number,
  room: EvaluatorRoom,
  start: Float64Array | null,
): DutyEvaluator {
  const { operator, solver } = room;
  const count = system.levels[0]!.graph.count;
  const lanes = start ?? new Float64Array(LANES * count);
  const given = new Float64Array(LANES * count);
  for (let i = 0; i < count; i += 1) {
    given[LANES * i] = system.waterGiven[i]!;
    given[LANES * i + 2] = system.heatGiven[i]!;
  }
  given[LANES * system.outlet + 1] = 1;
  given[LANES * system.outlet + 3] = 1;
  let setFor = Number.NaN;
  let solvedTo = Number.POSITIVE_INFINITY;
  // The solution before the last, to go on from both in a straight line.
  let earlier: Float64Array | null = null;
  let earlierFor = Number.NaN;
  const goOn = (circulation: number): void => {
    const before = earlier ?? new Float64Array(lanes.length);
    const share = earlier === null ? 0 : (circulation - setFor) / (setFor - earlierFor);
    const by = Math.abs(share) <= LONGEST_LEAP ? share : 0;
    for (let i = 0; i < lanes.length; i += 1) {
      const now = lanes[i]!;
      lanes[i] = now + by * (now - before[i]!);
      before[i] = now;
    }
    earlier = before;
    earlierFor = setFor;
  };
  let ending: Ending | null = null;
  const evaluator: DutyEvaluator = {
    system,
    lanes,
    coldShare: 1,
    try: (duty, tolerance) => {
      const circulation = machine.fanAlwaysOn === true ? 1 : duty;
      if (circulation !== setFor) {
        if (!Number.isNaN(setFor)) goOn(circulation);
        setCirculation(operator, system, circulation);
        setFor = circulation;
        solvedTo = Number.POSITIVE_INFINITY;
      }
      if (ending === null || solvedTo > tolerance) {
        ending = solveLanes(operator, given, lanes, solver, tolerance);
        solvedTo = tolerance;
      }
      const work = machineAtWork(
        machine,
        responseOf(system, lanes),
        duty,
        circulation,
        evaluator.coldShare,
        pressurePa,
      );
      return { work, excess: work.sensorRelativeHumidity - machine.setPoint, ending };
    },
  };
  return evaluator;
}

/** Sets the matrices for a share of the time that the machine moves air. */
export function setCirculation(operator: LaneOperator, system: FieldSystem, circulation: number): void {
  const { still, stirred, steadyFlow, machineFlow, intake, flowM3PerS } = system;
  const { conductance, flow, loss } = operator.levels[0]!;
  for (let f = 0; f < conductance.length; f += 1) {
    conductance[f] = still[f]! + circulation * stirred[f]!;
    flow[f] = steadyFlow[f]! + circulation * machineFlow[f]!;
  }
  loss.set(system.loss);
  if (intake >= 0) {
    for (let at = LANES * intake; at < LANES * (intake + 1); at += 1) {
      loss[at] = loss[at]! + circulation * flowM3PerS;
    }
  }
  updateOperator(operator);
}

function responseOf({ intake, sensor }: FieldSystem, lanes: Float64Array): MachineResponse {
  const at = LANES * intake;
  const read = LANES * sensor;
  return {
    intakeWater: lanes[at]!,
    intakeWaterGain: lanes[at + 1]!,
    intakeHeat: lanes[at + 2]!,
    intakeHeatGain: lanes[at + 3]!,
    sensorWater: lanes[read]!,
    sensorWaterGain: lanes[read + 1]!,
    sensorHeat: lanes[read + 2]!,
    sensorHeatGain: lanes[read + 3]!,
  };
}
