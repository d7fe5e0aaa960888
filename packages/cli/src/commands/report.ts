import { assessJob } from '../assess-job.ts';
import { assessOptions } from '../assess-options.ts';
import type { Command } from '../command.ts';
import { writeOutputs } from '../files.ts';
import { JOB_IS } from '../load-job.ts';
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
    const { job, assessment } = await assessJob(given, io, 'cases');
    io.progress('Writing the report ...');
    const { renderHtml, renderPdf } = await import('../render-report.ts');
    const content = pdf ? await renderPdf(job, assessment) : await renderHtml(job, assessment);
    await writeOutputs([{ path: out, content }], io.cwd);
    for (const line of wrap(assessment.headline, io.columns)) io.print(line);
    io.print(`\nWritten: ${out}`);
    return 0;
  },
};
