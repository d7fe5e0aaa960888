import { assessJob } from '../assess-job.ts';
import { assessOptions } from '../assess-options.ts';
import type { Command } from '../command.ts';
import { jsonText } from '../json.ts';
import { JOB_IS } from '../load-job.ts';
import { auditLines, GROUPINGS, type Grouping } from '../print-audit.ts';
import { UsageError } from '../usage-error.ts';
import { wrap } from '../wrap.ts';

function groupingAsked(option: string | boolean | undefined): Grouping {
  const asked = option ?? 'severity';
  const known = GROUPINGS.find((grouping) => grouping === asked);
  if (known === undefined) {
    throw new UsageError(`--by ${asked} is not known. It takes one of ${GROUPINGS.join(', ')}.`);
  }
  return known;
}

/** The command that lists every defect with place, proof, criterion and consequence, and what nobody has looked for. */
export const auditCommand: Command = {
  name: 'audit',
  takes: 'JOB [options]',
  help: 'Lists every defect with its place, proof, criterion and consequence, and what nobody has looked for.',
  more: [
    JOB_IS,
    'A defect is shown where it was measured or seen, said where only a finding without proof names it, contradicted where what was measured speaks against it. What mending it alone does is told for the design month; with --season cases also for the year.',
  ],
  options: {
    by: {
      type: 'string',
      value: 'WHAT',
      help: `Put together by ${GROUPINGS.join(', ')}; without it severity.`,
    },
    ...assessOptions('none'),
    json: { type: 'boolean', help: 'Print everything as JSON.' },
    strict: { type: 'boolean', help: 'Exit with 1 when a defect is shown.' },
  },
  run: async (given, io) => {
    const { by, json, strict } = given.options;
    const grouping = groupingAsked(by);
    const { assessment } = await assessJob(given, io, 'none');
    const { job, coverage, defects, defectsNotShown, defectsCount, notices } = assessment;
    if (coverage === undefined) throw new UsageError(notices.map((n) => n.message).join('\n'));
    if (json === true) {
      io.print(jsonText({ job, defectsCount, defects, defectsNotShown, coverage }));
    } else {
      for (const line of wrap(job.title, io.columns)) io.print(line);
      for (const line of auditLines({ ...assessment, coverage }, grouping, io.columns)) io.print(line);
    }
    return strict === true && defectsCount.shown > 0 ? 1 : 0;
  },
};
