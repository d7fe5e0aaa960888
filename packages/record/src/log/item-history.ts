import { canonicalJson } from '../canonical.ts';
import { CREATE, type Entry, ORDER, REMOVED } from './entry.ts';

/** A value that an entry gave to one field. A creating entry gives one to every field it names. */
export interface FieldValue {
  readonly entry: Entry;
  readonly value: unknown;
}

/** All values that one field has had, and those that no other has replaced. */
export interface FieldHistory {
  /** In the order of their stamps. */
  readonly values: FieldValue[];
  /** Entries that a later author had seen and replaced. */
  replaced: Set<string> | null;
}

/** What is known of one item: the history of each of its fields. */
export interface ItemHistory {
  readonly kind: string;
  readonly item: string;
  readonly fields: Map<string, FieldHistory>;
}

export function newItemHistory(kind: string, item: string): ItemHistory {
  return { kind, item, fields: new Map() };
}

function record(history: ItemHistory, field: string, entry: Entry, value: unknown): void {
  let known = history.fields.get(field);
  if (known === undefined) {
    known = { values: [], replaced: null };
    history.fields.set(field, known);
  }
  let at = known.values.length;
  while (at > 0 && known.values[at - 1].entry.id > entry.id) at -= 1;
  known.values.splice(at, 0, { entry, value });
  if (entry.seen.length === 0) return;
  known.replaced ??= new Set();
  for (const seen of entry.seen) known.replaced.add(seen);
}

/** Adds an entry to its item. The order in which entries are added makes no difference. */
export function addToHistory(history: ItemHistory, entry: Entry): void {
  const { value } = entry;
  if (entry.field === CREATE && value !== null && typeof value === 'object' && !Array.isArray(value)) {
    record(history, CREATE, entry, true);
    for (const [field, part] of Object.entries(value)) record(history, field, entry, part);
  } else {
    record(history, entry.field, entry, value);
  }
}

/** The values that no other entry has replaced, in the order of their stamps; the last one is shown. */
export function heads(field: FieldHistory | undefined): readonly FieldValue[] {
  if (field === undefined) return [];
  const { values, replaced } = field;
  return replaced === null ? values : values.filter((v) => !replaced.has(v.entry.id));
}

/** The value that is shown: the latest head. */
export function winner(field: FieldHistory | undefined): FieldValue | undefined {
  if (field === undefined) return undefined;
  for (let i = field.values.length - 1; i >= 0; i -= 1) {
    if (!field.replaced?.has(field.values[i].entry.id)) return field.values[i];
  }
  return undefined;
}

/** True when two heads say different things. */
export function headsDiffer(field: FieldHistory): boolean {
  if (field.values.length < 2) return false;
  const open = heads(field);
  if (open.length < 2) return false;
  const first = canonicalJson(open[0].value);
  return open.some((v) => canonicalJson(v.value) !== first);
}

/** Edits of an item that the authors of its removal had not seen. Moving an item in its list is not an edit. */
export function editsUnseenByRemoval(history: ItemHistory): FieldValue[] {
  const removals = heads(history.fields.get(REMOVED)).filter((v) => v.value === true);
  if (removals.length === 0) return [];
  const seen = new Set(removals.flatMap((v) => v.entry.seen));
  const unseen: FieldValue[] = [];
  for (const [name, field] of history.fields) {
    if (name === REMOVED || name === ORDER || name === CREATE) continue;
    for (const head of heads(field)) {
      if (!seen.has(head.entry.id) && !unseen.some((u) => u.entry.id === head.entry.id)) unseen.push(head);
    }
  }
  return unseen;
}

/** True when the item was created, and not removed by someone who had seen all of it. */
export function isPresent(history: ItemHistory): boolean {
  if (heads(history.fields.get(CREATE)).length === 0) return false;
  const removals = heads(history.fields.get(REMOVED));
  if (removals.length === 0 || removals.some((v) => v.value !== true)) return true;
  return editsUnseenByRemoval(history).length > 0;
}

/** Ids of everything of the item that is current: what a removal must name as seen. */
export function currentEntries(history: ItemHistory): string[] {
  const ids = new Set<string>();
  for (const field of history.fields.values()) for (const head of heads(field)) ids.add(head.entry.id);
  return [...ids].sort();
}
