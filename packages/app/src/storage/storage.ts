import type { Entry } from '@undercroft/record';

/** What a job waits for, in the order in which a job goes on. */
export const NEXT_STEPS = [
  'plan',
  'readings',
  'findings',
  'repairs',
  'prices',
  'build',
  'proof',
  'watch',
] as const;
export type NextStep = (typeof NEXT_STEPS)[number];

/** One line of the list of jobs: what it shows without opening the log. */
export interface JobCard {
  readonly id: string;
  readonly title: string;
  readonly client?: string;
  readonly address?: string;
  /** ISO 8601 with offset. */
  readonly changedAt: string;
  readonly next: NextStep;
  readonly entryCount: number;
  /** True for an invented job that came with the app. */
  readonly demo?: boolean;
  /** When the job was taken off the list. Its data stays until the list of removed jobs is emptied. */
  readonly removedAt?: string;
}

/** Why something could not be kept. */
export type StorageFault =
  /** The device or the browser's share of it is full. */
  | 'full'
  /** Another tab with an older version of the app holds the data. */
  | 'blocked'
  /** A newer version of the app has changed the layout of the data. */
  | 'newer'
  /** The browser keeps nothing here, e.g. in a private window, or the disk failed. */
  | 'failed';

export class StorageError extends Error {
  readonly fault: StorageFault;

  constructor(fault: StorageFault, message: string, options?: ErrorOptions) {
    super(message, options);
    this.name = 'StorageError';
    this.fault = fault;
  }
}

/**
 * Where a device keeps its jobs. Whatever resolves is on the disk of this device, except drafts, which a power cut may
 * lose. Nothing is kept in part: a call that rejects, always with a `StorageError`, has changed nothing.
 */
export interface Storage {
  /** Every job, removed ones included, in no particular order. */
  cards(): Promise<JobCard[]>;
  /** All entries of a job in the order in which they were kept; none for a job that is not here. */
  entries(jobId: string): Promise<Entry[]>;
  /** Keeps entries and the job's new card together. Whether the job is removed stays as it was. */
  append(card: JobCard, entries: readonly Entry[]): Promise<void>;
  /** Takes a job off the list (a time) or back onto it (null). A job that is not here is left alone. */
  setRemoved(jobId: string, removedAt: string | null): Promise<void>;
  /** Deletes a job for good, with its drafts and the blobs that no other job uses. */
  purge(jobId: string): Promise<void>;
  /** Keeps a blob for a job and gives the SHA-256 that names it, lower-case hex. */
  putBlob(jobId: string, blob: Blob): Promise<string>;
  blob(sha256: string): Promise<Blob | undefined>;
  /** Lets a second job use the blobs of a first. */
  shareBlobs(fromJobId: string, toJobId: string): Promise<void>;
  /** Keys of a value being typed start with the id of its job and a slash. */
  draft(key: string): Promise<string | undefined>;
  putDraft(key: string, text: string | null): Promise<void>;
  /** A small fact of this device, e.g. its name in time stamps. */
  fact(name: string): Promise<string | undefined>;
  putFact(name: string, value: string): Promise<void>;
  close(): void;
}
