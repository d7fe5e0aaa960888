import { crawlPlanOf } from '@undercroft/assessment';
import { assessJob, searchedAir } from '../assess-job.ts';
import { assessOptions } from '../assess-options.ts';
import type { Command } from '../command.ts';
import { writeOutputs } from '../files.ts';
import { blamingJob } from '../job-faults.ts';
import { JOB_IS } from '../load-job.ts';
import { routeAsked } from '../route.ts';
import { UsageError } from '../usage-error.ts';
import { wrap } from '../wrap.ts';

/** The command that writes the report of a job. */
export const reportCommand: Command = {
  name: 'report',
  takes: 'JOB --out FILE',
  help: 'Assesses a job and writes its report, PDF or HTML by the ending of the file.',
  more: [JOB_IS],
  options: {
    out: { type: 'string', value: 'FILE', help: 'File to write, ending in .pdf or .html.' },
    ...assessOptions('cases'),
    frozen: {
      type: 'string',
      value: 'WHICH',
      help: 'Report a frozen state and nothing that came later: "last", or its number as undercroft check lists it.',
    },
    route: {
      type: 'string',
      value: 'WHAT',
      help: 'Add the sheet of a crawl: "rest" for what no picture shows yet, "all" for everything.',
    },
  },
  run: async (given, io) => {
    const { out } = given.options;
    if (typeof out !== 'string') {
      throw new UsageError('Name the file to write: --out FILE.pdf or --out FILE.html.');
    }
    const pdf = out.toLowerCase().endsWith('.pdf');
    if (!pdf && !out.toLowerCase().endsWith('.html')) {
      throw new UsageError(`--out ${out} must end in .pdf or .html.`);
    }
    const route = routeAsked(given.options.route);
    const { job, assessment, pictures, log, frozen } = await assessJob(
      given,
      io,
      'cases',
      searchedAir(given),
    );
    const crawl =
      route === undefined
        ? {}
        : { crawl: blamingJob(given.words[0], () => crawlPlanOf(job, assessment, { what: route })) };
    io.progress('Writing the report ...');
    const record = log === undefined ? {} : { record: { log, ...(frozen === undefined ? {} : { frozen }) } };
    const extras = { pictures: pictures(), ...crawl, ...record };
    const { renderHtml, renderPdf } = await import('../render-report.ts');
    const content = pdf
      ? await renderPdf(job, assessment, extras)
      : await renderHtml(job, assessment, extras);
    await writeOutputs([{ path: out, content }], io.cwd);
    for (const line of wrap(assessment.headline, io.columns)) io.print(line);
    io.print(`\nWritten: ${out}`);
    return 0;
  },
};
