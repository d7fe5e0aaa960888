import { EngineError } from '../numerics/engine-error.ts';

/**
 * A choice to be made: the fewest candidates such that every row holds at least one that was chosen. A row is
 * something to be seen, as the list of the candidates that see it.
 */
export interface CoverProblem {
  readonly candidateCount: number;
  readonly rows: readonly (readonly number[])[];
}

/**
 * A solver from outside, for what the engine's own search cannot prove in its limits: the problem as a mixed-integer
 * program, minimize Σ x over binary x with Σ x ≥ 1 in each row. It answers with the candidates chosen and a lower
 * bound that it stands for (their number when proven optimal), or null when it found nothing in its own limits.
 */
export type CoverSolver = (
  problem: CoverProblem,
) => Promise<{ readonly chosen: readonly number[]; readonly lowerBound: number } | null>;

/** A choice, and how near it is to the best. */
export interface CoverSolution {
  /** Candidates, ascending. */
  readonly chosen: readonly number[];
  /** No choice has fewer than this. */
  readonly lowerBound: number;
  /** Chosen beyond the lower bound; 0 when proven. */
  readonly gap: number;
  readonly proven: boolean;
  /** Rows that no candidate holds; they are left out. */
  readonly unseeable: readonly number[];
  /** Branches that the search looked into. */
  readonly nodes: number;
}

/** Refuses candidates that do not exist. */
export function checkCoverProblem({ candidateCount, rows }: CoverProblem): void {
  if (!Number.isInteger(candidateCount) || candidateCount < 0) {
    throw new EngineError('bad-input', `candidateCount must be a whole number from 0; got ${candidateCount}`);
  }
  rows.forEach((row, i) => {
    for (const candidate of row) {
      if (!Number.isInteger(candidate) || candidate < 0 || candidate >= candidateCount) {
        throw new EngineError(
          'bad-input',
          `row ${i}: candidates must be from 0 to ${candidateCount - 1}; got ${candidate}`,
        );
      }
    }
  });
}
