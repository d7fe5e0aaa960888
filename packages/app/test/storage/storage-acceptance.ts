import { DEMO_JOBS, type Entry, entriesOfJob, JobSchema } from '@undercroft/record';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type JobCard, type Storage, StorageError } from '../../src/storage/storage.ts';

/** What the suite needs of an adapter. */
export interface StorageUnderTest {
  /** Opens a connection to one and the same store. */
  open(): Promise<Storage>;
  /** Makes the n-th write from now fail as a full disk does, until `healthy`. */
  failWrite(n: number): void;
  healthy(): void;
}

const AUTHOR = {
  who: 'Test Surveyor',
  device: 'testdevice',
  nowMs: 1_900_000_000_000,
  deviceTime: '2030-03-17T17:46:40+00:00',
};

function logOf(index: number): { card: JobCard; entries: Entry[] } {
  const job = JobSchema.parse(DEMO_JOBS[index].job);
  const entries = entriesOfJob(job, AUTHOR);
  const card: JobCard = {
    id: job.id,
    title: job.header.title,
    changedAt: AUTHOR.deviceTime,
    next: 'repairs',
    entryCount: entries.length,
  };
  return { card, entries };
}

const bytesOf = async (blob: Blob | undefined) =>
  blob === undefined ? undefined : [...new Uint8Array(await blob.arrayBuffer())];

async function faultOf(work: Promise<unknown>): Promise<string> {
  const error = await work.then(
    () => undefined,
    (reason: unknown) => reason,
  );
  expect(error).toBeInstanceOf(StorageError);
  return (error as StorageError).fault;
}

/** What every storage must hold. `fresh` gives an empty one. */
export function storageAcceptance(name: string, fresh: () => Promise<StorageUnderTest>): void {
  describe(`${name} keeps jobs`, () => {
    let under: StorageUnderTest;
    let storage: Storage;
    const opened: Storage[] = [];
    const open = async () => {
      const one = await under.open();
      opened.push(one);
      return one;
    };

    beforeEach(async () => {
      under = await fresh();
      storage = await open();
    });
    afterEach(() => {
      under.healthy();
      for (const one of opened.splice(0)) one.close();
    });

    it('gives back every entry, in order, through another connection', async () => {
      const { card, entries } = logOf(0);
      await storage.append(card, entries.slice(0, 3));
      await storage.append(card, entries.slice(3));
      storage.close();
      const other = await open();
      expect(await other.entries(card.id)).toEqual(entries);
      expect(await other.cards()).toEqual([card]);
      expect(await other.entries('no-such-job')).toEqual([]);
    });

    it('keeps the jobs apart', async () => {
      const [a, b] = [logOf(0), logOf(1)];
      await storage.append(a.card, a.entries);
      await storage.append(b.card, b.entries);
      expect(await storage.entries(b.card.id)).toEqual(b.entries);
      await storage.purge(a.card.id);
      expect(await storage.entries(a.card.id)).toEqual([]);
      expect(await storage.entries(b.card.id)).toEqual(b.entries);
      expect(await storage.cards()).toEqual([b.card]);
    });

    it('lets two connections write to one job without losing an entry of either', async () => {
      const { card, entries } = logOf(2);
      const other = await open();
      const half = Math.floor(entries.length / 2);
      await Promise.all([
        ...entries.slice(0, half).map((entry) => storage.append(card, [entry])),
        ...entries.slice(half).map((entry) => other.append(card, [entry])),
      ]);
      const kept = await storage.entries(card.id);
      expect(kept.map((entry) => entry.id).sort()).toEqual(entries.map((entry) => entry.id).sort());
    });

    it('keeps nothing of a batch whose write fails, at whichever write, and works on afterwards', async () => {
      const { card, entries } = logOf(0);
      await storage.append(card, entries.slice(0, 2));
      for (const n of [1, 2, 3, 5]) {
        under.failWrite(n);
        expect(await faultOf(storage.append({ ...card, title: 'Changed' }, entries.slice(2, 8)))).toBe(
          'full',
        );
        under.healthy();
        expect(await storage.entries(card.id)).toEqual(entries.slice(0, 2));
        expect(await storage.cards()).toEqual([card]);
      }
      await storage.append(card, entries.slice(2));
      expect(await storage.entries(card.id)).toEqual(entries);
    });

    it('names the fault of a blob, a draft and a fact that find no room', async () => {
      under.failWrite(1);
      expect(await faultOf(storage.putBlob('a', new Blob([new Uint8Array([9, 8, 7])])))).toBe('full');
      under.failWrite(1);
      expect(await faultOf(storage.putDraft('a/note', 'half a sen'))).toBe('full');
      under.failWrite(1);
      expect(await faultOf(storage.putFact('device', 'abcd'))).toBe('full');
      under.healthy();
      expect(await storage.draft('a/note')).toBeUndefined();
      expect(await storage.fact('device')).toBeUndefined();
    });

    it('takes a job off the list and back with all it holds, also while it is written to', async () => {
      const { card, entries } = logOf(1);
      await storage.append(card, entries.slice(0, 4));
      await storage.setRemoved(card.id, '2030-03-18T08:00:00+00:00');
      await storage.append(card, entries.slice(4));
      expect(await storage.cards()).toEqual([{ ...card, removedAt: '2030-03-18T08:00:00+00:00' }]);
      await storage.setRemoved(card.id, null);
      expect(await storage.cards()).toEqual([card]);
      expect(await storage.entries(card.id)).toEqual(entries);
      await storage.setRemoved('no-such-job', null);
      expect(await storage.cards()).toHaveLength(1);
    });

    it('names a blob by the SHA-256 of its bytes and keeps it until no job uses it', async () => {
      // FIPS 180-4 example: the hash of "abc".
      const abc = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
      expect(await storage.putBlob('first', new Blob(['abc'], { type: 'image/png' }))).toBe(abc);
      await storage.putBlob('second', new Blob(['abc']));
      await storage.shareBlobs('second', 'third');
      expect((await storage.blob(abc))?.type).toBe('image/png');
      await storage.purge('first');
      await storage.purge('second');
      expect(await bytesOf(await storage.blob(abc))).toEqual([97, 98, 99]);
      await storage.purge('third');
      expect(await storage.blob(abc)).toBeUndefined();
    });

    it('keeps drafts and drops them with their job, not with one of a longer name', async () => {
      await storage.putDraft('job1/note', 'half');
      await storage.putDraft('job10/note', 'other');
      await storage.purge('job1');
      expect(await storage.draft('job1/note')).toBeUndefined();
      expect(await storage.draft('job10/note')).toBe('other');
      await storage.putDraft('job10/note', null);
      expect(await storage.draft('job10/note')).toBeUndefined();
    });
  });
}
