import type { Condition } from './condition.ts';
import type { CriterionSource, LicensedTrade } from './criterion.ts';

/** A step of survey or build that a caution stands beside. */
export type WorkStep =
  | 'plan-entry'
  | 'enter'
  | 'survey'
  | 'clear-out'
  | 'disturb-old-material'
  | 'drill-masonry'
  | 'dig'
  | 'lift-floor'
  | 'close-space'
  | 'fit-exhaust'
  | 'wire'
  | 'lay-liner'
  | 'clean-mold'
  | 'treat-wood'
  | 'spray-foam'
  | 'use-solvents';

/** A standing caution. It warns and defers; it never says that entry or work is safe. */
export interface Caution {
  readonly id: string;
  readonly title: string;
  readonly steps: readonly WorkStep[];
  readonly showsWhen: Condition;
  /** What may hurt and what to do, in plain words. */
  readonly text: string;
  /** Who or what decides where this text ends. */
  readonly defersTo: string;
  readonly licensedTrade?: LicensedTrade;
  readonly source: CriterionSource;
}
