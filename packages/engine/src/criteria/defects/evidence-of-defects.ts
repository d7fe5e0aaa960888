import type { Criterion } from '../criterion.ts';
import type { Evidence } from '../evidence.ts';
import type { JobFacts } from '../facts.ts';
import { judge } from '../judge.ts';
import type { Judgement } from '../judgement.ts';
import type { BillExtents } from './bill-rule.ts';

/** What a surveyor claimed to have found, as far as the catalogue needs it. */
export interface ClaimedDefect {
  readonly id: string;
  /** Key of the defect. */
  readonly defect: string;
  readonly measured?: { readonly quantity: string; readonly value: number | boolean };
  /** True where a picture, a clip or a reading goes with it. */
  readonly hasProof: boolean;
}

/** Everything that is known of a space when its defects are looked for. */
export interface DefectEvidence {
  readonly criteria: readonly Criterion[];
  readonly judgements: readonly Judgement[];
  readonly samples: readonly Evidence[];
  readonly facts: JobFacts;
  readonly claims: readonly ClaimedDefect[];
  readonly extents: BillExtents;
}

/** True for a criterion that an id of a defect stands for: itself, or a part of the rule of that number. */
export function isNamedBy(criterionId: string, id: string): boolean {
  return criterionId === id || criterionId.replace(/[a-z]$/, '') === id;
}

/** Items, each judged alone by one criterion: those that fail, and those that pass. */
export function itemsJudged(
  criterion: Criterion,
  { samples, facts }: Pick<DefectEvidence, 'samples' | 'facts'>,
): { readonly failing: readonly string[]; readonly passing: readonly string[] } {
  const failing = new Set<string>();
  const passing = new Set<string>();
  const single: Criterion = { ...criterion, sampling: { atLeast: 1, combine: 'each' } };
  for (const sample of samples) {
    if (sample.quantity !== criterion.quantity || sample.item === undefined || sample.assumed) continue;
    const { verdict } = judge(single, [sample], facts);
    if (verdict === 'not-met') failing.add(sample.item);
    else if (verdict === 'met') passing.add(sample.item);
  }
  for (const item of failing) passing.delete(item);
  return { failing: [...failing].sort(), passing: [...passing].sort() };
}
