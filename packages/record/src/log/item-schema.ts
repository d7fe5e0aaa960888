import type * as z from 'zod';
import { ITEM_KINDS, type ItemKind } from './item-kinds.ts';

/** The kind of item of a name, or undefined for a name that is none. */
export function itemKind(name: string): ItemKind | undefined {
  return Object.hasOwn(ITEM_KINDS, name) ? ITEM_KINDS[name] : undefined;
}

/** The schema of a field, or undefined for a name that is no field of the kind. */
export function fieldSchema({ schema }: ItemKind, field: string): z.ZodType | undefined {
  return Object.hasOwn(schema.shape, field) ? (schema.shape[field] as z.ZodType) : undefined;
}

/** Where an item stands in the job, for whoever looks for it by its id. */
export function itemPath(kind: ItemKind, item: string): readonly string[] {
  return kind.single ? kind.path : [...kind.path, item];
}
