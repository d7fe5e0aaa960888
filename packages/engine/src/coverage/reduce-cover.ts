import type { CoverProblem } from './cover-problem.ts';
import { onesIn } from './floor-grid.ts';

/** What is left of a problem when the obvious is settled. */
export interface ReducedCover {
  /** Candidates that every best choice may hold. */
  readonly forced: readonly number[];
  /** Candidates that are left, ascending; the core counts them from 0 in this order. */
  readonly candidates: readonly number[];
  readonly core: CoverProblem;
  readonly unseeable: readonly number[];
}

/**
 * Settles the obvious, over and over, without giving up any smallest choice's size: a row that holds another row is
 * covered with it and dropped; a candidate that covers nothing more than another is dropped; the only candidate of a
 * row is taken. Classic rules of set covering (for example Beasley, European J. Operational Research 31, 1987, from
 * memory).
 */
export function reduceCover({ candidateCount, rows }: CoverProblem): ReducedCover {
  const words = Math.max(1, Math.ceil(candidateCount / 32));
  const unseeable: number[] = [];
  let left: Uint32Array[] = [];
  rows.forEach((row, i) => {
    if (row.length === 0) {
      unseeable.push(i);
      return;
    }
    const bits = new Uint32Array(words);
    for (const candidate of row) bits[candidate >>> 5]! |= 1 << (candidate & 31);
    left.push(bits);
  });
  const forced: number[] = [];
  let live = new Uint32Array(words);
  for (;;) {
    left = leastRows(left);
    live = new Uint32Array(words);
    for (const row of left) for (let w = 0; w < words; w += 1) live[w]! |= row[w]!;
    const single = left.filter((row) => countOf(row) === 1).map((row) => membersOf(row)[0]!);
    if (single.length > 0) {
      forced.push(...single);
      left = left.filter((row) => !single.some((c) => ((row[c >>> 5]! >>> (c & 31)) & 1) === 1));
      continue;
    }
    const dropped = dominated(left, membersOf(live));
    if (dropped.length === 0) break;
    for (const row of left) for (const c of dropped) row[c >>> 5]! &= ~(1 << (c & 31));
  }
  const candidates = membersOf(live);
  const placeOf = new Map(candidates.map((candidate, i) => [candidate, i]));
  return {
    forced: forced.sort((a, b) => a - b),
    candidates,
    core: {
      candidateCount: candidates.length,
      rows: left.map((row) => membersOf(row).map((candidate) => placeOf.get(candidate)!)),
    },
    unseeable,
  };
}

/** Rows that hold no other row, each once, shortest first. */
function leastRows(rows: readonly Uint32Array[]): Uint32Array[] {
  const counts = rows.map(countOf);
  const order = rows.map((_, i) => i).sort((a, b) => counts[a]! - counts[b]! || a - b);
  const kept: Uint32Array[] = [];
  for (const i of order) {
    const row = rows[i]!;
    let holds = false;
    for (let k = 0; k < kept.length && !holds; k += 1) holds = isPartOf(kept[k]!, row);
    if (!holds) kept.push(row);
  }
  return kept;
}

/** Candidates whose rows are all rows of another one; of equals all but the first. */
function dominated(rows: readonly Uint32Array[], candidates: readonly number[]): number[] {
  const words = Math.ceil(rows.length / 32);
  const held = candidates.map((c) => {
    const bits = new Uint32Array(words);
    rows.forEach((row, i) => {
      if ((row[c >>> 5]! >>> (c & 31)) & 1) bits[i >>> 5]! |= 1 << (i & 31);
    });
    return bits;
  });
  const counts = held.map(countOf);
  return candidates.filter((_, j) =>
    candidates.some(
      (_other, k) =>
        k !== j &&
        (counts[k]! > counts[j]! || (counts[k] === counts[j] && k < j)) &&
        isPartOf(held[j]!, held[k]!),
    ),
  );
}

function isPartOf(part: Uint32Array, whole: Uint32Array): boolean {
  for (let w = 0; w < part.length; w += 1) if ((part[w]! & ~whole[w]!) !== 0) return false;
  return true;
}

function countOf(bits: Uint32Array): number {
  let count = 0;
  for (let w = 0; w < bits.length; w += 1) count += onesIn(bits[w]!);
  return count;
}

function membersOf(bits: Uint32Array): number[] {
  const members: number[] = [];
  for (let w = 0; w < bits.length; w += 1) {
    for (let rest = bits[w]!; rest !== 0; rest &= rest - 1)
      members.push(w * 32 + 31 - Math.clz32(rest & -rest));
  }
  return members;
}
