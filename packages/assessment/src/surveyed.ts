import { isSurveyed, type Job, type RecordIssue, type SurveyedJob } from '@undercroft/record';
import { JobError } from './job-error.ts';

/** What a job lacks before anything can be worked out. Empty for one with walls and a ground. */
export function missingParts(job: Job): RecordIssue[] {
  const missing: RecordIssue[] = [];
  if (job.plan.outline === undefined) {
    missing.push({ path: 'plan.outline', found: 'nothing', expected: 'the walls of the space' });
  }
  if (job.plan.ground === undefined) {
    missing.push({ path: 'plan.ground', found: 'nothing', expected: 'what covers the floor of the space' });
  }
  return missing;
}

/**
 * The job as one whose walls are drawn and whose ground is named.
 * @throws JobError when it is not
 */
export function requireSurveyed(job: Job): SurveyedJob {
  if (!isSurveyed(job)) throw new JobError(missingParts(job));
  return job;
}
