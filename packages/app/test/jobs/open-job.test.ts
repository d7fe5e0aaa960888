import { type Disagreement, JobLog, readArchive, type Side } from '@undercroft/record';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { authors, deviceTime, writerName } from '../../src/jobs/author.ts';
import { tabChannel } from '../../src/jobs/channel.ts';
import { Jobs } from '../../src/jobs/jobs.ts';
import type { OpenJob } from '../../src/jobs/open-job.ts';
import { openIndexedDbStorage } from '../../src/storage/indexeddb-storage.ts';
import { type Storage, StorageError } from '../../src/storage/storage.ts';
import { freshIndexedDb } from '../storage/fresh-indexeddb.ts';

beforeEach(freshIndexedDb);

const closing: (() => void)[] = [];
afterEach(() => {
  for (const close of closing.splice(0)) close();
});

let names = 0;
beforeEach(() => {
  names += 1;
});

/** A tab of its own on the device's store. */
async function tab(who = 'Surveyor'): Promise<{ jobs: Jobs; storage: Storage }> {
  const storage = await openIndexedDbStorage('jobs');
  const channel = tabChannel(`tabs-${names}`);
  closing.push(() => {
    storage.close();
    channel.close();
  });
  return {
    jobs: new Jobs({ storage, channel, authors: authors(await writerName(storage), () => who) }),
    storage,
  };
}

async function opened(jobs: Jobs, id: string): Promise<OpenJob> {
  const job = await jobs.open(id);
  if (job === null) throw new Error(`${id} is not here`);
  return job;
}

const fieldOf = (job: OpenJob, field: string) => job.view.log.history('header', 'header')?.shown(field);
const set = (field: string, value: unknown) =>
  ({ do: 'set', kind: 'header', item: 'header', field, value }) as const;
const wood = (item: string, shown: number) =>
  ({
    do: 'create',
    kind: 'wood',
    item,
    value: { member: 'joist', place: {}, shown, when: '2031-05-14T09:20:00-04:00', who: 'Surveyor' },
  }) as const;

describe('a job that is open', () => {
  it('holds what was committed when it is opened again, and no more than was kept', async () => {
    const { jobs } = await tab();
    const id = await jobs.list.create('Elm Street');
    const job = await opened(jobs, id);
    expect(await job.commit(set('client', 'A. Client'))).toEqual({ ok: true });
    const again = await opened((await tab()).jobs, id);
    expect(fieldOf(again, 'client')).toBe('A. Client');
    expect(again.view.title).toBe('Elm Street');
    expect(again.view.job?.plan.outline).toBeUndefined();
  });

  it('says saved only after the disk has it', async () => {
    const { jobs, storage } = await tab();
    const job = await opened(jobs, await jobs.list.create('Elm Street'));
    let release = () => {};
    const append = storage.append.bind(storage);
    vi.spyOn(storage, 'append').mockImplementation(async (...args) => {
      await new Promise<void>((resolve) => {
        release = resolve;
      });
      return append(...args);
    });
    const commit = job.commit(set('client', 'A. Client'));
    await vi.waitFor(() => expect(job.view.save.is).toBe('saving'));
    expect(fieldOf(job, 'client')).toBeUndefined();
    release();
    await commit;
    expect(job.view.save.is).toBe('saved');
    expect(fieldOf(job, 'client')).toBe('A. Client');
  });

  it('keeps a change in memory when the disk is full, writes it on retry and packs it into a rescue file', async () => {
    const { jobs, storage } = await tab();
    await jobs.list.addDemos();
    const id = jobs.list.view.cards[0].id;
    const job = await opened(jobs, id);
    const full = vi.spyOn(storage, 'append').mockRejectedValue(new StorageError('full', 'no room'));
    expect(await job.commit(set('client', 'First'))).toEqual({ ok: false, fault: 'full' });
    expect(await job.commit(set('client', 'Second'))).toEqual({ ok: false, fault: 'full' });
    expect(job.view.save).toEqual({ is: 'unsaved', fault: 'full', waiting: 2 });
    const rescued = readArchive(await jobs.list.exportArchive(id, job.entriesWithWaiting()));
    expect(rescued.ok && rescued.archive.job.header.client).toBe('Second');
    full.mockRestore();
    expect(await job.retry()).toEqual({ ok: true });
    expect(fieldOf(job, 'client')).toBe('Second');
    expect(job.view.disagreements).toEqual([]);
    expect((await storage.entries(id)).length).toBe(job.view.version);
  });

  it('refuses a batch of which one change breaks the schema, whole', async () => {
    const { jobs } = await tab();
    const job = await opened(jobs, await jobs.list.create('Elm Street'));
    const before = job.view.version;
    const result = await job.commit(set('client', 'A. Client'), set('latitudeDeg', 'north'));
    expect(result).toMatchObject({ ok: false, issues: [{ path: 'header.latitudeDeg' }] });
    expect(job.view.version).toBe(before);
    expect(await job.commit(set('address', '1 Elm Street'))).toEqual({ ok: true });
    expect(fieldOf(job, 'client')).toBeUndefined();
  });

  it('takes back and does again, by entries of its own', async () => {
    const { jobs } = await tab();
    const job = await opened(jobs, await jobs.list.create('Elm Street'));
    const list = () => job.view.log.list('wood').values.map((value) => value.id);
    await job.commit(wood('w1', 0.18), wood('w2', 0.22));
    await job.commit({ do: 'move', kind: 'wood', item: 'w2', after: null });
    await job.commit({ do: 'set', kind: 'wood', item: 'w1', field: 'shown', value: 0.19 });
    await job.commit({ do: 'remove', kind: 'wood', item: 'w1' });
    expect(list()).toEqual(['w2']);
    await job.undo();
    expect(list()).toEqual(['w2', 'w1']);
    await job.undo();
    expect(job.view.log.history('wood', 'w1')?.shown('shown')).toBe(0.18);
    await job.undo();
    expect(list()).toEqual(['w1', 'w2']);
    await job.undo();
    expect(list()).toEqual([]);
    expect(job.view.canUndo).toBe(false);
    for (let i = 0; i < 4; i += 1) await job.redo();
    expect(list()).toEqual(['w2']);
    expect(job.view.canRedo).toBe(false);
    // 4 entries of a new job, 2 + 1 + 1 + 1 changes, taken back and done again.
    expect(job.view.version).toBe(4 + 3 * 5);
  });
});

describe('two tabs', () => {
  it('show each other what they wrote', async () => {
    const [one, two] = [await tab(), await tab()];
    const id = await one.jobs.list.create('Elm Street');
    await vi.waitFor(() =>
      expect(two.jobs.list.view.cards.map((card) => card.title)).toEqual(['Elm Street']),
    );
    const [a, b] = [await opened(one.jobs, id), await opened(two.jobs, id)];
    await a.commit(set('client', 'A. Client'));
    await vi.waitFor(() => expect(fieldOf(b, 'client')).toBe('A. Client'));
    await b.commit(set('client', 'B. Client'));
    await vi.waitFor(() => expect(fieldOf(a, 'client')).toBe('B. Client'));
    expect(a.view.disagreements).toEqual([]);
  });

  it('disagree when neither had seen the other, and agree when a person settles it', async () => {
    const [one, two] = [await tab('Ana'), await tab('Ben')];
    const id = await one.jobs.list.create('Elm Street');
    const [a, b] = [await opened(one.jobs, id), await opened(two.jobs, id)];
    await Promise.all([a.commit(set('client', 'Said Ana')), b.commit(set('client', 'Said Ben'))]);
    await vi.waitFor(() => {
      expect(a.view.disagreements).toHaveLength(1);
      expect(b.view.disagreements).toEqual(a.view.disagreements);
    });
    const [dispute] = a.view.disagreements as [Disagreement];
    const anas = dispute.sides.find((side) => side.who === 'Ana') as Side;
    await a.settle(dispute, anas);
    await vi.waitFor(() => expect(b.view.disagreements).toEqual([]));
    expect(fieldOf(b, 'client')).toBe('Said Ana');
  });

  it('catches up from the disk with what it slept through', async () => {
    const [one, two] = [await tab(), await tab()];
    const id = await one.jobs.list.create('Elm Street');
    const b = await opened(two.jobs, id);
    const a = await opened(one.jobs, id);
    const { log } = a.view;
    const quiet = new JobLog(id, log.entries());
    const { writeEntry } = await import('@undercroft/record');
    const written = writeEntry(
      quiet,
      { who: 'C', device: 'third', nowMs: Date.now(), deviceTime: deviceTime(Date.now()) },
      set('client', 'Overnight'),
    );
    if (!('entry' in written)) throw new Error('not written');
    const [card] = await one.storage.cards();
    await one.storage.append(card, [written.entry]);
    expect(fieldOf(b, 'client')).toBeUndefined();
    await two.jobs.refresh();
    expect(fieldOf(b, 'client')).toBe('Overnight');
  });
});
