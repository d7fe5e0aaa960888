import type { Author, Entry } from '@undercroft/record';
import type { JobCard } from '../storage/storage.ts';

/** The invented jobs that come with the app. */
export interface DemoJobs {
  /** All of them as entries, with their cards. */
  written(author: Author): Promise<readonly { readonly card: JobCard; readonly entries: readonly Entry[] }[]>;
  /** Of each job with pictures the one that is drawn last, by its hash. */
  lastPictures(): Promise<readonly { readonly jobId: string; readonly sha256: string }[]>;
  /** The pictures of a job one after the other; null after the last, from where it begins anew. */
  nextPicture(jobId: string): Promise<Uint8Array<ArrayBuffer> | null>;
}
