import type { JobLog } from '../log/job-log.ts';

/** A thing of the record by its kind in the log and its id. */
export interface ItemKey {
  readonly kind: string;
  readonly id: string;
}

/**
 * Stamps of the entries that an item rests on as it is shown: for each of its fields the one whose value counts. Empty for
 * an item that no entry is about. Of the parts that a job has once, the id is the name of the kind.
 */
export function entriesBehind(log: JobLog, { kind, id }: ItemKey): string[] {
  const history = log.history(kind, id);
  if (history === undefined) return [];
  const stamps = history.fieldNames.flatMap((name) => {
    const shown = history.field(name)?.shown;
    return shown === undefined ? [] : [shown.entry.id];
  });
  return [...new Set(stamps)].sort();
}
