import type { Source } from '../sources/source.ts';
import type { Condition } from './condition.ts';
import type { QuantityKey } from './quantities.ts';
import type { QuantityUnit } from './quantity.ts';

/** What a criterion is about; one data file each. */
export type CriterionSubject =
  | 'ventilation'
  | 'unvented'
  | 'access'
  | 'ground'
  | 'flood'
  | 'appliances'
  | 'electricity'
  | 'condensate'
  | 'sump'
  | 'drain'
  | 'site-water'
  | 'wood'
  | 'termite'
  | 'foam'
  | 'insulation'
  | 'radon'
  | 'liner-material'
  | 'liner'
  | 'drainage-practice'
  | 'air'
  | 'wood-moisture'
  | 'mold'
  | 'rot'
  | 'safety';

/**
 * How far a criterion binds. `code`: binds where adopted and for work under permit. `standard`: binds by contract or
 * license. `guide`: advice of a public body or of another place's law. `practice`: opinion of the trade.
 */
export type CriterionKind = 'code' | 'standard' | 'guide' | 'practice';

/** How a value is held against a limit; `yes` and `no` are answers, `within` takes two limits. */
export type Comparison = '>=' | '<=' | '>' | '<' | '=' | 'within' | 'yes' | 'no';

/** A limit: the number that is judged, and how it is written in US and in SI units. */
export interface Limit {
  /**
   * In the unit of the quantity; a pair [low, high] for `within`. Where the rule is in US units this is their exact
   * conversion; a metric figure printed beside it by the source is rounded and only shown.
   */
  readonly value: number | readonly [number, number];
  readonly us: string;
  readonly si: string;
}

/** A source together with the place in it. */
export interface CriterionSource extends Source {
  readonly edition?: string;
  readonly section?: string;
}

/** How samples of the quantity are put together. The counts are common practice, without a published source. */
export interface Sampling {
  /** How many measured samples it takes before the criterion can be shown as met. */
  readonly atLeast: number;
  /** `each`: every sample must pass. Otherwise the mean, largest or smallest of the samples is judged. */
  readonly combine: 'each' | 'mean' | 'maximum' | 'minimum';
}

/** License or registration that the remedy asks for in most places. */
export type LicensedTrade =
  | 'electrician'
  | 'plumber'
  | 'mechanical-contractor'
  | 'gas-fitter'
  | 'structural-engineer'
  | 'radon-professional'
  | 'pest-control-applicator'
  | 'mold-professional';

/** One judged requirement or piece of advice. */
export interface Criterion {
  /** Stable. Parts of one rule share its number and add a letter: `ACC-01a`, `ACC-01b`. */
  readonly id: string;
  readonly subject: CriterionSubject;
  readonly title: string;
  readonly quantity: QuantityKey;
  readonly comparison: Comparison;
  /** Absent for `yes` and `no`. */
  readonly limit?: Limit;
  /** Unit of the quantity, repeated for readers. */
  readonly unit: QuantityUnit;
  readonly kind: CriterionKind;
  readonly source: CriterionSource;
  readonly appliesWhen: Condition;
  readonly sampling: Sampling;
  /** What follows when it is not met, one plain sentence. */
  readonly consequence: string;
  /** Id of the standing caution that goes with checking or mending it. */
  readonly caution?: string;
  readonly licensedTrade?: LicensedTrade;
  readonly remark?: string;
}
