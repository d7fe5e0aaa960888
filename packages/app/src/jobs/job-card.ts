import { isSurveyed, type Job, type JobLog } from '@undercroft/record';
import type { JobCard, NextStep } from '../storage/storage.ts';

/** What a job waits for next, judged by what its record holds. */
export function nextStepOf(job: Job | null): NextStep {
  if (job === null || !isSurveyed(job)) return 'plan';
  const { readings } = job;
  const seen = readings.air.length + readings.surface.length + readings.wood.length;
  if (seen === 0) return 'readings';
  if (job.findings.length === 0 && readings.observations.length === 0) return 'findings';
  if (job.watch.length > 0) return 'watch';
  if (job.acceptance.length > 0) return job.acceptance.every((item) => item.claimed) ? 'watch' : 'proof';
  if (job.build.length > 0) return job.build.every((step) => step.state === 'done') ? 'proof' : 'build';
  if (job.prices.length > 0) return 'build';
  return job.design.repairs.length > 0 ? 'prices' : 'repairs';
}

/** Title of a job, and its id where it has none. */
export function titleOf(log: JobLog): string {
  return String(log.history('header', 'header')?.shown('title') ?? log.jobId);
}

function headerText(log: JobLog, field: string): string | undefined {
  const value = log.history('header', 'header')?.shown(field);
  return typeof value === 'string' && value !== '' ? value : undefined;
}

/** The card that the list shows for a log as it stands. */
export function cardOf(log: JobLog, changedAt: string, demo = false): JobCard {
  const client = headerText(log, 'client');
  const address = headerText(log, 'address');
  return {
    id: log.jobId,
    title: titleOf(log),
    ...(client === undefined ? {} : { client }),
    ...(address === undefined ? {} : { address }),
    changedAt,
    next: nextStepOf(log.fold().job),
    entryCount: log.size,
    ...(demo ? { demo: true } : {}),
  };
}
