import type { CriteriaIssue } from './issue.ts';

/** Met, not met, or not shown by what was measured. What nobody measured is never met. */
export type Verdict = 'met' | 'not-met' | 'not-shown';

/** What measured samples say about one criterion. */
export interface Finding {
  readonly verdict: Verdict;
  /** The value that decided: worst sample, mean, largest or smallest; absent where nothing was measured. */
  readonly value?: number | boolean;
  /** Ids of the samples that decided, sorted. */
  readonly evidence: readonly string[];
  /** Distance of `value` from the limit in the unit of the quantity, positive on the passing side; absent for answers. */
  readonly margin?: number;
  /** Why, in plain words. */
  readonly reason: string;
}

/** The answer to one criterion. */
export interface Judgement extends Finding {
  readonly criterionId: string;
  /** Whether the criterion applies to this job; `unknown` where a fact is missing. */
  readonly applies: boolean | 'unknown';
  /** True when nothing but an assumed value stands where measured samples are missing. */
  readonly assumed: boolean;
  /** Samples that were refused and facts that were not understood. */
  readonly issues: readonly CriteriaIssue[];
}
