import type { Entry } from '../log/entry.ts';

/** One step from a record version to the next. Steps are only ever appended, one file each, and never changed. */
export interface Migration {
  /** The version that this step starts from; it ends at the next. */
  readonly from: number;
  /** Rewrites a whole job as plain JSON. */
  readonly job: (job: Record<string, unknown>) => Record<string, unknown>;
  /** The same rewriting for one entry of a log. The stored entry stays as it is; only the view changes. */
  readonly entry: (entry: Entry) => Entry;
}
