import * as z from 'zod';
import { Entry } from './log/entry.ts';
import { Job } from './schema/job.ts';

/** JSON Schema (draft 2020-12) of a job as written in a file: what has a default may be left out. */
export function jobJsonSchema(): Record<string, unknown> {
  return z.toJSONSchema(Job, { io: 'input' }) as Record<string, unknown>;
}

/** JSON Schema (draft 2020-12) of one entry of a log. */
export function entryJsonSchema(): Record<string, unknown> {
  return z.toJSONSchema(Entry, { io: 'input' }) as Record<string, unknown>;
}
