import type { Change, JobLog } from '@undercroft/record';

/** The item before this one in its list; null for the first, undefined where the list does not hold it. */
function placeOf(log: JobLog, kind: string, item: string): string | null | undefined {
  const ids = log.list(kind).values.map((value) => value.id as string);
  const at = ids.indexOf(item);
  return at < 0 ? undefined : at === 0 ? null : ids[at - 1];
}

/**
 * The change that takes a change back, as the log stands before it; null where there is none, as for the creation of a
 * part that a job always has. Taking back is an entry like any other: nothing leaves the log.
 */
export function inverseOf(log: JobLog, change: Change): Change | null {
  const { kind, item } = change;
  switch (change.do) {
    case 'create':
      return kind === item ? null : { do: 'remove', kind, item };
    case 'set':
      return {
        do: 'set',
        kind,
        item,
        field: change.field,
        value: log.history(kind, item)?.shown(change.field) ?? null,
      };
    case 'move': {
      const after = placeOf(log, kind, item);
      return after === undefined ? null : { do: 'move', kind, item, after };
    }
    case 'remove':
      return { do: 'restore', kind, item };
    case 'restore':
      return { do: 'remove', kind, item };
  }
}

/** The change that does a change again after it was taken back. */
export function againOf(change: Change): Change {
  return change.do === 'create' ? { do: 'restore', kind: change.kind, item: change.item } : change;
}
