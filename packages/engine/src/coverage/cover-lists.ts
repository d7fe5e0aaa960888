import type { CoverProblem } from './cover-problem.ts';

/**
 * A covering problem from both sides, packed for loops: the candidates of row i are `candidates` from `rowStart[i]` to
 * `rowStart[i + 1]`, the rows of candidate c are `rows` from `candidateStart[c]` to `candidateStart[c + 1]`.
 */
export interface CoverLists {
  readonly rowCount: number;
  readonly candidateCount: number;
  readonly rowStart: Int32Array;
  readonly candidates: Int32Array;
  readonly candidateStart: Int32Array;
  readonly rows: Int32Array;
}

/** Packs a problem. */
export function coverLists({ candidateCount, rows }: CoverProblem): CoverLists {
  const rowStart = new Int32Array(rows.length + 1);
  rows.forEach((row, i) => {
    rowStart[i + 1] = rowStart[i]! + row.length;
  });
  const candidates = new Int32Array(rowStart[rows.length]!);
  const candidateStart = new Int32Array(candidateCount + 1);
  rows.forEach((row, i) => {
    candidates.set(row, rowStart[i]!);
    for (const c of row) candidateStart[c + 1]! += 1;
  });
  for (let c = 0; c < candidateCount; c += 1) candidateStart[c + 1]! += candidateStart[c]!;
  const next = candidateStart.slice();
  const rowsOf = new Int32Array(candidates.length);
  for (let i = 0; i < rows.length; i += 1) {
    for (let k = rowStart[i]!; k < rowStart[i + 1]!; k += 1) {
      const c = candidates[k]!;
      rowsOf[next[c]!] = i;
      next[c]! += 1;
    }
  }
  return { rowCount: rows.length, candidateCount, rowStart, candidates, candidateStart, rows: rowsOf };
}
