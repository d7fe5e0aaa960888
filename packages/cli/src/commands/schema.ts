import { assessmentJsonSchema } from '@undercroft/assessment';
import { entryJsonSchema, jobJsonSchema } from '@undercroft/record';
import type { Command } from '../command.ts';
import { jsonText } from '../json.ts';
import { UsageError } from '../usage-error.ts';

const SCHEMAS: Readonly<Record<string, () => unknown>> = {
  job: jobJsonSchema,
  entry: entryJsonSchema,
  assessment: assessmentJsonSchema,
};

/** The command that prints the JSON Schemas of the record. */
export const schemaCommand: Command = {
  name: 'schema',
  takes: '[NAME]',
  help: 'Prints the JSON Schema of a job, of an entry of its log, or of an assessment.',
  more: ['NAME is job (the default), entry or assessment.'],
  options: {},
  run: async ({ words }, io) => {
    const name = words[0] ?? 'job';
    if (!Object.hasOwn(SCHEMAS, name) || words.length > 1) {
      throw new UsageError(
        `There is no schema "${words.join(' ')}". Schemas: ${Object.keys(SCHEMAS).join(', ')}.`,
      );
    }
    io.print(jsonText(SCHEMAS[name]()));
    return 0;
  },
};
