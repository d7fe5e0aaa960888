import { LANES } from './lanes.ts';

/** A face that lies across x, across y, or the two ends of a duct that carries air past everything between them. */
export const ACROSS_X = 0;
export const ACROSS_Y = 1;
export const DUCT = 2;

/** Cells and the faces between them, with the place of each cell on the grid that it is to be coarsened along. */
export interface CellFaces {
  readonly count: number;
  readonly column: Int32Array;
  readonly row: Int32Array;
  /** The cells on both sides of each face; what flows from A to B counts positive. At most one face to a pair. */
  readonly faceA: Int32Array;
  readonly faceB: Int32Array;
  readonly faceAxis: Uint8Array;
}

/** The same with the neighbors of each cell in order, as matrix rows need them. */
export interface CellGraph extends CellFaces {
  /** Where the neighbors of each cell start; one more than there are cells. */
  readonly rowStart: Int32Array;
  /** End of the neighbors with a smaller number than the cell's own. */
  readonly lowerEnd: Int32Array;
  readonly neighbor: Int32Array;
  /** Where the values of each neighbor stand among those of all cells and lanes. */
  readonly neighborAt: Int32Array;
  /** Where each face stands among the neighbors of its cell A and of its cell B. */
  readonly slotA: Int32Array;
  readonly slotB: Int32Array;
  /**
   * Whether each row has just two slots for neighbors before its cell and two for those after it, as on a plain grid. Slots
   * left over name the cell itself. Loops over such rows are faster.
   */
  readonly narrow: boolean;
}

/** Slots on each side of a narrow row. */
const NARROW = 2;

/** Lists the neighbors of each cell, least number first. Takes time in proportion to the faces. */
export function cellGraph(faces: CellFaces): CellGraph {
  const { count, faceA, faceB } = faces;
  const faceCount = faceA.length;
  const before = new Int32Array(count);
  const after = new Int32Array(count);
  for (let f = 0; f < faceCount; f += 1) {
    const low = Math.min(faceA[f]!, faceB[f]!);
    const high = Math.max(faceA[f]!, faceB[f]!);
    after[low] = after[low]! + 1;
    before[high] = before[high]! + 1;
  }
  let narrow = true;
  for (let i = 0; i < count && narrow; i += 1) narrow = before[i]! <= NARROW && after[i]! <= NARROW;
  const rowStart = new Int32Array(count + 1);
  const lowerEnd = new Int32Array(count);
  for (let i = 0; i < count; i += 1) {
    lowerEnd[i] = rowStart[i]! + (narrow ? NARROW : before[i]!);
    rowStart[i + 1] = lowerEnd[i]! + (narrow ? NARROW : after[i]!);
  }
  const nextBefore = rowStart.slice(0, count);
  const nextAfter = lowerEnd.slice();
  const slots = rowStart[count]!;
  const neighbor = new Int32Array(slots);
  if (narrow) for (let p = 0; p < slots; p += 1) neighbor[p] = p >> 2;
  // Twice the face, one more at its B end, so that the slots can be told after sorting.
  const end = new Int32Array(slots).fill(-1);
  const enter = (cell: number, other: number, mark: number): void => {
    const next = other < cell ? nextBefore : nextAfter;
    const at = next[cell]!;
    next[cell] = at + 1;
    neighbor[at] = other;
    end[at] = mark;
  };
  for (let f = 0; f < faceCount; f += 1) {
    enter(faceA[f]!, faceB[f]!, 2 * f);
    enter(faceB[f]!, faceA[f]!, 2 * f + 1);
  }
  const slotA = new Int32Array(faceCount);
  const slotB = new Int32Array(faceCount);
  for (let i = 0; i < count; i += 1) {
    sortSlots(neighbor, end, rowStart[i]!, nextBefore[i]!);
    sortSlots(neighbor, end, lowerEnd[i]!, nextAfter[i]!);
    for (let p = rowStart[i]!; p < rowStart[i + 1]!; p += 1) {
      const mark = end[p]!;
      if (mark < 0) continue;
      if ((mark & 1) === 0) slotA[mark >> 1] = p;
      else slotB[mark >> 1] = p;
    }
  }
  const neighborAt = neighbor.map((cell) => LANES * cell);
  return { ...faces, rowStart, lowerEnd, neighbor, neighborAt, slotA, slotB, narrow };
}

function sortSlots(neighbor: Int32Array, end: Int32Array, from: number, to: number): void {
  for (let p = from + 1; p < to; p += 1) {
    const cell = neighbor[p]!;
    const mark = end[p]!;
    let q = p - 1;
    for (; q >= from && neighbor[q]! > cell; q -= 1) {
      neighbor[q + 1] = neighbor[q]!;
      end[q + 1] = end[q]!;
    }
    neighbor[q + 1] = cell;
    end[q + 1] = mark;
  }
}
