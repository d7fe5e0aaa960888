import { ACROSS_X, ACROSS_Y, type CellGraph, cellGraph, DUCT } from './cell-graph.ts';
import { spaceForest } from './joined-spaces.ts';

/** How the cells and faces of a grid go into the next coarser one. */
export interface Coarsening {
  /** Coarse cell of each cell. */
  readonly cell: Int32Array;
  /** Coarse face of each face; -1 for one that lies inside a coarse cell. */
  readonly face: Int32Array;
  /** 1 where the coarse face runs the same way, -1 where it runs the other way. */
  readonly sign: Int8Array;
  /** 1 for a face that is no barrier. */
  readonly free: Uint8Array;
}

/** One grid of a hierarchy, and the way to the next coarser one; null on the coarsest. */
export interface GridLevel {
  readonly graph: CellGraph;
  readonly down: Coarsening | null;
}

/** A face this much weaker than the strongest of both its cells is a barrier that no coarse cell reaches across. */
const BARRIER_SHARE = 0.25;

/**
 * Grids from fine to coarse: in each step the cells of a block of two by two go together as far as they are joined by
 * faces that are no barriers. So a wall stays a wall however coarse the grid, and the coarsest grid has one cell for
 * each space that nothing joins.
 * @param strength conductance of each face of the finest grid, in any unit, 0 or more
 */
export function gridLevels(finest: CellGraph, strength: Float64Array): GridLevel[] {
  const levels: GridLevel[] = [];
  let graph = finest;
  let conductance = strength;
  for (;;) {
    const step = coarsen(graph, conductance);
    if (step === null) {
      levels.push({ graph, down: null });
      return levels;
    }
    levels.push({ graph, down: step.down });
    conductance = coarseConductance(graph, step.down, step.graph, conductance);
    graph = step.graph;
  }
}

function coarsen(graph: CellGraph, strength: Float64Array): { graph: CellGraph; down: Coarsening } | null {
  const { count, column, row, faceA, faceB, faceAxis } = graph;
  const faceCount = faceA.length;
  const strongest = new Float64Array(count);
  for (let f = 0; f < faceCount; f += 1) {
    if (faceAxis[f] === DUCT) continue;
    const s = strength[f]!;
    if (s > strongest[faceA[f]!]!) strongest[faceA[f]!] = s;
    if (s > strongest[faceB[f]!]!) strongest[faceB[f]!] = s;
  }
  const { join, first } = spaceForest(count);
  const free = new Uint8Array(faceCount);
  for (let f = 0; f < faceCount; f += 1) {
    const a = faceA[f]!;
    const b = faceB[f]!;
    if (faceAxis[f] === DUCT || strength[f] === 0) continue;
    if (strength[f]! < BARRIER_SHARE * Math.min(strongest[a]!, strongest[b]!)) continue;
    free[f] = 1;
    if (column[a]! >> 1 !== column[b]! >> 1 || row[a]! >> 1 !== row[b]! >> 1) continue;
    join(a, b);
  }
  const cell = new Int32Array(count);
  const coarseColumn = new Int32Array(count);
  const coarseRow = new Int32Array(count);
  let coarseCount = 0;
  let widest = 0;
  for (let i = 0; i < count; i += 1) {
    widest = Math.max(widest, column[i]!, row[i]!);
    const head = first(i);
    if (head !== i) {
      cell[i] = cell[head]!;
      continue;
    }
    coarseColumn[coarseCount] = column[i]! >> 1;
    coarseRow[coarseCount] = row[i]! >> 1;
    cell[i] = coarseCount;
    coarseCount += 1;
  }
  // Blocks of the whole plan and still nothing joined: every cell is a space of its own.
  if (coarseCount === count && widest === 0) return null;
  return joinFaces(graph, cell, free, coarseColumn.slice(0, coarseCount), coarseRow.slice(0, coarseCount));
}

/** Joins all faces between the same two coarse cells into one. */
function joinFaces(
  graph: CellGraph,
  cell: Int32Array,
  free: Uint8Array,
  column: Int32Array,
  row: Int32Array,
): { graph: CellGraph; down: Coarsening } {
  const { count, rowStart, neighbor, slotA, slotB, faceA, faceAxis } = graph;
  const faceCount = faceA.length;
  const coarseCount = column.length;
  const faceAtSlot = new Int32Array(neighbor.length);
  for (let f = 0; f < faceCount; f += 1) {
    faceAtSlot[slotA[f]!] = f;
    faceAtSlot[slotB[f]!] = f;
  }
  // Members of each coarse cell as a chain.
  const head = new Int32Array(coarseCount).fill(-1);
  const next = new Int32Array(count);
  for (let i = count - 1; i >= 0; i -= 1) {
    next[i] = head[cell[i]!]!;
    head[cell[i]!] = i;
  }
  const face = new Int32Array(faceCount).fill(-1);
  const sign = new Int8Array(faceCount);
  const coarseA = new Int32Array(faceCount);
  const coarseB = new Int32Array(faceCount);
  const axis = new Uint8Array(faceCount);
  const seen = new Int32Array(coarseCount).fill(-1);
  let joined = 0;
  for (let c = 0; c < coarseCount; c += 1) {
    const before = joined;
    for (let i = head[c]!; i >= 0; i = next[i]!) {
      for (let p = rowStart[i]!; p < rowStart[i + 1]!; p += 1) {
        const other = cell[neighbor[p]!]!;
        if (other <= c) continue;
        const f = faceAtSlot[p]!;
        let to = seen[other]!;
        if (to < before) {
          to = joined;
          seen[other] = to;
          coarseA[to] = c;
          coarseB[to] = other;
          axis[to] = faceAxis[f]!;
          joined += 1;
        } else if (axis[to] === DUCT) axis[to] = faceAxis[f]!;
        face[f] = to;
        sign[f] = cell[faceA[f]!] === c ? 1 : -1;
      }
    }
  }
  return {
    graph: cellGraph({
      count: coarseCount,
      column,
      row,
      faceA: coarseA.slice(0, joined),
      faceB: coarseB.slice(0, joined),
      faceAxis: axis.slice(0, joined),
    }),
    down: { cell, face, sign, free },
  };
}

/**
 * Conductance of the faces of a coarser grid: the faces that go into one side by side, and in series with them half of
 * what joins the cells within each of both blocks. On an even grid this is the conductance that the coarser grid would
 * get if it were drawn anew, and a barrier keeps its own resistance.
 */
export function coarseConductance(
  graph: CellGraph,
  down: Coarsening,
  coarse: CellGraph,
  conductance: Float64Array,
): Float64Array {
  const result = new Float64Array(coarse.faceA.length);
  coarsenConductance(graph, down, coarse, conductance, result, new Float64Array(2 * coarse.count));
  return result;
}

/** As `coarseConductance`, into `result`; `within` is room for two numbers for each coarse cell. */
export function coarsenConductance(
  graph: CellGraph,
  down: Coarsening,
  coarse: CellGraph,
  conductance: Float64Array,
  result: Float64Array,
  within: Float64Array,
): void {
  const { faceA, faceAxis } = graph;
  const { face, cell } = down;
  result.fill(0);
  within.fill(0);
  for (let f = 0; f < faceA.length; f += 1) {
    const to = face[f]!;
    if (to >= 0) result[to] = result[to]! + conductance[f]!;
    else if (faceAxis[f] !== DUCT) {
      const at = 2 * cell[faceA[f]!]! + (faceAxis[f] === ACROSS_X ? 0 : 1);
      within[at] = within[at]! + conductance[f]!;
    }
  }
  for (let f = 0; f < result.length; f += 1) {
    const beside = result[f]!;
    const axis = coarse.faceAxis[f]!;
    if (beside === 0 || axis === DUCT) continue;
    const side = axis === ACROSS_Y ? 1 : 0;
    const inA = within[2 * coarse.faceA[f]! + side]!;
    const inB = within[2 * coarse.faceB[f]! + side]!;
    let resistance = 1 / beside;
    if (inA > 0) resistance += 0.5 / inA;
    if (inB > 0) resistance += 0.5 / inB;
    result[f] = 1 / resistance;
  }
}
