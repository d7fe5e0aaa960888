import type { Source } from '../sources/source.ts';
import type { CauseKey } from './node.ts';

/** That one node can bring about another, and how often it is the main reason. */
export interface CauseLink {
  readonly from: CauseKey;
  readonly to: CauseKey;
  /**
   * How often this is the main explanation of `to` before anything is known of the job, over 0 to 1. The priors of one
   * effect and `UNLISTED_PRIOR` are scaled to sum to 1. Set by judgment of the trade, no published source.
   */
  readonly prior: number;
  /** Why the one brings about the other, one plain sentence. */
  readonly reason: string;
  /** Where the reason comes from. */
  readonly source: Source;
}

/** A link before it is put into the catalogue. */
export type LinkRow = readonly [from: CauseKey, prior: number, reason: string, source: Source];

/** The explanations of one effect. */
export function linksTo(to: CauseKey, rows: readonly LinkRow[]): CauseLink[] {
  return rows.map(([from, prior, reason, source]) => ({ from, to, prior, reason, source }));
}
