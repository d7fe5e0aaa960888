import { join } from 'node:path';
import { assessJob, searchedAir } from '../assess-job.ts';
import { assessOptions } from '../assess-options.ts';
import type { Command } from '../command.ts';
import { writeOutputs } from '../files.ts';
import { assessmentJson } from '../json.ts';
import { JOB_IS } from '../load-job.ts';
import { assessmentLines } from '../print-assessment.ts';

/** The command that judges a job. */
export const assessCommand: Command = {
  name: 'assess',
  takes: 'JOB [options]',
  help: 'Judges a crawl space: its size, what readings mean, criteria, where water comes from.',
  more: [
    JOB_IS,
    'The JSON holds everything, in SI units with the unit in each name. Where taped walls close exactly it has no geometry.closure.precision.',
  ],
  options: {
    ...assessOptions('full'),
    json: { type: 'boolean', help: 'Print the whole assessment as JSON.' },
    out: {
      type: 'string',
      value: 'DIR',
      help: 'Also write assessment.json, report.html and report.pdf into this folder.',
    },
    strict: { type: 'boolean', help: 'Exit with 1 when a criterion is not met.' },
  },
  run: async (given, io) => {
    const { json, out, strict } = given.options;
    const { job, assessment, pictures } = await assessJob(
      given,
      io,
      'full',
      out === undefined ? {} : searchedAir(given),
    );
    const text = assessmentJson(assessment);
    const paths: string[] = [];
    if (typeof out === 'string') {
      io.progress('Writing the report ...');
      const { renderHtml, renderPdf } = await import('../render-report.ts');
      const extras = { pictures: pictures() };
      const files = [
        { path: join(out, 'assessment.json'), content: `${text}\n` },
        { path: join(out, 'report.html'), content: await renderHtml(job, assessment, extras) },
        { path: join(out, 'report.pdf'), content: await renderPdf(job, assessment, extras) },
      ];
      await writeOutputs(files, io.cwd);
      paths.push(...files.map((f) => f.path));
    }
    if (json === true) io.print(text);
    else {
      for (const line of assessmentLines(assessment, io.columns)) io.print(line);
      if (paths.length > 0) io.print(`\nWritten: ${paths.join(', ')}`);
    }
    return strict === true && assessment.criteriaCount.notMet > 0 ? 1 : 0;
  },
};
