import type { CauseKey } from './node.ts';

/** Something that speaks for or against an explanation. */
export interface CauseEvidence {
  /** Unique among the evidence of a job. */
  readonly id: string;
  /** The explanation that it is about. */
  readonly explains: CauseKey;
  /** Effects that it counts for; absent for every effect that this node may explain. */
  readonly of?: readonly CauseKey[];
  /** Items of one group look at the same thing; see `combineEvidence`. */
  readonly group: string;
  /** Natural logarithm of the likelihood ratio; positive speaks for, negative against, 0 for nothing. */
  readonly logRatio: number;
}

/** No single item counts more than twenty to one, for or against: a slip must not decide. Set by judgment. */
export const ITEM_CAP = Math.log(20);

/** All items together count no more than a thousand to one. Set by judgment. */
export const TOTAL_CAP = Math.log(1000);

/** What the evidence on one explanation comes to. */
export interface CombinedEvidence {
  /** Sum that counts, natural logarithm, within `TOTAL_CAP`. */
  readonly logRatio: number;
  /** Ids of items that speak for it, strongest first. */
  readonly supports: readonly string[];
  /** Ids of items that speak against it, strongest first. Kept and shown, whatever the sum. */
  readonly contradicts: readonly string[];
}

const clamp = (value: number, cap: number) => Math.max(-cap, Math.min(cap, value));

function byStrength(items: readonly CauseEvidence[]): string[] {
  const sorted = [...items].sort(
    (a, b) => Math.abs(b.logRatio) - Math.abs(a.logRatio) || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0),
  );
  return sorted.map((item) => item.id);
}

/**
 * Adds up the evidence on one explanation: log-likelihood ratios, each within `ITEM_CAP`. Of each group the strongest item
 * for it and the strongest against it count, since items of a group are not independent of one another; the sum stays
 * within `TOTAL_CAP`. So another item for it never lowers the sum, another against it never raises it, and the order in
 * which items come changes nothing.
 *
 * Source: I. J. Good, Probability and the Weighing of Evidence, 1950, for the sum; caps and groups are ours.
 */
export function combineEvidence(items: readonly CauseEvidence[]): CombinedEvidence {
  const groups = new Map<string, { best: number; worst: number }>();
  for (const { group, logRatio } of items) {
    const capped = clamp(logRatio, ITEM_CAP);
    const known = groups.get(group) ?? { best: 0, worst: 0 };
    groups.set(group, { best: Math.max(known.best, capped), worst: Math.min(known.worst, capped) });
  }
  let sum = 0;
  for (const name of [...groups.keys()].sort()) {
    const { best, worst } = groups.get(name) as { best: number; worst: number };
    sum += best + worst;
  }
  return {
    logRatio: clamp(sum, TOTAL_CAP),
    supports: byStrength(items.filter((item) => item.logRatio > 0)),
    contradicts: byStrength(items.filter((item) => item.logRatio < 0)),
  };
}
