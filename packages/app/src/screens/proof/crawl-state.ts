import type { CrawlPlanShown, GeometryResult } from '@undercroft/assessment';
import type { Job } from '@undercroft/record';
import { wrap } from 'comlink';
import { useSyncExternalStore } from 'react';
import type { CrawlPlanner } from './crawl-worker.ts';

/** The crawl of a job, shared by the plan and the list beside it. */
export interface CrawlState {
  readonly jobId: string;
  readonly busy: boolean;
  readonly plan?: CrawlPlanShown;
  readonly reason?: string;
  /** Index of the stop where somebody is. */
  readonly at: number;
}

const NONE: CrawlState = { jobId: '', busy: false, at: 0 };

let state = NONE;
let worker: Worker | undefined;
const listeners = new Set<() => void>();

function take(next: CrawlState): void {
  state = next;
  for (const changed of listeners) changed();
}

/** Ends what is being planned and forgets the crawl. */
export function forgetCrawl(): void {
  worker?.terminate();
  worker = undefined;
  take(NONE);
}

/** Plans the crawl of a job anew: `rest` shows what no picture shows yet. An older question is stopped. */
export async function planCrawl(job: Job, geometry: GeometryResult, what: 'all' | 'rest'): Promise<void> {
  forgetCrawl();
  const mine = new Worker(new URL('./crawl-worker.ts', import.meta.url), { type: 'module', name: 'crawl' });
  worker = mine;
  take({ jobId: job.id, busy: true, at: 0 });
  try {
    const outcome = await wrap<CrawlPlanner>(mine).plan(job, geometry, { what });
    if (worker !== mine) return;
    take({
      jobId: job.id,
      busy: false,
      at: 0,
      ...(outcome.ok ? { plan: outcome.plan } : { reason: outcome.reason }),
    });
  } catch (error) {
    if (worker === mine) take({ jobId: job.id, busy: false, at: 0, reason: (error as Error).message });
  } finally {
    if (worker === mine) {
      mine.terminate();
      worker = undefined;
    }
  }
}

/** Goes to a stop. */
export function goToStop(at: number): void {
  take({ ...state, at });
}

/** The crawl of a job, as it stands. */
export function useCrawl(jobId: string): CrawlState {
  const now = useSyncExternalStore(
    (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    () => state,
  );
  return now.jobId === jobId ? now : NONE;
}
