import type { CrawlPlanShown } from '@undercroft/assessment';
import type { FrozenState, JobLog } from '@undercroft/record';

/** What a report may hold beside what the assessment says. */
export interface ReportExtras {
  /** Pictures of the job by their SHA-256, as captured; those that are absent are named as missing. */
  readonly pictures?: ReadonlyMap<string, Uint8Array>;
  /** A crawl to be printed as a sheet to take along. */
  readonly crawl?: CrawlPlanShown;
  /** The log that the job was folded from, and the frozen state that it is, so that rows can name their entries. */
  readonly record?: { readonly log: JobLog; readonly frozen?: FrozenState };
}
