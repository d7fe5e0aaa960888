import type { LaneOperator, OperatorLevel } from './lane-operator.ts';
import { multiplyNarrow, restrictNarrow, sweepBackwardNarrow, sweepForwardNarrow } from './narrow-sweeps.ts';

// The loops of this file take nearly all the time of a solution. They are written for four lanes, with every array and
// step in a plain variable.

/** Applies the matrices of one grid: result = A x, all lanes. */
export function applyOperator(level: OperatorLevel, x: Float64Array, result: Float64Array): void {
  const { rowStart, neighborAt, count, narrow } = level.graph;
  if (narrow) multiplyNarrow(neighborAt, level.offDiagonal, level.diagonal, x, result);
  else multiply(rowStart, neighborAt, level.offDiagonal, level.diagonal, count, x, result);
}

function multiply(
  rowStart: Int32Array,
  neighborAt: Int32Array,
  offDiagonal: Float64Array,
  diagonal: Float64Array,
  count: number,
  x: Float64Array,
  result: Float64Array,
): void {
  let p = 0;
  for (let i = 0; i < count; i += 1) {
    const o = i << 2;
    let s0 = diagonal[o]! * x[o]!;
    let s1 = diagonal[o + 1]! * x[o + 1]!;
    let s2 = diagonal[o + 2]! * x[o + 2]!;
    let s3 = diagonal[o + 3]! * x[o + 3]!;
    const end = rowStart[i + 1]!;
    for (; p < end; p += 1) {
      const v = offDiagonal[p]!;
      const c = neighborAt[p]!;
      s0 += v * x[c]!;
      s1 += v * x[c + 1]!;
      s2 += v * x[c + 2]!;
      s3 += v * x[c + 3]!;
    }
    result[o] = s0;
    result[o + 1] = s1;
    result[o + 2] = s2;
    result[o + 3] = s3;
  }
}

/**
 * One multigrid cycle for A x = b from x = 0: a sweep forward, the same on all coarser grids for what is left, and a
 * sweep backward. For symmetric matrices it is symmetric, as conjugate gradients need it.
 */
export function cycle(operator: LaneOperator, b: Float64Array, x: Float64Array): void {
  cycleFrom(operator.levels, 0, b, x);
}

function cycleFrom(levels: readonly OperatorLevel[], at: number, b: Float64Array, x: Float64Array): void {
  const { graph, down, offDiagonal, inverse } = levels[at]!;
  const { count, rowStart, lowerEnd, neighborAt, narrow } = graph;
  if (narrow) sweepForwardNarrow(neighborAt, offDiagonal, inverse, b, x);
  else sweepForwardFromZero(rowStart, lowerEnd, neighborAt, offDiagonal, inverse, count, b, x);
  const coarse = levels[at + 1];
  if (coarse !== undefined && down !== null) {
    coarse.demand.fill(0);
    if (narrow) restrictNarrow(neighborAt, offDiagonal, down.cell, x, coarse.demand);
    else restrictResidual(rowStart, lowerEnd, neighborAt, offDiagonal, down.cell, count, x, coarse.demand);
    cycleFrom(levels, at + 1, coarse.demand, coarse.correction);
    addCorrection(down.cell, coarse.correction, count, x);
  }
  if (narrow) sweepBackwardNarrow(neighborAt, offDiagonal, inverse, b, x);
  else sweepBackward(rowStart, neighborAt, offDiagonal, inverse, count, b, x);
}

/** Gauss-Seidel in the order of the cells from x = 0: only cells before the own have a value yet. */
function sweepForwardFromZero(
  rowStart: Int32Array,
  lowerEnd: Int32Array,
  neighborAt: Int32Array,
  offDiagonal: Float64Array,
  inverse: Float64Array,
  count: number,
  b: Float64Array,
  x: Float64Array,
): void {
  for (let i = 0; i < count; i += 1) {
    const o = i << 2;
    let s0 = b[o]!;
    let s1 = b[o + 1]!;
    let s2 = b[o + 2]!;
    let s3 = b[o + 3]!;
    const end = lowerEnd[i]!;
    for (let p = rowStart[i]!; p < end; p += 1) {
      const v = offDiagonal[p]!;
      const c = neighborAt[p]!;
      s0 -= v * x[c]!;
      s1 -= v * x[c + 1]!;
      s2 -= v * x[c + 2]!;
      s3 -= v * x[c + 3]!;
    }
    x[o] = s0 * inverse[o]!;
    x[o + 1] = s1 * inverse[o + 1]!;
    x[o + 2] = s2 * inverse[o + 2]!;
    x[o + 3] = s3 * inverse[o + 3]!;
  }
}

/** Sums what is left after the forward sweep over coarse cells: the sweep left only what later cells bring. */
function restrictResidual(
  rowStart: Int32Array,
  lowerEnd: Int32Array,
  neighborAt: Int32Array,
  offDiagonal: Float64Array,
  coarseCell: Int32Array,
  count: number,
  x: Float64Array,
  coarse: Float64Array,
): void {
  for (let i = 0; i < count; i += 1) {
    let s0 = 0;
    let s1 = 0;
    let s2 = 0;
    let s3 = 0;
    const end = rowStart[i + 1]!;
    for (let p = lowerEnd[i]!; p < end; p += 1) {
      const v = offDiagonal[p]!;
      const c = neighborAt[p]!;
      s0 -= v * x[c]!;
      s1 -= v * x[c + 1]!;
      s2 -= v * x[c + 2]!;
      s3 -= v * x[c + 3]!;
    }
    const to = coarseCell[i]! << 2;
    coarse[to] = coarse[to]! + s0;
    coarse[to + 1] = coarse[to + 1]! + s1;
    coarse[to + 2] = coarse[to + 2]! + s2;
    coarse[to + 3] = coarse[to + 3]! + s3;
  }
}

function addCorrection(coarseCell: Int32Array, coarse: Float64Array, count: number, x: Float64Array): void {
  for (let i = 0; i < count; i += 1) {
    const o = i << 2;
    const from = coarseCell[i]! << 2;
    x[o] = x[o]! + coarse[from]!;
    x[o + 1] = x[o + 1]! + coarse[from + 1]!;
    x[o + 2] = x[o + 2]! + coarse[from + 2]!;
    x[o + 3] = x[o + 3]! + coarse[from + 3]!;
  }
}

function sweepBackward(
  rowStart: Int32Array,
  neighborAt: Int32Array,
  offDiagonal: Float64Array,
  inverse: Float64Array,
  count: number,
  b: Float64Array,
  x: Float64Array,
): void {
  for (let i = count - 1; i >= 0; i -= 1) {
    const o = i << 2;
    let s0 = b[o]!;
    let s1 = b[o + 1]!;
    let s2 = b[o + 2]!;
    let s3 = b[o + 3]!;
    const end = rowStart[i + 1]!;
    for (let p = rowStart[i]!; p < end; p += 1) {
      const v = offDiagonal[p]!;
      const c = neighborAt[p]!;
      s0 -= v * x[c]!;
      s1 -= v * x[c + 1]!;
      s2 -= v * x[c + 2]!;
      s3 -= v * x[c + 3]!;
    }
    x[o] = s0 * inverse[o]!;
    x[o + 1] = s1 * inverse[o + 1]!;
    x[o + 2] = s2 * inverse[o + 2]!;
    x[o + 3] = s3 * inverse[o + 3]!;
  }
}
