import type { Ending } from '../numerics/solution.ts';
import type { Arrangement } from './arrangement.ts';
import type { FieldModel } from './field-model.ts';
import { fieldSystem } from './field-system.ts';
import { joinedSpaces } from './joined-spaces.ts';
import { setOperator } from './lane-operator.ts';
import { LANES } from './lanes.ts';
import type { MovedAir } from './moved-air.ts';
import { solveLanes } from './solve-lanes.ts';

/** Mean time since the air of each cell left the machine. */
export interface DryingAge {
  /** By cell, s; infinite where none of it arrives. */
  readonly ageS: Float64Array;
  readonly atIntakeS: number;
  /** Mean over the air that is reached, and greatest. */
  readonly meanS: number;
  readonly greatestS: number;
  /** Share of the air of the space that none of the machine's reaches. */
  readonly shareUnreached: number;
  readonly ending: Ending;
}

const TOLERANCE = 1e-10;

/**
 * Age of the dry air while the machine runs: ∇·(F a) − ∇·(hK∇a) = h, with a = 0 in the air that it gives. Circulation by
 * machine and fans alone, without leaks. At the intake it is the volume that is reached over the machine's air flow.
 * @returns null without a machine
 */
export function dryingAge(
  model: FieldModel,
  arrangement: Arrangement,
  air: MovedAir,
  mixingM2PerS: number,
): DryingAge | null {
  const { machine } = arrangement;
  if (machine === undefined || air.machine === null) return null;
  const { graph } = model;
  const system = fieldSystem(model, arrangement, air, mixingM2PerS);
  const conductance = system.still.map((d, f) => d + system.stirred[f]!);
  // Leaks are left out; ducts of transfers belong to the circulation, but share their faces with them.
  const flow = system.machineFlow.map((q, f) => q + air.fanFlow[f]! + model.transferFlow[f]!);
  const moves = Uint8Array.from(conductance, (d, f) => (d > 0 || flow[f] !== 0 ? 1 : 0));
  const space = joinedSpaces(graph.count, graph.faceA, graph.faceB, moves);
  const own = space[air.machine.intake]!;
  const { operator, solver } = model.room(0);
  const loss = new Float64Array(LANES * graph.count);
  const given = new Float64Array(LANES * graph.count);
  for (let i = 0; i < graph.count; i += 1) {
    if (space[i] === own) given[LANES * i] = system.volumeM3[i]!;
    else for (let lane = 0; lane < LANES; lane += 1) loss[LANES * i + lane] = 1;
  }
  for (let lane = 0; lane < LANES; lane += 1) {
    loss[LANES * air.machine.intake + lane] = machine.flowM3PerS;
  }
  setOperator(operator, conductance, flow, loss);
  const lanes = new Float64Array(LANES * graph.count);
  const ending = solveLanes(operator, given, lanes, solver, TOLERANCE);
  const ageS = new Float64Array(graph.count);
  let reached = 0;
  let sum = 0;
  let greatestS = 0;
  for (let i = 0; i < graph.count; i += 1) {
    if (space[i] !== own) {
      ageS[i] = Number.POSITIVE_INFINITY;
      continue;
    }
    ageS[i] = lanes[LANES * i]!;
    reached += system.volumeM3[i]!;
    sum += system.volumeM3[i]! * ageS[i]!;
    greatestS = Math.max(greatestS, ageS[i]!);
  }
  return {
    ageS,
    atIntakeS: ageS[air.machine.intake]!,
    meanS: sum / reached,
    greatestS,
    shareUnreached: Math.max(0, 1 - reached / model.mesh.volumeM3),
    ending,
  };
}
