import type { RecordIssue } from '../issues.ts';
import { type Job, RECORD_VERSION } from '../schema/job.ts';
import { ITEM_KINDS } from './item-kinds.ts';
import type { SortedItems } from './sorted-items.ts';

/** The job that a log folds to. Without a header there is none yet. */
export interface FoldedJob {
  readonly job: Job | null;
  /** Parts that break the schema and are left out or shown with an older value; missing parts. */
  readonly issues: readonly RecordIssue[];
}

/** Puts the job together from its parts, each of which fits its schema. Without a header there is none. */
export function assembleJob(
  jobId: string,
  singles: ReadonlyMap<string, Record<string, unknown>>,
  lists: ReadonlyMap<string, SortedItems>,
  issues: RecordIssue[],
): FoldedJob {
  if (!singles.has('header')) {
    issues.push({ path: 'header', found: 'nothing', expected: 'a header with a title' });
    return { job: null, issues };
  }
  const job: Record<string, unknown> = { format: 'undercroft-job', version: RECORD_VERSION, id: jobId };
  for (const [name, { path, single, schema }] of Object.entries(ITEM_KINDS)) {
    const [section, list] = path;
    if (single) job[section] = { ...(job[section] as object), ...(singles.get(name) ?? schema.parse({})) };
    else if (list === undefined) job[section] = lists.get(name)?.values ?? [];
    else job[section] = { ...(job[section] as object), [list]: lists.get(name)?.values ?? [] };
  }
  return { job: job as unknown as Job, issues };
}
