import { always } from './condition.ts';
import type { Criterion, CriterionSubject } from './criterion.ts';
import { quantities } from './quantities.ts';

/** A criterion as it is written down in a data file: what is usual may be left out. */
export type CriterionRow = Omit<Criterion, 'subject' | 'unit' | 'appliesWhen' | 'sampling'> &
  Partial<Pick<Criterion, 'appliesWhen' | 'sampling'>>;

/** Completes rows of one subject: unit from the quantity, applies always, one sample is enough. */
export function criteriaOf(subject: CriterionSubject, rows: readonly CriterionRow[]): readonly Criterion[] {
  return rows.map((row) => ({
    appliesWhen: always,
    sampling: { atLeast: 1, combine: 'each' },
    ...row,
    subject,
    unit: quantities[row.quantity].unit,
  }));
}
