import type { Ending } from '../numerics/solution.ts';
import type { GridLevel } from './coarsen.ts';
import { potentialSolver } from './potential-flow.ts';

/** Left-over of the mass balance of each cell, over what is blown in. */
const FLOW_TOLERANCE = 1e-12;

/** An air flow by face, m³/s. */
export interface AirFlowField {
  readonly flow: Float64Array;
  /** Null when nothing moves. */
  readonly ending: Ending | null;
}

/**
 * Completes an imposed flow: to what jets drive through faces it adds the potential flow that makes every cell take as
 * much air as it gives, sources counted: entrainment beside a jet and the return flow around it.
 * @param imposed by face, m³/s
 * @param source what enters each cell, m³/s; must come to nothing over every joined space
 */
export type AirMover = (imposed: Float64Array, source: Float64Array, tolerance?: number) => AirFlowField;

/**
 * @param levels grids of the mesh
 * @param opening open area over distance of each face, m; nothing moves through a face without
 */
export function airMover(levels: readonly GridLevel[], opening: Float64Array): AirMover {
  const { faceA, faceB } = levels[0]!.graph;
  let solve: ReturnType<typeof potentialSolver> | null = null;
  return (imposed, source, tolerance = FLOW_TOLERANCE) => {
    if (!hasAny(imposed) && !hasAny(source)) return { flow: imposed.slice(), ending: null };
    solve ??= potentialSolver(levels, opening);
    const missing = source.slice();
    for (let f = 0; f < imposed.length; f += 1) {
      const q = imposed[f]!;
      if (q === 0) continue;
      missing[faceA[f]!] = missing[faceA[f]!]! - q;
      missing[faceB[f]!] = missing[faceB[f]!]! + q;
    }
    const { potential, ending } = solve(missing, tolerance);
    const flow = imposed.slice();
    for (let f = 0; f < flow.length; f += 1) {
      flow[f] = flow[f]! + opening[f]! * (potential[faceA[f]!]! - potential[faceB[f]!]!);
    }
    return { flow, ending };
  };
}

function hasAny(values: Float64Array): boolean {
  for (let i = 0; i < values.length; i += 1) if (values[i] !== 0) return true;
  return false;
}
