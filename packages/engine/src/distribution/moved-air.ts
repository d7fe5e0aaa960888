import { EngineError } from '../numerics/engine-error.ts';
import { requireRange } from '../numerics/require-range.ts';
import type { Ending } from '../numerics/solution.ts';
import type { Arrangement, FieldFan, FieldMachine } from './arrangement.ts';
import type { FieldModel } from './field-model.ts';
import { jetFlowM3PerS, type Outlet, type Throw, throwInSpace } from './jet.ts';
import { type JetPath, jetPath } from './jet-path.ts';
import { jetMixingM2PerS } from './mixing.ts';
import { cellOfPlace } from './places.ts';

/** What a jet does to the space. */
export interface JetInSpace extends Throw {
  /** Way from the outlet to the first thing that fills half the height, as far as was looked, m. */
  readonly freeRunM: number;
  /** Mixing that it adds, m²/s, to the faces of its bay, or everywhere when the figure was given. */
  readonly mixingM2PerS: number;
  readonly bay: number | null;
}

/** Where a machine takes and gives air, and what its jet does. */
export interface MachineInSpace {
  readonly intake: number;
  readonly outlet: number;
  readonly sensor: number;
  readonly jet: JetInSpace | null;
  readonly mixingM2PerS: number;
  readonly bay: number | null;
}

/** Air moved by a machine that runs through, and by fans as they run. */
export interface MovedAir {
  readonly machine: MachineInSpace | null;
  /** By face, m³/s, at full run. */
  readonly machineFlow: Float64Array;
  readonly fanJets: readonly JetInSpace[];
  /** By face, m³/s, by the share of the time that each fan runs. */
  readonly fanFlow: Float64Array;
  readonly endings: readonly Ending[];
}

/** Where a machine lies on the mesh. @throws EngineError for figures or places that make no sense */
export function placeMachine(model: FieldModel, machine: FieldMachine): MachineInSpace {
  const { mesh, space } = model;
  requireOutlet('dehumidifier', machine);
  requireRange('set-point of the dehumidifier (fraction)', machine.setPoint, 0.05, 1);
  requireRange('capacity of the dehumidifier (kg/day)', machine.ratedKgPerDay, 0.01, 10_000);
  requireRange('efficiency of the dehumidifier (L/kWh)', machine.ratedLPerKWh, 0.01, 100);
  const intake = cellOfPlace(mesh, machine.intake, 'dehumidifier, intake');
  const outlet = cellOfPlace(mesh, machine.outlet, 'dehumidifier, outlet');
  if (space[intake] !== space[outlet]) {
    throw new EngineError(
      'bad-geometry',
      'dehumidifier: no opening lets its air flow back from outlet to intake; give the wall an opening or move one of them',
    );
  }
  const sensor =
    machine.sensor === undefined
      ? intake
      : cellOfPlace(mesh, machine.sensor, 'humidistat of the dehumidifier');
  const jet =
    machine.bearingDeg === null
      ? null
      : jetInSpace(model, machine, outlet, machine.outlet, machine.bearingDeg, machine);
  return {
    intake,
    outlet,
    sensor,
    jet,
    mixingM2PerS: jet?.mixingM2PerS ?? machine.mixingM2PerS ?? stirring(model, machine, outlet),
    bay: machine.mixingM2PerS === undefined ? mesh.bay[outlet]! : null,
  };
}

/** How air flows are worked out. */
export interface MovedAirOptions {
  /** Left-over of the mass balance of each cell, over what is blown in. */
  readonly tolerance?: number;
  /** Flows of another arrangement; those of a machine that stands and blows alike are taken over. */
  readonly known?: { readonly arrangement: Arrangement; readonly air: MovedAir };
}

/** Air flows of an arrangement. @throws EngineError for figures or places that make no sense */
export function movedAir(
  model: FieldModel,
  arrangement: Arrangement,
  { tolerance, known }: MovedAirOptions = {},
): MovedAir {
  const { graph, mesh, mover } = model;
  const endings: Ending[] = [];
  const none = (): Float64Array => new Float64Array(graph.faceA.length);
  const solve = (imposed: Float64Array, source: Float64Array): Float64Array => {
    const { flow, ending } = mover(imposed, source, tolerance);
    if (ending !== null) endings.push(ending);
    return flow;
  };
  let machine: MachineInSpace | null = null;
  let machineFlow = none();
  if (arrangement.machine !== undefined) {
    machine = placeMachine(model, arrangement.machine);
    machineFlow =
      known?.arrangement.machine !== undefined && blowAlike(known.arrangement.machine, arrangement.machine)
        ? known.air.machineFlow
        : solve(...machineDemand(model, arrangement.machine, machine));
  }
  const imposed = none();
  const fanJets = (arrangement.fans ?? []).map((fan, k) => {
    const cell = cellOfPlace(mesh, fan.at, `fan ${k + 1}`);
    requireOutlet(`fan ${k + 1}`, fan);
    const jet = jetInSpace(model, fan, cell, fan.at, fan.bearingDeg, fan);
    impose(model, fan, cell, fan.at, fan.bearingDeg, jet.throwM, runShareOf(fan, k), imposed);
    return jet;
  });
  const fanFlow = solve(imposed, new Float64Array(graph.count));
  return { machine, machineFlow, fanJets, fanFlow, endings };
}

/** What a machine drives through faces and gives to cells. */
function machineDemand(
  model: FieldModel,
  { flowM3PerS, outlet: at, bearingDeg, ...jet }: FieldMachine,
  { jet: inSpace, outlet, intake }: MachineInSpace,
): [Float64Array, Float64Array] {
  const imposed = new Float64Array(model.graph.faceA.length);
  if (inSpace !== null && bearingDeg !== null) {
    impose(model, { ...jet, flowM3PerS }, outlet, at, bearingDeg, inSpace.throwM, 1, imposed);
  }
  const source = new Float64Array(model.graph.count);
  source[outlet] = source[outlet]! + flowM3PerS;
  source[intake] = source[intake]! - flowM3PerS;
  return [imposed, source];
}

function blowAlike(a: FieldMachine, b: FieldMachine): boolean {
  return (
    a === b ||
    (a.intake.xM === b.intake.xM &&
      a.intake.yM === b.intake.yM &&
      a.outlet.xM === b.outlet.xM &&
      a.outlet.yM === b.outlet.yM &&
      a.bearingDeg === b.bearingDeg &&
      a.flowM3PerS === b.flowM3PerS &&
      a.outletM2 === b.outletM2 &&
      a.throwConstant === b.throwConstant &&
      a.throwM === b.throwM)
  );
}

/** Share of the time that a fan runs. */
export function runShareOf(fan: FieldFan, k: number): number {
  return requireRange(`run share of fan ${k + 1}`, fan.runShare ?? 1, 0, 1);
}

function requireOutlet(name: string, { flowM3PerS, outletM2, throwConstant }: Outlet): void {
  requireRange(`air flow of the ${name} (m³/s)`, flowM3PerS, 1e-4, 5);
  requireRange(`outlet of the ${name} (m²)`, outletM2, 1e-4, 1);
  requireRange(`throw constant of the ${name}`, throwConstant, 0.5, 10);
}

/** How far ahead of an outlet one looks for obstacles, m. */
const LOOK_M = 30;

function jetInSpace(
  model: FieldModel,
  outlet: Outlet,
  cell: number,
  at: FieldMachine['outlet'],
  bearingDeg: number,
  given: { readonly throwM?: number; readonly mixingM2PerS?: number },
): JetInSpace {
  const { mesh } = model;
  requireRange('direction of an outlet (degrees)', bearingDeg, -3600, 3600);
  const { freeRunM } = jetPath(mesh, at, cell, bearingDeg, LOOK_M);
  const computed = throwInSpace(outlet, mesh.heightM[cell]!, freeRunM);
  const asked =
    given.throwM === undefined ? computed.throwM : requireRange('throw (m)', given.throwM, 0, LOOK_M);
  return {
    freeRunM,
    throwM: Math.min(asked, freeRunM),
    endedBy: given.throwM !== undefined && asked <= freeRunM ? 'speed' : computed.endedBy,
    mixingM2PerS: given.mixingM2PerS ?? stirring(model, outlet, cell),
    bay: given.mixingM2PerS === undefined ? mesh.bay[cell]! : null,
  };
}

/** Mixing that an outlet adds to its bay, m²/s. */
function stirring({ mesh }: FieldModel, outlet: Outlet, cell: number): number {
  const volumeM3 = mesh.bayVolumeM3[mesh.bay[cell]!]!;
  return jetMixingM2PerS(outlet.flowM3PerS, outlet.outletM2, volumeM3, mesh.heightM[cell]!);
}

function impose(
  model: FieldModel,
  outlet: Outlet,
  cell: number,
  at: FieldMachine['outlet'],
  bearingDeg: number,
  throwM: number,
  share: number,
  imposed: Float64Array,
): void {
  if (throwM <= 0) return;
  const path: JetPath = jetPath(model.mesh, at, cell, bearingDeg, throwM);
  for (const { face, sign, distanceM } of path.crossings) {
    imposed[face] = imposed[face]! + sign * share * jetFlowM3PerS(outlet, distanceM);
  }
}
