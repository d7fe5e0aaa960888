// The loops of `multigrid-cycle.ts` for grids with narrow rows, where slot p of a row stands at the same place as its
// lanes: two neighbors before the cell, two after it.

/** result = A x. */
export function multiplyNarrow(
  neighborAt: Int32Array,
  offDiagonal: Float64Array,
  diagonal: Float64Array,
  x: Float64Array,
  result: Float64Array,
): void {
  for (let o = 0; o < x.length; o += 4) {
    const a = neighborAt[o]!;
    const b = neighborAt[o + 1]!;
    const c = neighborAt[o + 2]!;
    const d = neighborAt[o + 3]!;
    const va = offDiagonal[o]!;
    const vb = offDiagonal[o + 1]!;
    const vc = offDiagonal[o + 2]!;
    const vd = offDiagonal[o + 3]!;
    result[o] = diagonal[o]! * x[o]! + va * x[a]! + vb * x[b]! + vc * x[c]! + vd * x[d]!;
    result[o + 1] =
      diagonal[o + 1]! * x[o + 1]! + va * x[a + 1]! + vb * x[b + 1]! + vc * x[c + 1]! + vd * x[d + 1]!;
    result[o + 2] =
      diagonal[o + 2]! * x[o + 2]! + va * x[a + 2]! + vb * x[b + 2]! + vc * x[c + 2]! + vd * x[d + 2]!;
    result[o + 3] =
      diagonal[o + 3]! * x[o + 3]! + va * x[a + 3]! + vb * x[b + 3]! + vc * x[c + 3]! + vd * x[d + 3]!;
  }
}

/** Forward sweep from x = 0. */
export function sweepForwardNarrow(
  neighborAt: Int32Array,
  offDiagonal: Float64Array,
  inverse: Float64Array,
  rhs: Float64Array,
  x: Float64Array,
): void {
  for (let o = 0; o < x.length; o += 4) {
    const a = neighborAt[o]!;
    const b = neighborAt[o + 1]!;
    const va = offDiagonal[o]!;
    const vb = offDiagonal[o + 1]!;
    x[o] = (rhs[o]! - va * x[a]! - vb * x[b]!) * inverse[o]!;
    x[o + 1] = (rhs[o + 1]! - va * x[a + 1]! - vb * x[b + 1]!) * inverse[o + 1]!;
    x[o + 2] = (rhs[o + 2]! - va * x[a + 2]! - vb * x[b + 2]!) * inverse[o + 2]!;
    x[o + 3] = (rhs[o + 3]! - va * x[a + 3]! - vb * x[b + 3]!) * inverse[o + 3]!;
  }
}

/** Residual after the forward sweep, summed over coarse cells. */
export function restrictNarrow(
  neighborAt: Int32Array,
  offDiagonal: Float64Array,
  coarseCell: Int32Array,
  x: Float64Array,
  coarse: Float64Array,
): void {
  for (let o = 0; o < x.length; o += 4) {
    const c = neighborAt[o + 2]!;
    const d = neighborAt[o + 3]!;
    const vc = offDiagonal[o + 2]!;
    const vd = offDiagonal[o + 3]!;
    const to = coarseCell[o >> 2]! << 2;
    coarse[to] = coarse[to]! - vc * x[c]! - vd * x[d]!;
    coarse[to + 1] = coarse[to + 1]! - vc * x[c + 1]! - vd * x[d + 1]!;
    coarse[to + 2] = coarse[to + 2]! - vc * x[c + 2]! - vd * x[d + 2]!;
    coarse[to + 3] = coarse[to + 3]! - vc * x[c + 3]! - vd * x[d + 3]!;
  }
}

/** Backward sweep. */
export function sweepBackwardNarrow(
  neighborAt: Int32Array,
  offDiagonal: Float64Array,
  inverse: Float64Array,
  rhs: Float64Array,
  x: Float64Array,
): void {
  for (let o = x.length - 4; o >= 0; o -= 4) {
    const a = neighborAt[o]!;
    const b = neighborAt[o + 1]!;
    const c = neighborAt[o + 2]!;
    const d = neighborAt[o + 3]!;
    const va = offDiagonal[o]!;
    const vb = offDiagonal[o + 1]!;
    const vc = offDiagonal[o + 2]!;
    const vd = offDiagonal[o + 3]!;
    x[o] = (rhs[o]! - va * x[a]! - vb * x[b]! - vc * x[c]! - vd * x[d]!) * inverse[o]!;
    x[o + 1] =
      (rhs[o + 1]! - va * x[a + 1]! - vb * x[b + 1]! - vc * x[c + 1]! - vd * x[d + 1]!) * inverse[o + 1]!;
    x[o + 2] =
      (rhs[o + 2]! - va * x[a + 2]! - vb * x[b + 2]! - vc * x[c + 2]! - vd * x[d + 2]!) * inverse[o + 2]!;
    x[o + 3] =
      (rhs[o + 3]! - va * x[a + 3]! - vb * x[b + 3]! - vc * x[c + 3]! - vd * x[d + 3]!) * inverse[o + 3]!;
  }
}
