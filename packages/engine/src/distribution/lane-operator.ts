import { type CellGraph, DUCT } from './cell-graph.ts';
import { type Coarsening, coarsenConductance, type GridLevel } from './coarsen.ts';
import { laneSums } from './lane-vectors.ts';
import { LANES } from './lanes.ts';

/** The matrices of all lanes on one grid, and room to work in. */
export interface OperatorLevel {
  readonly graph: CellGraph;
  readonly down: Coarsening | null;
  /** By neighbor slot, 0 or less, the same for all lanes. */
  readonly offDiagonal: Float64Array;
  /** By cell and lane. */
  readonly diagonal: Float64Array;
  /** One over the diagonal; 0 where a cell is bound to nothing. */
  readonly inverse: Float64Array;
  readonly conductance: Float64Array;
  readonly flow: Float64Array;
  /** What each cell gives away by itself, by cell and lane. */
  readonly loss: Float64Array;
  /** Correction and right-hand side of the multigrid cycle, by cell and lane. */
  readonly correction: Float64Array;
  readonly demand: Float64Array;
  readonly within: Float64Array;
}

/** The matrices of all lanes on all grids, finest first. */
export interface LaneOperator {
  readonly levels: readonly OperatorLevel[];
  /** Sum over all cells of what they lose, by lane. */
  readonly totalLoss: Float64Array;
}

/** Room for operators on these grids; `setOperator` fills it, as often as wanted. */
export function createOperator(grids: readonly GridLevel[]): LaneOperator {
  const levels = grids.map(({ graph, down }) => {
    const cells = LANES * graph.count;
    return {
      graph,
      down,
      offDiagonal: new Float64Array(graph.neighbor.length),
      diagonal: new Float64Array(cells),
      inverse: new Float64Array(cells),
      conductance: new Float64Array(graph.faceA.length),
      flow: new Float64Array(graph.faceA.length),
      loss: new Float64Array(cells),
      correction: new Float64Array(cells),
      demand: new Float64Array(cells),
      within: new Float64Array(2 * graph.count),
    };
  });
  return { levels, totalLoss: new Float64Array(LANES) };
}

/**
 * Part of the conductance that a face keeps for the upstream value of the cell behind it: Pe/(e^Pe − 1), 1 for still
 * air. With this weighting the flux between two cells is exact for steady flow along a line, whatever the flow.
 * Source: exponential weighting of Scharfetter and Gummel 1969, from memory.
 */
export function bernoulli(peclet: number): number {
  if (peclet > 0.25 || peclet < -0.25) return peclet / (Math.exp(peclet) - 1);
  // Taylor series, to rounding within these bounds: the quotient loses digits there.
  const x2 = peclet * peclet;
  return (
    1 - peclet / 2 + x2 * (1 / 12 - x2 * (1 / 720 - x2 * (1 / 30240 - x2 * (1 / 1209600 - x2 / 47900160))))
  );
}

/**
 * Sets the matrices: for each cell, what leaves it through its faces and by itself less what neighbors bring. Coarser
 * grids carry the same flows and losses; their conductances follow `coarsenConductance`, and their faces are weighted
 * anew, so that they are as good for strong flow as the finest.
 * @param conductance of each face, m³/s, 0 or more
 * @param flow through each face from A to B, m³/s
 * @param loss of each cell by lane, m³/s, 0 or more; at least one cell of every joined space has some, or the flow is
 *   none and the systems are solved up to a constant
 */
export function setOperator(
  operator: LaneOperator,
  conductance: Float64Array,
  flow: Float64Array,
  loss: Float64Array,
): void {
  const finest = operator.levels[0]!;
  finest.conductance.set(conductance);
  finest.flow.set(flow);
  finest.loss.set(loss);
  updateOperator(operator);
}

/** As `setOperator`, from what stands on the finest level already. */
export function updateOperator({ levels, totalLoss }: LaneOperator): void {
  laneSums(levels[0]!.loss, totalLoss);
  for (let at = 0; at < levels.length; at += 1) {
    const level = levels[at]!;
    fill(level);
    const coarse = levels[at + 1];
    if (coarse !== undefined && level.down !== null) carryDown(level, level.down, coarse);
  }
}

function fill({ graph, offDiagonal, diagonal, inverse, conductance, flow, loss }: OperatorLevel): void {
  const { count, faceA, faceB, faceAxis, slotA, slotB } = graph;
  // Faces are summed in the first lane.
  for (let i = 0; i < LANES * count; i += LANES) diagonal[i] = 0;
  for (let f = 0; f < faceA.length; f += 1) {
    const d = conductance[f]!;
    const q = flow[f]!;
    let fromA = 0;
    let fromB = 0;
    if (d > 0 && faceAxis[f] !== DUCT) {
      fromB = d * bernoulli(q / d);
      fromA = fromB + q;
      if (fromA < 0) fromA = 0;
    } else if (q > 0) fromA = q;
    else fromB = -q;
    offDiagonal[slotA[f]!] = -fromB;
    offDiagonal[slotB[f]!] = -fromA;
    const a = LANES * faceA[f]!;
    const b = LANES * faceB[f]!;
    diagonal[a] = diagonal[a]! + fromA;
    diagonal[b] = diagonal[b]! + fromB;
  }
  for (let i = 0; i < LANES * count; i += LANES) {
    const faces = diagonal[i]!;
    for (let lane = 0; lane < LANES; lane += 1) {
      const value = faces + loss[i + lane]!;
      diagonal[i + lane] = value;
      inverse[i + lane] = value > 0 ? 1 / value : 0;
    }
  }
}

function carryDown(level: OperatorLevel, down: Coarsening, coarse: OperatorLevel): void {
  const { face, sign, cell } = down;
  coarsenConductance(level.graph, down, coarse.graph, level.conductance, coarse.conductance, coarse.within);
  coarse.flow.fill(0);
  for (let f = 0; f < face.length; f += 1) {
    const to = face[f]!;
    if (to >= 0) coarse.flow[to] = coarse.flow[to]! + sign[f]! * level.flow[f]!;
  }
  coarse.loss.fill(0);
  for (let i = 0; i < cell.length; i += 1) {
    const from = LANES * i;
    const to = LANES * cell[i]!;
    for (let lane = 0; lane < LANES; lane += 1) {
      coarse.loss[to + lane] = coarse.loss[to + lane]! + level.loss[from + lane]!;
    }
  }
}
