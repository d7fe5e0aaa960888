import * as z from 'zod';
import { Id, Instant, Label, Sha256 } from './scalars.ts';

/** A state of a job that somebody froze: which entries there were, each by its hash. */
export const FrozenState = z.strictObject({
  id: Id,
  when: Instant,
  who: Label,
  entryCount: z.int().positive(),
  /** SHA-256 of all entries, see `LogVersion`: short enough to be printed. */
  entriesSha256: Sha256,
  /** SHA-256 of the list of entries, which is kept beside the pictures. */
  sealSha256: Sha256,
});
export type FrozenState = z.infer<typeof FrozenState>;
