import { CREATE, ORDER, REMOVED } from './entry.ts';
import { editsUnseenByRemoval, heads, headsDiffer, type ItemHistory } from './item-history.ts';

/** One side of a disagreement. */
export interface Side {
  readonly entryId: string;
  readonly who: string;
  readonly deviceTime: string;
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

function disagreementIn(history: ItemHistory, about: 'field' | 'removal', field: string): Disagreement {
  const { kind, item } = history;
  const values =
    about === 'field'
      ? heads(history.fields.get(field))
      : [
          ...heads(history.fields.get(REMOVED)).filter((v) => v.value === true),
          ...editsUnseenByRemoval(history),
        ];
  const sides = values.map((v) => ({
    entryId: v.entry.id,
    who: v.entry.who,
    deviceTime: v.entry.deviceTime,
    value: v.value,
  }));
  return { about, kind, item, field, sides };
}

/** Everything about one item that waits for a person. Differing list positions are not worth asking about. */
export function disagreementsOf(history: ItemHistory): Disagreement[] {
  const open: string[] = [];
  for (const [name, field] of history.fields) {
    if (name !== CREATE && name !== ORDER && headsDiffer(field)) open.push(name);
  }
  const found = open.sort().map((name) => disagreementIn(history, 'field', name));
  if (editsUnseenByRemoval(history).length > 0) found.push(disagreementIn(history, 'removal', REMOVED));
  return found;
}
