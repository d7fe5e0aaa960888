import { type CrawlOptions, crawlPlanOf, crawlPlanWith } from '@undercroft/assessment';
import { assessJob } from '../assess-job.ts';
import type { Command, Given } from '../command.ts';
import { blamingJob } from '../job-faults.ts';
import { jsonText } from '../json.ts';
import { JOB_IS } from '../load-job.ts';
import { coverageLines } from '../print-coverage.ts';
import { crawlLines } from '../print-crawl.ts';
import { routeAsked } from '../route.ts';
import { UsageError } from '../usage-error.ts';
import { wrap } from '../wrap.ts';

/** What crawl is asked for; undefined for none. */
function crawlAsked({ route, bays, angle, exact }: Given['options']): CrawlOptions | undefined {
  const what = routeAsked(route);
  if (what === undefined) {
    for (const [name, value] of Object.entries({ bays, angle, exact })) {
      if (value !== undefined)
        throw new UsageError(`--${name} goes with --route: name a route, rest or all.`);
    }
    return undefined;
  }
  if (angle === undefined) return { what, bays: bays === true };
  const fieldOfViewDeg = Number(angle);
  if (!(fieldOfViewDeg >= 20 && fieldOfViewDeg <= 360)) {
    throw new UsageError(`--angle ${angle} is no angle from 20 to 360 degrees.`);
  }
  return { what, bays: bays === true, fieldOfViewDeg };
}

/** The command that tells what the pictures of a job show and what nobody looked at. */
export const coverageCommand: Command = {
  name: 'coverage',
  takes: 'JOB [options]',
  help: 'Tells what the pictures show of a space, what they do not, and how to crawl for the rest.',
  more: [
    JOB_IS,
    'A picture counts where its place and direction were noted. That a picture shows something does not say that it is right, and what no picture shows is not known to be bad: somebody has to look.',
  ],
  options: {
    route: {
      type: 'string',
      value: 'WHAT',
      help: 'Also plan a crawl: "rest" for what no picture shows yet, "all" for everything.',
    },
    bays: { type: 'boolean', help: 'With --route: look into every joist bay, which takes many more stops.' },
    angle: { type: 'string', value: 'DEG', help: 'With --route: how wide the camera looks; without it 65.' },
    exact: {
      type: 'boolean',
      help: 'With --route: where the fewest stops are not proven, let a solver try for up to some minutes.',
    },
    json: { type: 'boolean', help: 'Print everything as JSON.' },
  },
  run: async (given, io) => {
    const { json, exact } = given.options;
    const asked = crawlAsked(given.options);
    const { job, assessment } = await assessJob(given, io, 'none');
    const { coverage, notices } = assessment;
    if (coverage === undefined) throw new UsageError(notices.map((n) => n.message).join('\n'));
    let plan: ReturnType<typeof crawlPlanOf> | undefined;
    if (asked !== undefined) {
      io.progress('Planning the crawl ...');
      const [name] = given.words;
      plan = blamingJob(name, () => crawlPlanOf(job, assessment, asked));
      if (exact === true && !plan.stationsProven) {
        io.progress('Looking for fewer stops ...');
        const { solveCover } = await import('../cover-solver.ts');
        plan = await crawlPlanWith(job, assessment, solveCover, asked);
      }
    }
    if (json === true) {
      io.print(jsonText({ job: assessment.job, coverage, ...(plan === undefined ? {} : { crawl: plan }) }));
      return 0;
    }
    for (const line of wrap(assessment.job.title, io.columns)) io.print(line);
    for (const line of coverageLines(coverage, io.columns)) io.print(line);
    if (plan !== undefined) for (const line of crawlLines(plan, io.columns)) io.print(line);
    return 0;
  },
};
