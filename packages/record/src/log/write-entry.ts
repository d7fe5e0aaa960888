import { generateKeyBetween } from 'fractional-indexing';
import { issuesOf, type RecordIssue } from '../issues.ts';
import { RECORD_VERSION } from '../schema/job.ts';
import { nextStamp } from './clock.ts';
import type { Side } from './disagreement.ts';
import { CREATE, Entry, ORDER, REMOVED } from './entry.ts';
import { currentEntries, heads } from './item-history.ts';
import { ITEM_KINDS } from './item-kinds.ts';
import type { JobLog } from './job-log.ts';

/** Who writes, on which device, and what time the device shows. */
export interface Author {
  readonly who: string;
  /** 4 to 16 lower-case letters or digits, the same for one device forever. */
  readonly device: string;
  readonly nowMs: number;
  /** The same moment as ISO 8601 with the device's offset. */
  readonly deviceTime: string;
}

/** What a person does to one item. */
export type Change =
  | {
      readonly do: 'create';
      readonly kind: string;
      readonly item: string;
      readonly value: Record<string, unknown>;
      readonly after?: string | null;
    }
  | {
      readonly do: 'set';
      readonly kind: string;
      readonly item: string;
      readonly field: string;
      readonly value: unknown;
    }
  | { readonly do: 'move'; readonly kind: string; readonly item: string; readonly after: string | null }
  | { readonly do: 'remove' | 'restore'; readonly kind: string; readonly item: string }
  | {
      readonly do: 'settle';
      readonly kind: string;
      readonly item: string;
      readonly field: string;
      readonly value: unknown;
    };

/** Key that puts an item behind `after` (null: first; undefined: last) in the list as it is shown. */
function orderKey(log: JobLog, kind: string, item: string, after: string | null | undefined): string {
  const others = log.order(kind).filter((slot) => slot.item !== item);
  if (after === undefined) return generateKeyBetween(others.at(-1)?.order || null, null);
  const at = after === null ? -1 : others.findIndex((slot) => slot.item === after);
  const low = others[at]?.order || null;
  // Two devices may have made the same key; the next greater one bounds the gap.
  const high = others.slice(at + 1).find((slot) => low === null || slot.order > low)?.order ?? null;
  return generateKeyBetween(low, high);
}

function partsOf(log: JobLog, change: Change): { field: string; value: unknown; seen: string[] } {
  const history = log.history(change.kind, change.item);
  const seenOf = (field: string) => heads(history?.fields.get(field)).map((v) => v.entry.id);
  switch (change.do) {
    case 'create': {
      const single = ITEM_KINDS[change.kind]?.single === true;
      const order = single ? {} : { [ORDER]: orderKey(log, change.kind, change.item, change.after) };
      return { field: CREATE, value: { ...change.value, ...order }, seen: [] };
    }
    case 'set':
    case 'settle':
      return { field: change.field, value: change.value, seen: seenOf(change.field) };
    case 'move':
      return {
        field: ORDER,
        value: orderKey(log, change.kind, change.item, change.after),
        seen: seenOf(ORDER),
      };
    case 'remove':
      return { field: REMOVED, value: true, seen: history === undefined ? [] : currentEntries(history) };
    case 'restore':
      return { field: REMOVED, value: false, seen: seenOf(REMOVED) };
  }
}

function faultsOf(log: JobLog, change: Change): RecordIssue[] {
  const kind = ITEM_KINDS[change.kind];
  if (kind === undefined) {
    return [{ path: 'kind', found: change.kind, expected: `one of ${Object.keys(ITEM_KINDS).join(', ')}` }];
  }
  const path = [...kind.path, change.item];
  if (change.do === 'create') {
    const parsed = kind.schema.safeParse(kind.single ? change.value : { id: change.item, ...change.value });
    return parsed.success ? [] : issuesOf(parsed.error, change.value, path);
  }
  if (log.history(change.kind, change.item) === undefined) {
    return [{ path: path.join('.'), found: 'nothing', expected: 'an item that exists' }];
  }
  if (change.do === 'set' || change.do === 'settle') {
    const schema = kind.schema.shape[change.field];
    if (schema === undefined || change.field === 'id') {
      return [{ path: path.join('.'), found: change.field, expected: `a field of ${change.kind}` }];
    }
    const parsed = schema.safeParse(change.value ?? undefined);
    return parsed.success ? [] : issuesOf(parsed.error, change.value, [...path, change.field]);
  }
  return [];
}

/**
 * Writes the entry for a change, as its author sees the log now. The entry is not added: store it first, then add it.
 * Takes in a change that breaks the schema with the issues it has, and writes nothing.
 */
export function writeEntry(
  log: JobLog,
  author: Author,
  change: Change,
): { entry: Entry } | { issues: RecordIssue[] } {
  const faults = faultsOf(log, change);
  if (faults.length > 0) return { issues: faults };
  const { field, value, seen } = partsOf(log, change);
  const entry = Entry.safeParse({
    id: nextStamp(log.newestStamp, author.nowMs, author.device),
    version: RECORD_VERSION,
    who: author.who,
    deviceTime: author.deviceTime,
    kind: change.kind,
    item: change.item,
    field,
    value: value === undefined ? null : value,
    seen,
  });
  return entry.success ? { entry: entry.data } : { issues: issuesOf(entry.error, change, ['entry']) };
}

/** The change that takes one side of a disagreement over a field. */
export function settleWith(kind: string, item: string, field: string, side: Side): Change {
  return { do: 'settle', kind, item, field, value: side.value };
}
