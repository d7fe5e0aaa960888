import {
  type CrawlOptions,
  type CrawlPlanShown,
  crawlPlanOf,
  type GeometryResult,
  JobError,
} from '@undercroft/assessment';
import { EngineError } from '@undercroft/engine';
import type { Job } from '@undercroft/record';
import { expose } from 'comlink';

/** A crawl, or why there can be none: texts for a person. */
export type CrawlOutcome =
  | { readonly ok: true; readonly plan: CrawlPlanShown }
  | { readonly ok: false; readonly reason: string };

/** Plans crawls, in a worker that can be stopped. */
export interface CrawlPlanner {
  plan(job: Job, geometry: GeometryResult, options: CrawlOptions): CrawlOutcome;
}

const planner: CrawlPlanner = {
  plan(job, geometry, options) {
    try {
      return { ok: true, plan: crawlPlanOf(job, { geometry }, options) };
    } catch (error) {
      if (error instanceof JobError || error instanceof EngineError)
        return { ok: false, reason: error.message };
      throw error;
    }
  },
};

expose(planner);
