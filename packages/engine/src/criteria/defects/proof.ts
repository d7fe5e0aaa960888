import type { Condition } from '../condition.ts';
import type { CriterionSource, Limit } from '../criterion.ts';
import type { FactKey, FactValue } from '../facts.ts';
import type { QuantityKey } from '../quantities.ts';
import { commonPractice } from '../sources.ts';
import type { Severity } from './defect.ts';

/** What shows that a defect is there, and, by its opposite, that it is not. */
export type Proof =
  /** A criterion that is not met; left aside where it does not apply. */
  | { readonly by: 'criterion'; readonly id: string }
  /** An answer to a yes-or-no quantity. */
  | { readonly by: 'answer'; readonly quantity: QuantityKey; readonly shows: boolean }
  /** Any one sample beyond a limit; all of them on the other side speak against the defect. */
  | {
      readonly by: 'number';
      readonly quantity: QuantityKey;
      readonly comparison: '>' | '<' | '>=' | '<=' | 'within';
      readonly limit: Limit;
      /** How many samples it takes to speak against the defect. */
      readonly atLeast: number;
      readonly basis: CriterionSource;
    }
  /** A fact about the job. */
  | { readonly by: 'fact'; readonly fact: FactKey; readonly shows: string | boolean }
  /** All of several things together. */
  | { readonly by: 'all'; readonly parts: readonly Proof[] };

/** A higher grade, and what has to be shown for it. */
export interface Worse {
  readonly severity: Severity;
  readonly because: string;
  /** What shows it; or the share of length, area or count above which it holds. */
  readonly when: Proof | { readonly shareAbove: number };
}

/** How a defect is proved and graded. Thresholds without another basis are common practice, no source. */
export interface DefectRules {
  /** The defect is left out where this surely does not hold. */
  readonly appliesWhen?: Condition;
  /** Each shows it; together, where each speaks against it, they refute it. */
  readonly proofs: readonly Proof[];
  /** Each shows it, none is needed to refute it. */
  readonly also?: readonly Proof[];
  /** Each makes it likely. */
  readonly hints?: readonly Proof[];
  readonly worse?: readonly Worse[];
}

export const breach = (id: string): Proof => ({ by: 'criterion', id });
export const breaches = (...ids: readonly string[]): readonly Proof[] => ids.map(breach);
export const answer = (quantity: QuantityKey, shows: boolean): Proof => ({ by: 'answer', quantity, shows });
export const fact = <K extends FactKey>(key: K, shows: FactValue<K>): Proof => ({
  by: 'fact',
  fact: key,
  shows: shows as string | boolean,
});
export const together = (...parts: readonly Proof[]): Proof => ({ by: 'all', parts });

/** Proof by a number: `beyond('humiditySpread', '>', [0.1, '10 points'])`; the last text is the metric one where it differs. */
export function beyond(
  quantity: QuantityKey,
  comparison: '>' | '<' | '>=' | '<=',
  [value, us, si = us]: readonly [value: number, us: string, si?: string],
  basis: CriterionSource = commonPractice,
  atLeast = 1,
): Proof {
  return { by: 'number', quantity, comparison, limit: { value, us, si }, atLeast, basis };
}
