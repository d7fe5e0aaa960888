import { canonicalJson } from '../canonical.ts';
import { firstIssues, issuesOf, pathText, type RecordIssue, shown } from '../issues.ts';
import { RECORD_VERSION } from '../schema/job.ts';
import { FOLLOW_LIMIT_MS, nextStamp } from './clock.ts';
import type { Disagreement, Side } from './disagreement.ts';
import { CREATE, Entry, ORDER, REMOVED } from './entry.ts';
import { ITEM_KINDS, type ItemKind } from './item-kinds.ts';
import { fieldSchema, itemKind, itemPath } from './item-schema.ts';
import type { JobLog } from './job-log.ts';
import { keyBetween } from './order-key.ts';

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
export type Change = { readonly kind: string; readonly item: string } & (
  | {
      readonly do: 'create';
      readonly value: Record<string, unknown>;
      /** The item that it comes to stand behind in its list; null: first; left out: last. */
      readonly after?: string | null;
    }
  | { readonly do: 'set'; readonly field: string; readonly value: unknown }
  | { readonly do: 'move'; readonly after: string | null }
  | { readonly do: 'remove' | 'restore' }
);

function faultsOfCreate(log: JobLog, kind: ItemKind, change: Change & { do: 'create' }): RecordIssue[] {
  const { item, value, after } = change;
  const path = pathText(itemPath(kind, item));
  if (kind.single && item !== change.kind) {
    return [{ path, found: shown(item), expected: `${change.kind}, of which a job has one` }];
  }
  if (log.history(change.kind, item)?.isCreated) {
    return [{ path, found: 'an item of this id', expected: 'an id that is not in use' }];
  }
  if (Object.hasOwn(value, 'id'))
    return [{ path, found: 'an id in the value', expected: 'the id as item only' }];
  const parsed = kind.schema.safeParse(kind.single ? value : { ...value, id: item });
  if (!parsed.success) return issuesOf(parsed.error, value, itemPath(kind, item));
  return kind.single || typeof after !== 'string' ? [] : faultsOfPlace(log, change.kind, path, after);
}

function faultsOfPlace(log: JobLog, kind: string, path: string, after: string): RecordIssue[] {
  if (log.list(kind).has(after)) return [];
  return [
    { path, found: `a place behind ${shown(after)}`, expected: 'a place behind an item of the same list' },
  ];
}

function faultsOfSet(kind: ItemKind, change: Change & { do: 'set' }): RecordIssue[] {
  const path = itemPath(kind, change.item);
  const schema = change.field === 'id' ? undefined : fieldSchema(kind, change.field);
  if (schema === undefined) {
    return [{ path: pathText(path), found: shown(change.field), expected: `a field of ${change.kind}` }];
  }
  const parsed = schema.safeParse(change.value ?? undefined);
  return parsed.success ? [] : issuesOf(parsed.error, change.value, [...path, change.field]);
}

function faultsOf(log: JobLog, change: Change): RecordIssue[] {
  const kind = itemKind(change.kind);
  if (kind === undefined) {
    return [
      { path: 'kind', found: shown(change.kind), expected: `one of ${Object.keys(ITEM_KINDS).join(', ')}` },
    ];
  }
  if (change.do === 'create') return faultsOfCreate(log, kind, change);
  const history = log.history(change.kind, change.item);
  const path = pathText(itemPath(kind, change.item));
  if (change.do === 'restore' ? history?.isCreated !== true : history?.isPresent !== true) {
    return [{ path, found: 'nothing', expected: 'an item that is there' }];
  }
  if (change.do === 'set') return faultsOfSet(kind, change);
  if (kind.single) return [{ path, found: change.kind, expected: 'an item of a list' }];
  if (change.do !== 'move' || change.after === null) return [];
  if (change.after === change.item)
    return [{ path, found: 'a place behind itself', expected: 'another item' }];
  return faultsOfPlace(log, change.kind, path, change.after);
}

/** The field that a change sets, its value, and the stamps of what its author had seen of it. */
function partsOf(log: JobLog, change: Change): { field: string; value: unknown; seen: string[] } {
  const history = log.history(change.kind, change.item);
  const seenOf = (field: string) => (history?.field(field)?.heads ?? []).map((head) => head.entry.id);
  const keyBehind = (after: string | null | undefined) => {
    const { low, high } = log.list(change.kind).gap(after, change.item);
    return keyBetween(low, high);
  };
  switch (change.do) {
    case 'create': {
      const single = itemKind(change.kind)?.single === true;
      const value = single ? change.value : { ...change.value, [ORDER]: keyBehind(change.after) };
      return { field: CREATE, value, seen: [] };
    }
    case 'set':
      return { field: change.field, value: change.value ?? null, seen: seenOf(change.field) };
    case 'move':
      return { field: ORDER, value: keyBehind(change.after), seen: seenOf(ORDER) };
    case 'remove':
      return { field: REMOVED, value: true, seen: history?.currentStamps ?? [] };
    case 'restore':
      return { field: REMOVED, value: false, seen: seenOf(REMOVED) };
  }
}

/**
 * Writes the entry for a change, as its author sees the log now. The entry is not added: store it first, then add it.
 * For a change that breaks the schema, or of an item that is not there, it writes nothing and gives the issues.
 * @throws RangeError for an author whose device name or time is none
 */
export function writeEntry(
  log: JobLog,
  author: Author,
  change: Change,
): { entry: Entry } | { issues: readonly RecordIssue[] } {
  const faults = faultsOf(log, change);
  if (faults.length > 0) return { issues: firstIssues(faults) };
  const { field, value, seen } = partsOf(log, change);
  const entry = Entry.safeParse({
    id: nextStamp(log.newestStamp(author.nowMs + FOLLOW_LIMIT_MS), author.nowMs, author.device),
    version: RECORD_VERSION,
    who: author.who,
    deviceTime: author.deviceTime,
    kind: change.kind,
    item: change.item,
    field,
    // A copy, as it will be read back: the entry must not change when the caller's object does.
    value: JSON.parse(canonicalJson(value)),
    seen,
  });
  return entry.success ? { entry: entry.data } : { issues: issuesOf(entry.error, change, ['entry']) };
}

/** The change that settles a disagreement in favor of one of its sides. */
export function settleWith({ kind, item, field }: Disagreement, side: Side): Change {
  if (field !== REMOVED) return { do: 'set', kind, item, field, value: side.value };
  return { do: side.field === REMOVED && side.value === true ? 'remove' : 'restore', kind, item };
}
