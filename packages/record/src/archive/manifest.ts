import * as z from 'zod';
import { Id, Sha256 } from '../schema/scalars.ts';

/** Version of the archive's own layout. */
export const ARCHIVE_VERSION = 1;

export const MANIFEST_NAME = 'undercroft.json';
export const ENTRIES_NAME = 'entries.jsonl';
export const BLOB_FOLDER = 'blobs/';

/** First file of an archive: what is in it, each part with its hash. */
export const Manifest = z.strictObject({
  format: z.literal('undercroft-archive'),
  version: z.int().positive(),
  jobId: Id,
  /** SHA-256 of the file of entries. */
  entriesSha256: Sha256,
  entryCount: z.int().min(0),
  /** Hashes of all blobs inside, sorted. */
  blobs: z.array(Sha256).max(60_000),
});
export type Manifest = z.infer<typeof Manifest>;
