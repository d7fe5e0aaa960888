import type { Job } from '@undercroft/record';
import { wrap } from 'comlink';
import type { AssessmentOutcome, Compute } from './api.ts';
import { Answers, latestWins } from './latest-wins.ts';

let worker: Compute | undefined;

/** The compute worker of this tab; it starts when something is first asked. */
export function computer(): Compute {
  worker ??= wrap<Compute>(
    new Worker(new URL('./worker.ts', import.meta.url), { type: 'module', name: 'compute' }),
  ) as unknown as Compute;
  return worker;
}

const assessments = new Answers<AssessmentOutcome>(8);
const askAssessment = latestWins((job: Job) => computer().assess(job));

/**
 * What follows from a job.
 * @param version distinguishes the states of one job: the same version is not computed twice
 * @throws Overtaken when a newer state was asked for meanwhile
 */
export function assessJob(job: Job, version: number): Promise<AssessmentOutcome> {
  return assessments.get(`${job.id}:${version}`, () => askAssessment(job));
}
