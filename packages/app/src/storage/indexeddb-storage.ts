import { type Entry, sha256Hex } from '@undercroft/record';
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { type JobCard, type Storage, StorageError } from './storage.ts';

/** Version of the layout. An older app refuses to open a newer one. */
const LAYOUT = 1;

interface KeptBlob {
  readonly sha256: string;
  readonly blob: Blob;
  /** Jobs that use it. */
  readonly jobIds: readonly string[];
}

interface Layout extends DBSchema {
  cards: { key: string; value: JobCard };
  entries: { key: number; value: { jobId: string; entry: Entry }; indexes: { jobId: string } };
  blobs: { key: string; value: KeptBlob; indexes: { jobIds: string } };
  drafts: { key: string; value: string };
  facts: { key: string; value: string };
}

/** Evidence is flushed to the disk before it counts as kept. */
const STRICT = { durability: 'strict' } as const;
const RELAXED = { durability: 'relaxed' } as const;

function storageError(error: unknown): StorageError {
  if (error instanceof StorageError) return error;
  const { name, message } = error as Error;
  if (name === 'QuotaExceededError') return new StorageError('full', message, { cause: error });
  if (name === 'VersionError') return new StorageError('newer', message, { cause: error });
  return new StorageError('failed', message, { cause: error });
}

async function kept<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    throw storageError(error);
  }
}

async function sha256Of(blob: Blob): Promise<string> {
  const bytes = new Uint8Array(await blob.arrayBuffer());
  // Only pages from a trustworthy address have the browser's own hash.
  if (globalThis.crypto?.subtle === undefined) return sha256Hex(bytes);
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** All drafts whose key starts with the job's id and a slash. */
const draftsOf = (jobId: string) => IDBKeyRange.bound(`${jobId}/`, `${jobId}0`, false, true);

class IndexedDbStorage implements Storage {
  readonly #db: IDBPDatabase<Layout>;

  constructor(db: IDBPDatabase<Layout>) {
    this.#db = db;
  }

  cards(): Promise<JobCard[]> {
    return kept(() => this.#db.getAll('cards'));
  }

  entries(jobId: string): Promise<Entry[]> {
    return kept(async () =>
      (await this.#db.getAllFromIndex('entries', 'jobId', jobId)).map((row) => row.entry),
    );
  }

  append(card: JobCard, entries: readonly Entry[]): Promise<void> {
    return kept(async () => {
      const tx = this.#db.transaction(['cards', 'entries'], 'readwrite', STRICT);
      const writing = (async () => {
        const { removedAt: _, ...shown } = card;
        const removedAt = (await tx.objectStore('cards').get(card.id))?.removedAt;
        await tx.objectStore('cards').put(removedAt === undefined ? shown : { ...shown, removedAt });
        // Not awaited one by one: where one fails, the transaction fails, and its reason comes with `done`.
        for (const entry of entries) {
          tx.objectStore('entries')
            .add({ jobId: card.id, entry })
            .catch(() => undefined);
        }
      })();
      await finished(tx, writing);
    });
  }

  setRemoved(jobId: string, removedAt: string | null): Promise<void> {
    return kept(async () => {
      const tx = this.#db.transaction('cards', 'readwrite', STRICT);
      const writing = (async () => {
        const card = await tx.store.get(jobId);
        if (card === undefined) return;
        const { removedAt: _, ...shown } = card;
        await tx.store.put(removedAt === null ? shown : { ...shown, removedAt });
      })();
      await finished(tx, writing);
    });
  }

  purge(jobId: string): Promise<void> {
    return kept(async () => {
      const tx = this.#db.transaction(['cards', 'entries', 'blobs', 'drafts'], 'readwrite', STRICT);
      const writing = (async () => {
        await tx.objectStore('cards').delete(jobId);
        await tx.objectStore('drafts').delete(draftsOf(jobId));
        for (const key of await tx.objectStore('entries').index('jobId').getAllKeys(jobId)) {
          await tx.objectStore('entries').delete(key);
        }
        const blobs = tx.objectStore('blobs');
        for (const row of await blobs.index('jobIds').getAll(jobId)) {
          const jobIds = row.jobIds.filter((id) => id !== jobId);
          if (jobIds.length === 0) await blobs.delete(row.sha256);
          else await blobs.put({ ...row, jobIds });
        }
      })();
      await finished(tx, writing);
    });
  }

  putBlob(jobId: string, blob: Blob): Promise<string> {
    return kept(async () => {
      const sha256 = await sha256Of(blob);
      const tx = this.#db.transaction('blobs', 'readwrite', STRICT);
      const writing = (async () => {
        const there = await tx.store.get(sha256);
        const jobIds = [...new Set([...(there?.jobIds ?? []), jobId])];
        await tx.store.put({ sha256, blob: there?.blob ?? blob, jobIds });
      })();
      await finished(tx, writing);
      return sha256;
    });
  }

  blob(sha256: string): Promise<Blob | undefined> {
    return kept(async () => (await this.#db.get('blobs', sha256))?.blob);
  }

  shareBlobs(fromJobId: string, toJobId: string): Promise<void> {
    return kept(async () => {
      const tx = this.#db.transaction('blobs', 'readwrite', STRICT);
      const writing = (async () => {
        for (const row of await tx.store.index('jobIds').getAll(fromJobId)) {
          await tx.store.put({ ...row, jobIds: [...new Set([...row.jobIds, toJobId])] });
        }
      })();
      await finished(tx, writing);
    });
  }

  draft(key: string): Promise<string | undefined> {
    return kept(() => this.#db.get('drafts', key));
  }

  putDraft(key: string, text: string | null): Promise<void> {
    return kept(async () => {
      const tx = this.#db.transaction('drafts', 'readwrite', RELAXED);
      await finished(tx, text === null ? tx.store.delete(key) : tx.store.put(text, key));
    });
  }

  fact(name: string): Promise<string | undefined> {
    return kept(() => this.#db.get('facts', name));
  }

  putFact(name: string, value: string): Promise<void> {
    return kept(async () => {
      const tx = this.#db.transaction('facts', 'readwrite', STRICT);
      await finished(tx, tx.store.put(value, name));
    });
  }

  close(): void {
    this.#db.close();
  }
}

/** Waits until all is on the disk. What fails takes the whole transaction back, and its own reason is the one told. */
async function finished(
  tx: { readonly done: Promise<void>; abort(): void },
  writing: Promise<unknown>,
): Promise<void> {
  try {
    await writing;
  } catch (error) {
    try {
      tx.abort();
    } catch {
      // It has aborted already.
    }
    await tx.done.catch(() => undefined);
    throw error;
  }
  await tx.done;
}

/**
 * Opens the device's database and makes it on first use.
 * @param onOutdated called when a newer version of the app wants to change the layout; the connection is closed then
 * @throws StorageError `newer` where a newer version has changed the layout, `failed` where the browser keeps nothing
 */
export function openIndexedDbStorage(name: string, onOutdated: () => void = () => {}): Promise<Storage> {
  return kept(async () => {
    const db = await openDB<Layout>(name, LAYOUT, {
      upgrade(fresh) {
        fresh.createObjectStore('cards', { keyPath: 'id' });
        fresh.createObjectStore('entries', { autoIncrement: true }).createIndex('jobId', 'jobId');
        fresh
          .createObjectStore('blobs', { keyPath: 'sha256' })
          .createIndex('jobIds', 'jobIds', { multiEntry: true });
        fresh.createObjectStore('drafts');
        fresh.createObjectStore('facts');
      },
      blocking(_current, _blocked, event) {
        (event.target as IDBDatabase).close();
        onOutdated();
      },
    });
    return new IndexedDbStorage(db);
  });
}
