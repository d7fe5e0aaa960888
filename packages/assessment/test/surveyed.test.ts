import { readJob } from '@undercroft/record';
import { expect, it } from 'vitest';
import { assess, checkJob, JobError } from '../src/index.ts';

it('names what a job without walls and ground lacks, and assesses nothing', () => {
  const read = readJob({
    format: 'undercroft-job',
    version: 2,
    id: 'unwalled',
    header: { title: 'No walls yet' },
    plan: {},
  });
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const { job } = read;
  expect(checkJob(job).map((issue) => issue.path)).toEqual(['plan.outline', 'plan.ground']);
  expect(() => assess(job)).toThrow(JobError);
  expect(() => assess(job)).toThrow('plan.outline: found nothing; expected the walls of the space');
});
