import type { FieldModel } from './field-model.ts';
import { LANES } from './lanes.ts';

/**
 * Lanes of a coarser grid for the next finer one: half of the own coarse cell and a quarter of each coarse neighbor beside
 * it, but nothing from behind a barrier.
 */
export function carriedUp(model: FieldModel, level: number, coarse: Float64Array): Float64Array {
  const { graph, down } = model.levels[level - 1]!;
  const { cell, face, free } = down!;
  const { faceA, faceB } = graph;
  const fine = new Float64Array(LANES * cell.length);
  for (let i = 0; i < cell.length; i += 1) {
    const from = LANES * cell[i]!;
    for (let lane = 0; lane < LANES; lane += 1) fine[LANES * i + lane] = coarse[from + lane]!;
  }
  for (let f = 0; f < face.length; f += 1) {
    if (face[f]! < 0 || free[f] === 0) continue;
    const a = LANES * faceA[f]!;
    const b = LANES * faceB[f]!;
    const coarseA = LANES * cell[faceA[f]!]!;
    const coarseB = LANES * cell[faceB[f]!]!;
    for (let lane = 0; lane < LANES; lane += 1) {
      const quarter = (coarse[coarseB + lane]! - coarse[coarseA + lane]!) / 4;
      fine[a + lane] = fine[a + lane]! + quarter;
      fine[b + lane] = fine[b + lane]! - quarter;
    }
  }
  return fine;
}

/** Lanes of the finest grid for one some levels coarser: the mean of the cells that go together. */
export function carriedDown(model: FieldModel, levels: number, finest: Float64Array): Float64Array {
  let lanes = finest.slice();
  for (let level = 0; level < levels; level += 1) {
    const { graph, down } = model.levels[level]!;
    const coarse = new Float64Array(LANES * model.levels[level + 1]!.graph.count);
    const members = new Int32Array(model.levels[level + 1]!.graph.count);
    for (let i = 0; i < graph.count; i += 1) {
      const to = down!.cell[i]!;
      members[to] = members[to]! + 1;
      for (let lane = 0; lane < LANES; lane += 1) {
        coarse[LANES * to + lane] = coarse[LANES * to + lane]! + lanes[LANES * i + lane]!;
      }
    }
    for (let i = 0; i < coarse.length; i += 1) coarse[i] = coarse[i]! / members[Math.floor(i / LANES)]!;
    lanes = coarse;
  }
  return lanes;
}
