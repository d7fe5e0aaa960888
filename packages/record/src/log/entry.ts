import * as z from 'zod';
import { Id, Instant, Label } from '../schema/scalars.ts';
import { CLOCK_STAMP } from './clock.ts';
import { isJsonValue } from './json-value.ts';

/** Field that creates an item: the value is the whole item without its id. */
export const CREATE = '*';
/** Field that removes (true) or restores (false) an item. */
export const REMOVED = 'removed';
/** Field that places an item in its list: a fractional key. */
export const ORDER = 'order';

const Stamp = z.string().regex(CLOCK_STAMP, 'a clock stamp');

/** One thing a person did: the new value of one field of one item, and what they had seen of it. Never changed. */
export const Entry = z.strictObject({
  /** Hybrid logical clock stamp; also the entry's identity. */
  id: Stamp,
  /** Record version in which the value is written. */
  version: z.int().positive(),
  who: Label,
  /** The device's own time, even where it was wrong. */
  deviceTime: Instant,
  kind: z.string().regex(/^[a-z][a-z-]{0,39}$/, 'the name of a kind of item, like interior-wall'),
  item: Id,
  field: z.string().regex(/^(\*|[a-z][A-Za-z0-9]{0,59})$/, 'the name of a field, like widthM, or *'),
  /** The new value; null takes an optional field away. */
  value: z.unknown().refine((value) => isJsonValue(value), 'a JSON value at most 32 levels deep'),
  /** Entries of this field (for a removal: of the whole item) that the author had seen and that no other had replaced. */
  seen: z.array(Stamp).max(10_000),
});
export type Entry = z.infer<typeof Entry>;
