import type { Arrangement } from './arrangement.ts';
import { coarseConductance, type GridLevel } from './coarsen.ts';
import type { FieldModel } from './field-model.ts';
import { LANES } from './lanes.ts';
import { AIR_J_PER_KG_K, AIR_KG_PER_M3 } from './mixing.ts';
import type { JetInSpace, MovedAir } from './moved-air.ts';
import { runShareOf } from './moved-air.ts';
import { cellOfPlace } from './places.ts';

/**
 * Everything that a steady state hangs on, on one grid: what joins the cells, at rest and by the machine at full run,
 * what they lose and are given, and where the machine takes, gives and reads the air.
 */
export interface FieldSystem {
  readonly levels: readonly GridLevel[];
  /** Conductance of each face, m³/s: still air with fans, and what the machine at full run adds. */
  readonly still: Float64Array;
  readonly stirred: Float64Array;
  /** Flow through each face, m³/s, in the same two parts. */
  readonly steadyFlow: Float64Array;
  readonly machineFlow: Float64Array;
  /** By cell and lane, m³/s. */
  readonly loss: Float64Array;
  readonly waterGiven: Float64Array;
  readonly heatGiven: Float64Array;
  /** Air of the cell, m³; for balances over time and means. */
  readonly volumeM3: Float64Array;
  /** Cells of the machine; -1 where there is none. */
  readonly intake: number;
  readonly outlet: number;
  readonly sensor: number;
  /** Air flow of the machine at full run, m³/s. */
  readonly flowM3PerS: number;
}

/**
 * The system of an arrangement on the finest grid.
 * @param mixingM2PerS background mixing, m²/s
 */
export function fieldSystem(
  model: FieldModel,
  arrangement: Arrangement,
  air: MovedAir,
  mixingM2PerS: number,
): FieldSystem {
  const { mesh, opening, exchange } = model;
  const still = opening.map((open, f) => mixingM2PerS * open + exchange[f]!);
  const stirred = new Float64Array(opening.length);
  air.fanJets.forEach((jet, k) => {
    addMixing(model, jet, runShareOf(arrangement.fans![k]!, k), still);
  });
  const { machine } = air;
  if (machine !== null) addMixing(model, machine, 1, stirred);
  const heatGiven = model.heatGiven.slice();
  (arrangement.fans ?? []).forEach((fan, k) => {
    const cell = cellOfPlace(mesh, fan.at, `fan ${k + 1}`);
    heatGiven[cell] = heatGiven[cell]! + (fan.powerW * runShareOf(fan, k)) / (AIR_KG_PER_M3 * AIR_J_PER_KG_K);
  });
  return {
    levels: model.levels,
    still,
    stirred,
    steadyFlow: model.steadyFlow.map((q, f) => q + air.fanFlow[f]!),
    machineFlow: air.machineFlow,
    loss: model.loss,
    waterGiven: model.waterGiven,
    heatGiven,
    volumeM3: mesh.areaM2.map((area, i) => area * mesh.heightM[i]!),
    intake: machine?.intake ?? -1,
    outlet: machine?.outlet ?? -1,
    sensor: machine?.sensor ?? -1,
    flowM3PerS: arrangement.machine?.flowM3PerS ?? 0,
  };
}

/** Adds the mixing of a jet to the faces within its bay, or to all. */
function addMixing(
  { mesh, opening }: FieldModel,
  { mixingM2PerS, bay }: Pick<JetInSpace, 'mixingM2PerS' | 'bay'>,
  share: number,
  to: Float64Array,
): void {
  const { faceA, faceB } = mesh;
  for (let f = 0; f < faceA.length; f += 1) {
    if (bay !== null && (mesh.bay[faceA[f]!] !== bay || mesh.bay[faceB[f]!] !== bay)) continue;
    to[f] = to[f]! + share * mixingM2PerS * opening[f]!;
  }
}

/** The same system on the next coarser grid; null when there is none. Cheap to solve, and near enough to start from. */
export function coarserSystem(system: FieldSystem): FieldSystem | null {
  const [here, below] = system.levels;
  if (here === undefined || below === undefined || here.down === null) return null;
  const { graph, down } = here;
  const { cell, face, sign } = down;
  const flows = (fine: Float64Array): Float64Array => {
    const coarse = new Float64Array(below.graph.faceA.length);
    for (let f = 0; f < fine.length; f += 1) {
      const to = face[f]!;
      if (to >= 0) coarse[to] = coarse[to]! + sign[f]! * fine[f]!;
    }
    return coarse;
  };
  const sums = (fine: Float64Array, lanes: number): Float64Array => {
    const coarse = new Float64Array(lanes * below.graph.count);
    for (let i = 0; i < cell.length; i += 1) {
      for (let lane = 0; lane < lanes; lane += 1) {
        const to = lanes * cell[i]! + lane;
        coarse[to] = coarse[to]! + fine[lanes * i + lane]!;
      }
    }
    return coarse;
  };
  const at = (fine: number): number => (fine < 0 ? -1 : cell[fine]!);
  const still = coarseConductance(graph, down, below.graph, system.still);
  // Faces in series do not add up in parts, so the stirred part is what it adds to the still one.
  const both = coarseConductance(
    graph,
    down,
    below.graph,
    system.still.map((d, f) => d + system.stirred[f]!),
  );
  return {
    levels: system.levels.slice(1),
    still,
    stirred: both.map((d, f) => d - still[f]!),
    steadyFlow: flows(system.steadyFlow),
    machineFlow: flows(system.machineFlow),
    loss: sums(system.loss, LANES),
    waterGiven: sums(system.waterGiven, 1),
    heatGiven: sums(system.heatGiven, 1),
    volumeM3: sums(system.volumeM3, 1),
    intake: at(system.intake),
    outlet: at(system.outlet),
    sensor: at(system.sensor),
    flowM3PerS: system.flowM3PerS,
  };
}
