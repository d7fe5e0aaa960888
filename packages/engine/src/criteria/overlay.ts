import type { Criterion, CriterionKind, CriterionSource } from './criterion.ts';
import type { CriterionRow } from './criterion-row.ts';

/** What a replacement may change; id, subject and quantity stay, so that the row remains the same question. */
export type ReplacedFields = Partial<
  Pick<
    Criterion,
    | 'title'
    | 'comparison'
    | 'limit'
    | 'appliesWhen'
    | 'sampling'
    | 'consequence'
    | 'caution'
    | 'licensedTrade'
    | 'remark'
  >
> & {
  /** How far the row binds there; without it as far as before. */
  readonly kind?: CriterionKind;
};

/** One change that an overlay makes to the catalogue. */
export type OverlayChange =
  | {
      readonly change: 'replace';
      readonly criterionId: string;
      readonly fields: ReplacedFields;
      readonly why: string;
      readonly source: CriterionSource;
    }
  | {
      readonly change: 'add';
      readonly subject: Criterion['subject'];
      readonly row: CriterionRow;
      readonly why: string;
    }
  | {
      readonly change: 'strike-out';
      readonly criterionId: string;
      readonly why: string;
      readonly source: CriterionSource;
    };

/** A layer over the catalogue: amendments of a place, or a firm's own standard. */
export interface Overlay {
  readonly id: string;
  /** Where it holds, or whose standard it is. */
  readonly place: string;
  /** Law may change any row. A firm's own standard may add rows and change guide and practice rows only. */
  readonly origin: 'law' | 'own-standard';
  readonly changes: readonly OverlayChange[];
}
