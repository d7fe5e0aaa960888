import { issuesOf, type RecordIssue } from '../issues.ts';
import { CREATE, ORDER, REMOVED } from './entry.ts';
import { type ItemHistory, winner } from './item-history.ts';
import type { ItemKind } from './item-kinds.ts';

const BOOKKEEPING = new Set([CREATE, ORDER, REMOVED]);

/** An item as the job shows it, or why it cannot be shown. */
export interface ItemValue {
  readonly value: Record<string, unknown> | null;
  readonly issues: readonly RecordIssue[];
}

/**
 * Folds one item to the value that the job shows. A field whose shown value breaks the schema falls back to its newest
 * value that does not, and the fault is reported; an item that still breaks the schema is left out and reported. Nothing
 * is taken from the log.
 */
export function itemValue(history: ItemHistory, kind: ItemKind): ItemValue {
  const raw: Record<string, unknown> = kind.single ? {} : { id: history.item };
  for (const [name, field] of history.fields) {
    if (BOOKKEEPING.has(name)) continue;
    const shown = winner(field);
    if (shown !== undefined && shown.value !== null) raw[name] = shown.value;
  }
  const first = kind.schema.safeParse(raw);
  if (first.success) return { value: first.data, issues: [] };

  const prefix = [kind.path.join('.'), history.item];
  const issues = issuesOf(first.error, raw, prefix);
  for (const issue of first.error.issues) {
    const unknownKeys = issue.code === 'unrecognized_keys' && issue.path.length === 0 ? issue.keys : [];
    for (const key of unknownKeys) delete raw[key];
    const name = issue.path[0];
    if (typeof name === 'string') fallBack(history, kind, raw, name);
  }
  const second = kind.schema.safeParse(raw);
  return { value: second.success ? second.data : null, issues };
}

function fallBack(history: ItemHistory, kind: ItemKind, raw: Record<string, unknown>, name: string): void {
  delete raw[name];
  const schema = kind.schema.shape[name];
  const values = history.fields.get(name)?.values ?? [];
  for (let i = values.length - 1; i >= 0; i -= 1) {
    if (schema?.safeParse(values[i].value).success) {
      raw[name] = values[i].value;
      return;
    }
  }
}
