import type { Ending } from '../numerics/solution.ts';
import type { CellGraph } from './cell-graph.ts';
import { type Coarsening, coarseConductance, type GridLevel } from './coarsen.ts';

/** The matrix of the potential on one grid, and room to work in. */
interface PotentialLevel {
  readonly graph: CellGraph;
  readonly down: Coarsening | null;
  /** By neighbor slot, 0 or less; symmetric. */
  readonly offDiagonal: Float64Array;
  readonly diagonal: Float64Array;
  /** One over the diagonal; 0 where a cell is bound to nothing. */
  readonly inverse: Float64Array;
  readonly correction: Float64Array;
  readonly demand: Float64Array;
}

/** Steps before a solution is given up, in all and without getting nearer. */
const MOST_STEPS = 300;
const PATIENCE = 30;

/**
 * A solver for the potential of an air flow: what flows out of a cell through its faces is its source. Conjugate gradients
 * with one multigrid cycle as preconditioner; the matrix is symmetric, and positive but for a constant over each joined
 * space, where sources must come to nothing.
 * @param conductance of each face, 0 or more; fixed for all solutions
 */
export function potentialSolver(
  grids: readonly GridLevel[],
  conductance: Float64Array,
): (
  source: Float64Array,
  tolerance: number,
) => { readonly potential: Float64Array; readonly ending: Ending } {
  const levels = levelsOf(grids, conductance);
  const finest = levels[0]!;
  const { count } = finest.graph;
  const r = new Float64Array(count);
  const p = new Float64Array(count);
  const z = new Float64Array(count);
  const image = new Float64Array(count);
  return (source, tolerance) => {
    const x = new Float64Array(count);
    r.set(source);
    p.fill(0);
    const norm = Math.sqrt(dot(source, source));
    let rz = 0;
    let left = norm > 0 ? 1 : 0;
    let best = Number.POSITIVE_INFINITY;
    let bestAt = 0;
    let steps = 0;
    let reason: Ending['reason'] = 'iteration-limit';
    for (; steps < MOST_STEPS; steps += 1) {
      if (!(left > tolerance)) {
        reason = 'tolerance-met';
        break;
      }
      if (left < 0.9 * best) {
        best = left;
        bestAt = steps;
      } else if (steps - bestAt > PATIENCE) {
        reason = 'stagnated';
        break;
      }
      cycle(levels, 0, r, z);
      const now = dot(r, z);
      const beta = steps === 0 ? 0 : now / rz;
      rz = now;
      for (let i = 0; i < count; i += 1) p[i] = z[i]! + beta * p[i]!;
      apply(finest, p, image);
      const by = rz / dot(p, image);
      let rest = 0;
      for (let i = 0; i < count; i += 1) {
        x[i] = x[i]! + by * p[i]!;
        const now = r[i]! - by * image[i]!;
        r[i] = now;
        rest += now * now;
      }
      left = Math.sqrt(rest) / norm;
    }
    return {
      potential: x,
      ending: { converged: reason === 'tolerance-met', reason, residual: left, iterations: steps },
    };
  };
}

function levelsOf(grids: readonly GridLevel[], finest: Float64Array): PotentialLevel[] {
  let conductance = finest;
  return grids.map(({ graph, down }, at) => {
    const { count, faceA, faceB, slotA, slotB } = graph;
    const offDiagonal = new Float64Array(graph.neighbor.length);
    const diagonal = new Float64Array(count);
    for (let f = 0; f < faceA.length; f += 1) {
      const c = conductance[f]!;
      offDiagonal[slotA[f]!] = -c;
      offDiagonal[slotB[f]!] = -c;
      diagonal[faceA[f]!] = diagonal[faceA[f]!]! + c;
      diagonal[faceB[f]!] = diagonal[faceB[f]!]! + c;
    }
    const next = grids[at + 1];
    if (down !== null && next !== undefined) {
      conductance = coarseConductance(graph, down, next.graph, conductance);
    }
    return {
      graph,
      down,
      offDiagonal,
      diagonal,
      inverse: diagonal.map((d) => (d > 0 ? 1 / d : 0)),
      correction: new Float64Array(count),
      demand: new Float64Array(count),
    };
  });
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += a[i]! * b[i]!;
  return sum;
}

function apply(
  { graph, offDiagonal, diagonal }: PotentialLevel,
  x: Float64Array,
  result: Float64Array,
): void {
  const { rowStart, neighbor, count } = graph;
  let p = 0;
  for (let i = 0; i < count; i += 1) {
    let s = diagonal[i]! * x[i]!;
    for (const end = rowStart[i + 1]!; p < end; p += 1) s += offDiagonal[p]! * x[neighbor[p]!]!;
    result[i] = s;
  }
}

/** A symmetric cycle from x = 0: forward sweep, coarser grids, backward sweep. */
function cycle(levels: readonly PotentialLevel[], at: number, b: Float64Array, x: Float64Array): void {
  const { graph, down, offDiagonal, inverse } = levels[at]!;
  const { rowStart, lowerEnd, neighbor, count } = graph;
  for (let i = 0; i < count; i += 1) {
    let s = b[i]!;
    for (let p = rowStart[i]!, end = lowerEnd[i]!; p < end; p += 1) s -= offDiagonal[p]! * x[neighbor[p]!]!;
    x[i] = s * inverse[i]!;
  }
  const coarse = levels[at + 1];
  if (coarse !== undefined && down !== null) {
    const { demand, correction } = coarse;
    const { cell } = down;
    demand.fill(0);
    for (let i = 0; i < count; i += 1) {
      let s = 0;
      for (let p = lowerEnd[i]!, end = rowStart[i + 1]!; p < end; p += 1)
        s -= offDiagonal[p]! * x[neighbor[p]!]!;
      demand[cell[i]!] = demand[cell[i]!]! + s;
    }
    cycle(levels, at + 1, demand, correction);
    for (let i = 0; i < count; i += 1) x[i] = x[i]! + correction[cell[i]!]!;
  }
  for (let i = count - 1; i >= 0; i -= 1) {
    let s = b[i]!;
    for (let p = rowStart[i]!, end = rowStart[i + 1]!; p < end; p += 1)
      s -= offDiagonal[p]! * x[neighbor[p]!]!;
    x[i] = s * inverse[i]!;
  }
}
