import { EngineError } from '../numerics/engine-error.ts';
import {
  type CoverProblem,
  type CoverSolution,
  type CoverSolver,
  checkCoverProblem,
} from './cover-problem.ts';
import { searchCover } from './cover-search.ts';
import { type ReducedCover, reduceCover } from './reduce-cover.ts';

/**
 * The fewest candidates that cover every row that can be covered. Proven smallest when the search ends within its
 * limit, which small problems always do; otherwise the best choice found with the gap to the proven lower bound. The
 * same problem gives the same choice everywhere.
 * @param nodeLimit branches after which the search stops; by default what takes about a second
 * @throws EngineError `bad-input` for candidates that do not exist
 */
export function setCover(problem: CoverProblem, nodeLimit?: number): CoverSolution {
  checkCoverProblem(problem);
  const reduced = reduceCover(problem);
  const { chosen, lowerBound, nodes } = searchCover(reduced.core, nodeLimit);
  return solutionOf(reduced, chosen, lowerBound, nodes);
}

/**
 * As `setCover`, and where its own search does not prove the choice, asks a solver from outside for the rest. The
 * solver gets what is left after the obvious is settled; its choice is checked, its lower bound is taken on trust.
 * @throws EngineError `bad-input` for candidates that do not exist, or a solver's choice that leaves a row uncovered
 */
export async function setCoverWith(
  problem: CoverProblem,
  solver: CoverSolver,
  nodeLimit?: number,
): Promise<CoverSolution> {
  checkCoverProblem(problem);
  const reduced = reduceCover(problem);
  const own = searchCover(reduced.core, nodeLimit);
  const ours = solutionOf(reduced, own.chosen, own.lowerBound, own.nodes);
  if (ours.proven) return ours;
  const answer = await solver(reduced.core);
  if (answer === null) return ours;
  const picked = new Set(answer.chosen);
  reduced.core.rows.forEach((row, i) => {
    if (row.some((c) => picked.has(c))) return;
    throw new EngineError('bad-input', `the solver's choice leaves row ${i} of its problem uncovered`);
  });
  checkCoverProblem({ candidateCount: reduced.core.candidateCount, rows: [[...picked]] });
  const theirs = [...picked].sort((a, b) => a - b);
  const chosen = theirs.length < own.chosen.length ? theirs : own.chosen;
  const proven = Math.max(
    own.lowerBound,
    Number.isFinite(answer.lowerBound) ? Math.ceil(answer.lowerBound - 1e-6) : 0,
  );
  return solutionOf(reduced, chosen, Math.min(proven, chosen.length), own.nodes);
}

function solutionOf(
  { forced, candidates, unseeable }: ReducedCover,
  core: readonly number[],
  coreBound: number,
  nodes: number,
): CoverSolution {
  const chosen = [...forced, ...core.map((c) => candidates[c]!)].sort((a, b) => a - b);
  const lowerBound = forced.length + coreBound;
  const gap = chosen.length - lowerBound;
  return { chosen, lowerBound, gap, proven: gap === 0, unseeable, nodes };
}
