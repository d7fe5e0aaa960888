import type { Storage } from '../../storage/storage.ts';
import type { Before } from './capture.ts';

/** A picture or sound that is being taken: kept before the camera opens, since the page may not live to see it. */
export interface Pending {
  readonly is: 'photo' | 'clip' | 'audio';
  readonly item: string;
  /** When the slot was opened [ms]. */
  readonly since: number;
  readonly before: Before;
  /** Of a recording: how many pieces are on the disk, and what they are. */
  readonly pieces?: number;
  readonly mediaType?: string;
}

const key = (jobId: string) => `${jobId}/picture.pending`;

/** A camera must open within the moment that a tap allows, even on a slow disk [ms]. */
const WAIT_MS = 400;

/** Keeps the slot, or empties it. Resolves when it is on the disk, or when a camera can wait no longer. */
export async function keepPending(storage: Storage, jobId: string, pending: Pending | null): Promise<void> {
  const text = pending === null ? null : JSON.stringify(pending);
  // A full disk is no reason to take no picture.
  const kept = storage.putDraft(key(jobId), text).catch(() => undefined);
  await Promise.race([kept, new Promise((resolve) => setTimeout(resolve, WAIT_MS))]);
}

/** The slot that was open when the page ended; null where none was. */
export async function readPending(storage: Storage, jobId: string): Promise<Pending | null> {
  try {
    const text = await storage.draft(key(jobId));
    return text === undefined ? null : (JSON.parse(text) as Pending);
  } catch {
    return null;
  }
}
