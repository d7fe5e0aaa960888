import type { Entry } from '../log/entry.ts';

/**
 * One step from a record version to the next. Steps are only ever appended, one file each, and never changed. Both
 * functions get data that nobody has checked against a schema: they leave alone what they do not know and never throw.
 */
export interface Migration {
  /** The version that this step starts from; it ends at the next. */
  readonly from: number;
  /** Rewrites a whole job as plain JSON. */
  readonly job: (job: Record<string, unknown>) => Record<string, unknown>;
  /**
   * The same rewriting for one entry of a log: its kind, field and value; its identity stays. The stored entry stays as
   * it is, only the view changes.
   */
  readonly entry: (entry: Entry) => Entry;
}
