import type * as z from 'zod';
import { firstIssues, issuesOf, pathText, type RecordIssue, shown } from '../issues.ts';
import { CREATE, ORDER, REMOVED } from './entry.ts';
import type { FieldHistory } from './field-history.ts';
import type { ItemHistory } from './item-history.ts';
import type { ItemKind } from './item-kinds.ts';
import { fieldSchema, itemPath } from './item-schema.ts';
import { isOrderKey } from './order-key.ts';

/** So many issues of one item say what is wrong with it. */
const ENOUGH_OF_AN_ITEM = 10;

const BOOKKEEPING = new Set([CREATE, ORDER, REMOVED]);

/** An item as the job shows it, or why it cannot be shown. */
export interface ItemValue {
  readonly value: Record<string, unknown> | null;
  /** The key that places it in its list; empty, which is before all others, where it has none that sorts. */
  readonly order: string;
  readonly issues: readonly RecordIssue[];
}

/** An item that the job does not show. */
export const ABSENT: ItemValue = { value: null, order: '', issues: [] };

/**
 * Folds one item to the value that the job shows. A field whose shown value breaks the schema falls back to its newest
 * value that does not, and the fault is reported; an item that still breaks the schema is left out and reported. Nothing
 * is taken from the log.
 */
export function itemValue(history: ItemHistory, kind: ItemKind): ItemValue {
  const raw = history.shownWithout(BOOKKEEPING);
  if (!kind.single) raw.id = history.item;
  const key = history.shown(ORDER);
  const order = isOrderKey(key) ? key : '';
  const parsed = kind.schema.safeParse(raw);
  if (parsed.success && (order === key || key === undefined)) {
    return { value: parsed.data, order, issues: [] };
  }
  const path = itemPath(kind, history.item);
  const issues = parsed.success ? [] : issuesOf(parsed.error, raw, path);
  if (order !== key && key !== undefined) {
    const expected = 'a key that sorts, like a0 or a0V';
    issues.push({ path: pathText([...path, ORDER]), found: shown(key), expected });
  }
  const value = parsed.success ? parsed.data : mended(history, kind, raw, parsed.error);
  return { value, order, issues: firstIssues(issues, ENOUGH_OF_AN_ITEM) };
}

/** Names of the fields that a schema finds fault with. */
function faultyFields(error: z.ZodError): Set<string> {
  const names = error.issues.flatMap((issue) =>
    issue.code === 'unrecognized_keys' && issue.path.length === 0 ? issue.keys : issue.path.slice(0, 1),
  );
  return new Set(names.map(String));
}

/** The item with older values where newer ones break the schema, or null when that is not enough. */
function mended(
  history: ItemHistory,
  kind: ItemKind,
  raw: Record<string, unknown>,
  error: z.ZodError,
): Record<string, unknown> | null {
  for (const name of faultyFields(error)) {
    const fits = newestThatFits(history.field(name), fieldSchema(kind, name));
    if (fits === null) delete raw[name];
    else raw[name] = fits;
  }
  const parsed = kind.schema.safeParse(raw);
  return parsed.success ? parsed.data : null;
}

function newestThatFits(field: FieldHistory | undefined, schema: z.ZodType | undefined): unknown {
  const fits = field?.values.findLast(({ value }) => schema?.safeParse(value ?? undefined).success);
  return fits?.value ?? null;
}
