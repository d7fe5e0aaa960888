import type { CrawlPlanShown } from '@undercroft/assessment';

/** What a report may hold beside what the assessment says. */
export interface ReportExtras {
  /** Pictures of the job by their SHA-256, as captured; those that are absent are named as missing. */
  readonly pictures?: ReadonlyMap<string, Uint8Array>;
  /** A crawl to be printed as a sheet to take along. */
  readonly crawl?: CrawlPlanShown;
}
