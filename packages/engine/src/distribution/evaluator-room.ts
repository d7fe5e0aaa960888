import type { GridLevel } from './coarsen.ts';
import { createOperator, type LaneOperator } from './lane-operator.ts';
import { type SolverRoom, solverRoom } from './solve-lanes.ts';

/** Room for the systems of one set of grids, one at a time. */
export interface EvaluatorRoom {
  readonly operator: LaneOperator;
  readonly solver: SolverRoom;
}

/** Room to solve systems on these grids in, the finest first. */
export function evaluatorRoom(levels: readonly GridLevel[]): EvaluatorRoom {
  return { operator: createOperator(levels), solver: solverRoom(levels[0]!.graph.count) };
}
