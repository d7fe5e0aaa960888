import type { CauseEvidence } from './evidence.ts';
import type { CauseKey } from './node.ts';

/** Water that one explanation brings into the air by a moisture balance [kg/day], with its range. */
export interface BudgetShare {
  readonly id: string;
  readonly explains: CauseKey;
  /** Positive wets the air. */
  readonly kgPerDay: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Share that is taken for the doubt of every balance: a path that brings nothing is thirteen times less likely than one
 * that brings 60 %, not infinitely less. Set by judgment.
 */
export const SHARE_DOUBT = 0.05;

/** Share of all water that comes in, where this path brings `own` and the others `others`. */
function shareOf(own: number, others: number): number {
  const positive = Math.max(0, own);
  const all = positive + others;
  return all > 0 ? positive / all : 0;
}

/**
 * Turns the paths of a moisture balance into evidence on the explanations of humid air: the more of the water a path
 * brings, the likelier it is the main source. The likelihood ratio is its share against an even split between the
 * paths, both with `SHARE_DOUBT` added; its logarithm is the mean of those at the low, the likely and the high end of the
 * path with the others as they are, so that a wide range counts less. A path that carries water away has a share of 0.
 *
 * The ratio is a rule of ours: proportional belief in shares of a sum.
 * @param group name of the group that balances count in
 * @returns one item for each path; none for fewer than two paths, or where nothing brings water
 */
export function budgetEvidence(
  shares: readonly BudgetShare[],
  of: readonly CauseKey[],
  group = 'balance',
): CauseEvidence[] {
  const total = shares.reduce((sum, s) => sum + Math.max(0, s.kgPerDay), 0);
  if (shares.length < 2 || !(total > 0)) return [];
  const even = 1 / shares.length + SHARE_DOUBT;
  return shares.map(({ id, explains, kgPerDay, low, high }) => {
    const others = total - Math.max(0, kgPerDay);
    const at = (own: number) => Math.log((shareOf(own, others) + SHARE_DOUBT) / even);
    return { id, explains, of, group, logRatio: (at(low) + at(kgPerDay) + at(high)) / 3 };
  });
}
