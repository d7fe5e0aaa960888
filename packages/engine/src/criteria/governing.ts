import { holds } from './condition.ts';
import type { Comparison, Criterion, CriterionKind } from './criterion.ts';
import type { JobFacts } from './facts.ts';
import type { Judgement } from './judgement.ts';
import type { QuantityKey } from './quantities.ts';

/** Which way criteria of one group pull: only criteria that pull the same way can be stricter than each other. */
export type Direction = 'at-least' | 'at-most' | 'exactly' | 'within' | 'yes' | 'no';

const DIRECTION: Record<Comparison, Direction> = {
  '>=': 'at-least',
  '>': 'at-least',
  '<=': 'at-most',
  '<': 'at-most',
  '=': 'exactly',
  within: 'within',
  yes: 'yes',
  no: 'no',
};

const RANK: Record<CriterionKind, number> = { code: 0, standard: 1, guide: 2, practice: 3 };

/** The criteria that bear on one quantity in one direction. */
export interface GoverningGroup {
  readonly quantity: QuantityKey;
  readonly direction: Direction;
  /** The strictest that applies. Of equally strict ones the most binding, then the first by id. */
  readonly governs: Criterion;
  /** The strictest that applies and is code or standard; absent where all are advice. */
  readonly binding?: Criterion;
  /** The other criteria that apply, strictest first: shown as information. */
  readonly others: readonly Criterion[];
  /** Criteria that would apply, or not, if a fact were known. */
  readonly undecided: readonly Criterion[];
}

/** Larger is stricter, within one direction. */
function strictness({ comparison, limit }: Criterion): number {
  const value = limit?.value;
  if (value === undefined) return 0;
  if (typeof value !== 'number') return value[0] - value[1];
  return DIRECTION[comparison] === 'at-most' ? -value : value;
}

function isOpenEnded({ comparison }: Criterion): number {
  return comparison === '>' || comparison === '<' ? 0 : 1;
}

function strictestFirst(a: Criterion, b: Criterion): number {
  return (
    strictness(b) - strictness(a) ||
    isOpenEnded(a) - isOpenEnded(b) ||
    RANK[a.kind] - RANK[b.kind] ||
    (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)
  );
}

/**
 * Groups criteria by quantity and direction, and says which of those that apply governs. Criteria that surely do not
 * apply are left out, and so are groups where none is sure to apply. Groups stand in the order of first appearance.
 */
export function governing(criteria: readonly Criterion[], facts: JobFacts): readonly GoverningGroup[] {
  const groups = new Map<string, { applying: Criterion[]; undecided: Criterion[] }>();
  for (const criterion of criteria) {
    const applies = holds(criterion.appliesWhen, facts);
    if (applies === false) continue;
    const key = `${criterion.quantity} ${DIRECTION[criterion.comparison]}`;
    const group = groups.get(key) ?? { applying: [], undecided: [] };
    groups.set(key, group);
    (applies === true ? group.applying : group.undecided).push(criterion);
  }
  const result: GoverningGroup[] = [];
  for (const { applying, undecided } of groups.values()) {
    const [governs, ...others] = applying.sort(strictestFirst);
    if (!governs) continue;
    const binding = [governs, ...others].find(({ kind }) => kind === 'code' || kind === 'standard');
    result.push({
      quantity: governs.quantity,
      direction: DIRECTION[governs.comparison],
      governs,
      ...(binding ? { binding } : {}),
      others,
      undecided: undecided.sort(strictestFirst),
    });
  }
  return result;
}

/**
 * `fail`: what binds is not met. `advise`: what binds is met, or nothing binds, but advice is not met. `pass`: all
 * criteria of the group are met. `not-shown`: the evidence does not decide between these.
 */
export type Band = 'fail' | 'advise' | 'pass' | 'not-shown';

/**
 * Puts the verdicts on one group together, each criterion judged on its own. A seam lapped 9 in in a closed space:
 * the code's 6 in is met, the 12 in of good work is not, so the band is `advise`.
 * @param judgements of the criteria of the group, in any order; a missing one counts as not shown
 */
export function bandOf(group: GoverningGroup, judgements: readonly Judgement[]): Band {
  const verdicts = new Map(judgements.map(({ criterionId, verdict }) => [criterionId, verdict]));
  const verdictOf = ({ id }: Criterion) => verdicts.get(id) ?? 'not-shown';
  const all = [group.governs, ...group.others];
  const binds = all.filter(({ kind }) => kind === 'code' || kind === 'standard');
  if (binds.some((criterion) => verdictOf(criterion) === 'not-met')) return 'fail';
  if (binds.some((criterion) => verdictOf(criterion) === 'not-shown')) return 'not-shown';
  if (all.some((criterion) => verdictOf(criterion) === 'not-met')) return 'advise';
  return all.some((criterion) => verdictOf(criterion) === 'not-shown') ? 'not-shown' : 'pass';
}
