import type { Entry, Job, JobLog, RecordIssue } from '@undercroft/record';
import { type JobCard, type Storage, StorageError, type StorageFault } from '../storage/storage.ts';
import { type Authors, randomName } from './author.ts';
import type { Channel } from './channel.ts';
import type { DemoJobs } from './demos.ts';
import { demosHere } from './demos-here.ts';

export interface JobListView {
  /** False until the list was read once. */
  readonly ready: boolean;
  /** Jobs on the list. */
  readonly cards: readonly JobCard[];
  /** Jobs taken off the list and not deleted yet. */
  readonly removed: readonly JobCard[];
  /** Why the list could not be read. */
  readonly fault?: StorageFault;
}

export type Imported =
  | {
      readonly ok: true;
      readonly id: string;
      readonly missingBlobs: number;
      /** Parts that are shown with an older value or not at all, and entries of a frozen state that are not there. */
      readonly warnings: readonly RecordIssue[];
    }
  | { readonly ok: false; readonly issues: readonly RecordIssue[] };

/** What a list of jobs is made of. */
export interface JobListParts {
  readonly storage: Storage;
  readonly channel: Channel;
  readonly authors: Authors;
  readonly demos?: DemoJobs;
}

/** Time for everything else between two pictures that are drawn. */
const BETWEEN_PICTURES_MS = 20;

/** Loads what this module needs of the record. */
const parts = () => import('./job-parts.ts');

/** The jobs of this device. */
export class JobList {
  readonly #storage: Storage;
  readonly #channel: Channel;
  readonly #authors: Authors;
  readonly #demos: DemoJobs;
  readonly #listeners = new Set<() => void>();
  #view: JobListView = { ready: false, cards: [], removed: [] };

  constructor({ storage, channel, authors, demos = demosHere }: JobListParts) {
    this.#storage = storage;
    this.#channel = channel;
    this.#authors = authors;
    this.#demos = demos;
    channel.listen(() => void this.refresh());
  }

  get view(): JobListView {
    return this.#view;
  }

  subscribe(changed: () => void): () => void {
    this.#listeners.add(changed);
    return () => this.#listeners.delete(changed);
  }

  async refresh(): Promise<void> {
    try {
      const all = await this.#storage.cards();
      this.#view = {
        ready: true,
        cards: all.filter((card) => card.removedAt === undefined),
        removed: all.filter((card) => card.removedAt !== undefined),
      };
    } catch (error) {
      this.#view = {
        ...this.#view,
        ready: true,
        fault: error instanceof StorageError ? error.fault : 'failed',
      };
    }
    for (const changed of this.#listeners) changed();
  }

  /**
   * A new job, of which nothing is known but its title. Gives its id.
   * @throws StorageError when it cannot be kept
   */
  async create(title: string): Promise<string> {
    const { entriesOfJob, JobLog, JobSchema, RECORD_VERSION } = await parts();
    const id = randomName(16);
    const header = { title: title.trim().slice(0, 200) };
    const read = JobSchema.safeParse({
      format: 'undercroft-job',
      version: RECORD_VERSION,
      id,
      header,
      plan: {},
    });
    if (!read.success) throw new RangeError(`"${title}" is no title of a job`);
    await this.#keep(new JobLog(id), entriesOfJob(read.data, this.#authors()));
    return id;
  }

  /**
   * Copies a job as it stands, under a new title. The copy starts a log of its own. Gives its id.
   * @throws StorageError when it cannot be read or kept
   */
  async duplicate(jobId: string, title: string): Promise<string> {
    const { entriesOfJob, JobLog } = await parts();
    const old = new JobLog(jobId, await this.#storage.entries(jobId));
    const { job } = old.fold();
    if (job === null) return this.create(title);
    const copy: Job = {
      ...job,
      id: randomName(16),
      header: { ...job.header, title: title.slice(0, 200) },
      frozen: [],
    };
    const entries = entriesOfJob(copy, this.#authors());
    await this.#keep(new JobLog(copy.id), entries);
    await this.#storage.shareBlobs(jobId, copy.id);
    return copy.id;
  }

  async remove(jobId: string): Promise<void> {
    await this.#storage.setRemoved(jobId, this.#authors().deviceTime);
    await this.#changed();
  }

  async restore(jobId: string): Promise<void> {
    await this.#storage.setRemoved(jobId, null);
    await this.#changed();
  }

  /** Deletes every removed job for good. */
  async empty(): Promise<void> {
    for (const { id } of this.#view.removed) await this.#storage.purge(id);
    await this.#changed();
  }

  /**
   * Takes in an archive file. Entries of a job that is here already are merged with its own.
   * @throws StorageError when it cannot be kept
   */
  async importArchive(bytes: Uint8Array): Promise<Imported> {
    const { readArchive } = await import('./archive.ts');
    const { JobLog } = await parts();
    const read = readArchive(bytes);
    if (!read.ok) return read;
    const { log, blobs, missingBlobs, job, warnings } = read.archive;
    const mediaTypes = new Map(
      [...job.media.photos, ...job.media.clips, ...job.media.audio].map((m) => [m.sha256, m.mediaType]),
    );
    for (const [sha256, blob] of blobs) {
      const type = mediaTypes.get(sha256) ?? '';
      await this.#storage.putBlob(log.jobId, new Blob([blob as Uint8Array<ArrayBuffer>], { type }));
    }
    const here = new JobLog(log.jobId, await this.#storage.entries(log.jobId));
    const fresh = log.entries().filter((entry) => here.add(entry) !== 'known');
    await this.#keep(new JobLog(log.jobId, here.entries()), fresh);
    await this.restore(log.jobId);
    return { ok: true, id: log.jobId, missingBlobs: missingBlobs.length, warnings };
  }

  /**
   * Packs a job into an archive file.
   * @param unsaved entries that wait for the disk and belong into a rescue file
   * @throws StorageError when it cannot be read
   */
  async exportArchive(jobId: string, unsaved: readonly Entry[] = []): Promise<Uint8Array<ArrayBuffer>> {
    const { blobsOfJob, writeArchive } = await import('./archive.ts');
    const { JobLog } = await parts();
    const log = new JobLog(jobId, [...(await this.#storage.entries(jobId)), ...unsaved]);
    const { job } = log.fold();
    const blobs = new Map<string, Uint8Array>();
    for (const sha256 of job === null ? [] : blobsOfJob(job)) {
      const blob = await this.#storage.blob(sha256);
      if (blob !== undefined) blobs.set(sha256, new Uint8Array(await blob.arrayBuffer()));
    }
    return writeArchive(log, blobs) as Uint8Array<ArrayBuffer>;
  }

  /** Puts the demo jobs on the list that are not here, and brings back those that were removed. */
  async addDemos(): Promise<void> {
    const here = new Set((await this.#storage.cards()).map((card) => card.id));
    for (const { card, entries } of await this.#demos.written(this.#authors())) {
      if (here.has(card.id)) await this.#storage.setRemoved(card.id, null);
      else await this.#storage.append(card, entries);
    }
    await this.#changed();
  }

  /**
   * Draws the pictures of the demo jobs on the list and keeps them, one at a time so that nothing waits for them. Stops
   * without a word where they cannot be kept: they can be drawn again.
   */
  async drawDemoPictures(): Promise<void> {
    try {
      await this.#keepDemoPictures();
    } catch (error) {
      if (!(error instanceof StorageError)) throw error;
    }
  }

  async #keepDemoPictures(): Promise<void> {
    const here = new Set((await this.#storage.cards()).map((card) => card.id));
    for (const { jobId, sha256 } of await this.#demos.lastPictures()) {
      if (!here.has(jobId) || (await this.#storage.blob(sha256)) !== undefined) continue;
      for (;;) {
        const bytes = await this.#demos.nextPicture(jobId);
        if (bytes === null) break;
        await this.#storage.putBlob(jobId, new Blob([bytes], { type: 'image/png' }));
        await new Promise((next) => setTimeout(next, BETWEEN_PICTURES_MS));
      }
    }
  }

  /** On the very first start the demo jobs are there, so that nobody begins before an empty page. */
  async firstStart(): Promise<void> {
    if ((await this.#storage.fact('demos')) === undefined) {
      await this.addDemos();
      await this.#storage.putFact('demos', 'added');
    }
    await this.refresh();
  }

  async #keep(log: JobLog, entries: readonly Entry[]): Promise<void> {
    const { cardOf } = await parts();
    for (const entry of entries) log.add(entry);
    await this.#storage.append(cardOf(log, this.#authors().deviceTime), entries);
    if (entries.length > 0) this.#channel.tell({ about: 'entries', jobId: log.jobId, entries });
    await this.#changed();
  }

  async #changed(): Promise<void> {
    await this.refresh();
    this.#channel.tell({ about: 'list' });
  }
}
