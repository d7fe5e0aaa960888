import type { Entry } from '../log/entry.ts';
import { MIGRATIONS } from './list.ts';
import type { Migration } from './migration.ts';

/** Raises a job of an older version, step by step. The version must be known and not newer than ours. */
export function migrateJob(
  job: Record<string, unknown>,
  version: number,
  migrations: readonly Migration[] = MIGRATIONS,
): Record<string, unknown> {
  return migrations
    .slice(version - 1)
    .reduce((raised, step) => ({ ...step.job(raised), version: step.from + 1 }), job);
}

/** An entry as it would have been written in the current version. */
export function viewInCurrentVersion(entry: Entry, migrations: readonly Migration[] = MIGRATIONS): Entry {
  if (entry.version > migrations.length) return entry;
  return migrations
    .slice(entry.version - 1)
    .reduce((view, step) => ({ ...step.entry(view), version: step.from + 1 }), entry);
}
