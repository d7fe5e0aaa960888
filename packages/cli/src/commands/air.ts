import { placeFinder } from '@undercroft/assessment';
import { assessJob } from '../assess-job.ts';
import { assessOptions } from '../assess-options.ts';
import type { Command } from '../command.ts';
import { jsonText } from '../json.ts';
import { JOB_IS } from '../load-job.ts';
import { airLines } from '../print-air.ts';
import { wrap } from '../wrap.ts';

const { weather } = assessOptions('none');

/** The command that tells where the dry air of a space goes, and where its dehumidifier would stand better. */
export const airCommand: Command = {
  name: 'air',
  takes: 'JOB [options]',
  help: 'Tells where the dry air goes and where it does not, and how to arrange the dehumidifier better.',
  more: [
    JOB_IS,
    'Where no dehumidifier runs and the repairs of the job set one, it looks for its place in the repaired space.',
    'The air is worked out over the plan for the most humid day. How well it mixes is known to a factor of three, so every figure comes with its range: read them as a ranking, never as a reading.',
  ],
  options: {
    weather,
    'as-found': {
      type: 'boolean',
      help: 'Leave out the search for a better arrangement, which takes seconds.',
    },
    json: { type: 'boolean', help: 'Print everything as JSON, with the maps.' },
  },
  run: async (given, io) => {
    const { json, 'as-found': asFound } = given.options;
    // The years of the repaired space say which machine is to be placed where none stands yet.
    const { job, assessment } = await assessJob(given, io, 'none', {
      season: asFound === true ? 'none' : 'quick',
      distribution: asFound === true ? 'present' : 'search',
      coverage: false,
    });
    const { distribution } = assessment;
    if (distribution === undefined) throw new Error('the air on the plan was asked for and is not there');
    if (json === true) {
      io.print(jsonText({ job: assessment.job, distribution }));
      return 0;
    }
    for (const line of wrap(assessment.job.title, io.columns)) io.print(line);
    for (const line of airLines(distribution, placeFinder(job, assessment), io.columns)) io.print(line);
    return 0;
  },
};
