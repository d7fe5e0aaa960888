import type { CellGraph } from '../../src/distribution/cell-graph.ts';
import { bernoulli } from '../../src/distribution/lane-operator.ts';

/**
 * A plain direct solver for the system of one lane: elimination within the band, cells numbered along the shorter side of
 * the plan, no exchange of rows (the diagonal outweighs its column). The referee of the multigrid solver.
 * @param loss of each cell, m³/s
 * @param given right-hand sides
 */
export function bandedDirect(
  graph: CellGraph,
  conductance: Float64Array,
  flow: Float64Array,
  loss: Float64Array,
  given: readonly Float64Array[],
): Float64Array[] {
  const { count, column, row, faceA, faceB } = graph;
  const alongX = Math.max(...column) <= Math.max(...row);
  const order = Array.from({ length: count }, (_, i) => i).sort((a, b) =>
    alongX ? row[a]! - row[b]! || column[a]! - column[b]! : column[a]! - column[b]! || row[a]! - row[b]!,
  );
  const place = new Int32Array(count);
  order.forEach((cell, i) => {
    place[cell] = i;
  });
  let half = 0;
  for (let f = 0; f < faceA.length; f += 1) {
    half = Math.max(half, Math.abs(place[faceA[f]!]! - place[faceB[f]!]!));
  }
  const width = 2 * half + 1;
  const band = new Float64Array(count * width);
  for (let i = 0; i < count; i += 1) band[i * width + half] = loss[order[i]!]!;
  for (let f = 0; f < faceA.length; f += 1) {
    const a = place[faceA[f]!]!;
    const b = place[faceB[f]!]!;
    const d = conductance[f]!;
    const q = flow[f]!;
    const fromB = d > 0 ? d * bernoulli(q / d) : Math.max(0, -q);
    const fromA = d > 0 ? d * bernoulli(-q / d) : Math.max(0, q);
    band[a * width + half]! += fromA;
    band[b * width + half]! += fromB;
    band[a * width + half + b - a]! -= fromB;
    band[b * width + half + a - b]! -= fromA;
  }
  const sides = given.map((side) => Float64Array.from(order, (cell) => side[cell]!));
  for (let k = 0; k < count; k += 1) {
    const top = k * width + half;
    const pivot = band[top]!;
    const last = Math.min(count - 1, k + half);
    for (let i = k + 1; i <= last; i += 1) {
      const start = i * width + half + k - i;
      const by = band[start]! / pivot;
      if (by === 0) continue;
      for (let j = 1; j <= last - k; j += 1) band[start + j] = band[start + j]! - by * band[top + j]!;
      for (const side of sides) side[i] = side[i]! - by * side[k]!;
    }
  }
  return sides.map((side) => {
    const x = new Float64Array(count);
    for (let i = count - 1; i >= 0; i -= 1) {
      const top = i * width + half;
      let s = side[i]!;
      const last = Math.min(count - 1, i + half);
      for (let j = i + 1; j <= last; j += 1) s -= band[top + j - i]! * x[order[j]!]!;
      x[order[i]!] = s / band[top]!;
    }
    return x;
  });
}
