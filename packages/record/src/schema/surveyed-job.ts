import type { Job } from './job.ts';
import type { Ground, Outline, Plan } from './plan.ts';

/** A job whose walls are drawn and whose ground is named: what can be drawn and assessed. */
export interface SurveyedJob extends Job {
  readonly plan: Plan & { readonly outline: Outline; readonly ground: Ground };
}

/** True for a job whose walls are drawn and whose ground is named. */
export function isSurveyed(job: Job): job is SurveyedJob {
  return job.plan.outline !== undefined && job.plan.ground !== undefined;
}
