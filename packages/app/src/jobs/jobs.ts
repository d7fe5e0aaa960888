import { type Storage, StorageError } from '../storage/storage.ts';
import { JobList, type JobListParts } from './job-list.ts';
import type { OpenJob } from './open-job.ts';

/** The jobs of this device: the list, and those that are open in this tab. */
export class Jobs {
  readonly list: JobList;
  readonly storage: Storage;
  readonly #parts: JobListParts;
  readonly #open = new Map<string, Promise<OpenJob | null>>();

  constructor(parts: JobListParts) {
    this.#parts = parts;
    this.storage = parts.storage;
    this.list = new JobList(parts);
  }

  /** Opens a job once per tab. Null for one that is not on this device. Rejects with a StorageError. */
  open(jobId: string): Promise<OpenJob | null> {
    const known = this.#open.get(jobId);
    if (known !== undefined) return known;
    const opening = this.#read(jobId);
    this.#open.set(jobId, opening);
    // A job that is not here now may come with an archive or from another tab.
    const forget = () => this.#open.delete(jobId);
    opening.then((job) => job === null && forget(), forget);
    return opening;
  }

  async #read(jobId: string): Promise<OpenJob | null> {
    const { storage } = this.#parts;
    const entries = await storage.entries(jobId);
    if (entries.length === 0) return null;
    const demo = (await storage.cards()).some((card) => card.id === jobId && card.demo === true);
    const [{ JobLog }, { OpenJob }] = await Promise.all([import('./job-parts.ts'), import('./open-job.ts')]);
    try {
      return new OpenJob(new JobLog(jobId, entries), demo, this.#parts);
    } catch (error) {
      if (error instanceof RangeError) throw new StorageError('newer', error.message, { cause: error });
      throw error;
    }
  }

  /** Reads what other tabs wrote while this one slept. */
  async refresh(): Promise<void> {
    await this.list.refresh();
    for (const opening of this.#open.values()) await (await opening)?.refresh();
  }
}
