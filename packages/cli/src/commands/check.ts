import { assess, checkJob } from '@undercroft/assessment';
import { asFrozen } from '@undercroft/record';
import type { Command } from '../command.ts';
import { blamingJob } from '../job-faults.ts';
import { JOB_IS, loadWithPictures } from '../load-job.ts';
import { inputError } from '../usage-error.ts';

/** The command that looks for faults in a job. What it passes can be assessed. */
export const checkCommand: Command = {
  name: 'check',
  takes: 'JOB',
  help: 'Lists everything that is wrong with a job file or archive, and holds its frozen states against the entries.',
  more: [JOB_IS, 'Exit code 0 when nothing is wrong, 2 otherwise.'],
  options: {},
  run: async ({ words }, io) => {
    const { job, log, pictures } = await loadWithPictures(words, io);
    const issues = blamingJob(words[0], () => checkJob(job));
    if (issues.length > 0) throw inputError(words[0], issues);
    blamingJob(words[0], () => assess(job, undefined, { season: 'none' }));
    const states = log === undefined ? [] : job.frozen;
    for (const [i, state] of states.entries()) {
      const check = asFrozen(log!, state, pictures().get(state.sealSha256));
      if (!check.ok) throw inputError(words[0], check.issues);
      const { when, who, entryCount, entriesSha256 } = state;
      io.print(`Frozen ${i + 1}: ${when} by ${who}, ${entryCount} entries, SHA-256 ${entriesSha256}`);
      io.print(`  Every entry is there, unchanged; ${check.later} came later.`);
    }
    io.print(`${job.header.title}: nothing wrong found.`);
    return 0;
  },
};
