import { assess, checkJob } from '@undercroft/assessment';
import type { Command } from '../command.ts';
import { blamingJob } from '../job-faults.ts';
import { JOB_IS, loadJob } from '../load-job.ts';
import { inputError } from '../usage-error.ts';

/** The command that looks for faults in a job. What it passes can be assessed. */
export const checkCommand: Command = {
  name: 'check',
  takes: 'JOB',
  help: 'Lists everything that is wrong with a job file or archive.',
  more: [JOB_IS, 'Exit code 0 when nothing is wrong, 2 otherwise.'],
  options: {},
  run: async ({ words }, io) => {
    const job = await loadJob(words, io);
    const issues = blamingJob(words[0], () => checkJob(job));
    if (issues.length > 0) throw inputError(words[0], issues);
    blamingJob(words[0], () => assess(job, undefined, { season: 'none' }));
    io.print(`${job.header.title}: nothing wrong found.`);
    return 0;
  },
};
