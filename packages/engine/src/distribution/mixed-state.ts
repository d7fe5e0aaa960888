import type { FieldMachine } from './arrangement.ts';
import { cellGraph } from './cell-graph.ts';
import { dutyEvaluator } from './duty-evaluator.ts';
import { seekDuty } from './duty-search.ts';
import { evaluatorRoom } from './evaluator-room.ts';
import type { FieldModel } from './field-model.ts';
import type { FieldSystem } from './field-system.ts';
import { coldShareOf, type MachineAtWork } from './machine-closure.ts';
import type { MachineOutcome } from './steady-state.ts';

/** The whole space as one cell: what one expects who takes its air as mixed. */
export function mixedState(
  { totals, pressurePa }: FieldModel,
  machine: FieldMachine,
  { heatGiven, flowM3PerS }: FieldSystem,
): { readonly outcome: MachineOutcome; readonly machine: MachineAtWork } {
  let heat = 0;
  for (let i = 0; i < heatGiven.length; i += 1) heat += heatGiven[i]!;
  const none = new Float64Array(0);
  const one: FieldSystem = {
    levels: ONE_CELL,
    still: none,
    stirred: none,
    steadyFlow: none,
    machineFlow: none,
    loss: totals.loss,
    waterGiven: Float64Array.of(totals.waterGiven),
    heatGiven: Float64Array.of(heat),
    volumeM3: Float64Array.of(1),
    intake: 0,
    outlet: 0,
    sensor: 0,
    flowM3PerS,
  };
  const evaluator = dutyEvaluator(one, machine, pressurePa, evaluatorRoom(ONE_CELL), null);
  const off = evaluator.try(0, 1e-12);
  const coldShare = coldShareOf(machine, off.work.intakeC);
  if (coldShare === 0) return { outcome: 'too-cold', machine: off.work };
  evaluator.coldShare = coldShare;
  const found = seekDuty(evaluator, 0.05, 1e-7);
  return { outcome: found.outcome, machine: found.trial.work };
}

const ONE_CELL = [
  {
    graph: cellGraph({
      count: 1,
      column: new Int32Array(1),
      row: new Int32Array(1),
      faceA: new Int32Array(0),
      faceB: new Int32Array(0),
      faceAxis: new Uint8Array(0),
    }),
    down: null,
  },
];
