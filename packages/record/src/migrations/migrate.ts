import type { Entry } from '../log/entry.ts';
import { RECORD_VERSION } from '../schema/job.ts';
import { MIGRATIONS } from './list.ts';
import type { Migration } from './migration.ts';

/** Raises a job of an older version, step by step. The version must be known and not newer than ours. */
export function migrateJob(
  job: Record<string, unknown>,
  version: number,
  migrations: readonly Migration[] = MIGRATIONS,
): Record<string, unknown> {
  let raised = job;
  for (const step of migrations) {
    if (step.from >= version) raised = { ...step.job(raised), version: step.from + 1 };
  }
  return raised;
}

/** An entry as it would have been written in the current version. */
export function viewInCurrentVersion(entry: Entry, migrations: readonly Migration[] = MIGRATIONS): Entry {
  if (entry.version === RECORD_VERSION && migrations === MIGRATIONS) return entry;
  let view = entry;
  for (const step of migrations) {
    if (step.from >= entry.version) view = { ...step.entry(view), version: step.from + 1 };
  }
  return view;
}
