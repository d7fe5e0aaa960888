import { type Assessment, assess, compareSurveys } from '@undercroft/assessment';
import type { Job } from '@undercroft/record';
import type { Command, Io } from '../command.ts';
import { blamingJob } from '../job-faults.ts';
import { jsonText } from '../json.ts';
import { JOB_IS, loadJob } from '../load-job.ts';
import { comparisonLines } from '../print-comparison.ts';
import { UsageError } from '../usage-error.ts';

async function surveyOf(name: string, io: Io): Promise<{ job: Job; assessment: Assessment }> {
  const job = await loadJob([name], io);
  io.progress(`Assessing ${name} ...`);
  return { job, assessment: blamingJob(name, () => assess(job, undefined, { season: 'none' })) };
}

/** The command that sets two surveys of one space side by side. */
export const compareCommand: Command = {
  name: 'compare',
  takes: 'BEFORE AFTER',
  help: 'Sets two surveys of one space side by side: what changed, what turned, what was claimed and is not.',
  more: [
    JOB_IS,
    'Things are matched by id, else by place and kind within 1 m; readings by place and kind. What the later survey does not show is never a change, neither way.',
  ],
  options: { json: { type: 'boolean', help: 'Print everything as JSON.' } },
  run: async ({ words, options }, io) => {
    const [before, after, ...extra] = words;
    if (before === undefined || after === undefined || extra.length > 0) {
      throw new UsageError('Name two jobs, the earlier one first: undercroft compare BEFORE AFTER.');
    }
    const comparison = compareSurveys(await surveyOf(before, io), await surveyOf(after, io));
    if (options.json === true) io.print(jsonText(comparison));
    else for (const line of comparisonLines(comparison, io.columns)) io.print(line);
    return 0;
  },
};
