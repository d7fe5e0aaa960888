import { type Entry, REMOVED } from './entry.ts';
import type { FieldValue } from './field-history.ts';
import type { ItemHistory } from './item-history.ts';
import type { ItemKind } from './item-kinds.ts';
import { fieldSchema } from './item-schema.ts';

/** One side of a disagreement: who gave which value to which field, in which entry. */
export interface Side {
  readonly entryId: string;
  readonly who: string;
  readonly deviceTime: string;
  /** The field of the entry; `*` for the creation of the item, `removed` for its removal. */
  readonly field: string;
  readonly value: unknown;
}

/**
 * Something that two people decided without having seen each other. `field`: different values of one field; the last of
 * `sides` is shown. `removal`: one removed the item, the other edited it; the item stays until a person settles it.
 */
export interface Disagreement {
  readonly about: 'field' | 'removal';
  readonly kind: string;
  readonly item: string;
  readonly field: string;
  readonly sides: readonly Side[];
}

function side(entry: Entry, field: string, value: unknown): Side {
  return { entryId: entry.id, who: entry.who, deviceTime: entry.deviceTime, field, value };
}

/**
 * Everything about one item that waits for a person: first the fields, sorted by name, then its removal. Differing list
 * positions are not worth asking about.
 */
export function disagreementsOf(history: ItemHistory, kind: ItemKind): Disagreement[] {
  const { kind: name, item, disputed } = history;
  const found: Disagreement[] = [];
  for (const field of disputed) {
    if (field !== REMOVED && fieldSchema(kind, field) === undefined) continue;
    const heads = history.field(field)?.heads as readonly FieldValue[];
    const sides = heads.map(({ entry, value }) => side(entry, field, value));
    found.push({ about: 'field', kind: name, item, field, sides });
  }
  const unseen = history.editsUnseenByRemovals;
  if (unseen.length > 0 && !disputed.includes(REMOVED)) {
    const sides = [...history.removals, ...unseen].map((entry) => side(entry, entry.field, entry.value));
    found.push({ about: 'removal', kind: name, item, field: REMOVED, sides });
  }
  return found;
}
