import { DEMO_JOBS } from '@undercroft/record';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { authors, deviceTime, writerName } from '../../src/jobs/author.ts';
import { tabChannel } from '../../src/jobs/channel.ts';
import { Jobs } from '../../src/jobs/jobs.ts';
import { openIndexedDbStorage } from '../../src/storage/indexeddb-storage.ts';
import type { Storage } from '../../src/storage/storage.ts';
import { freshIndexedDb } from '../storage/fresh-indexeddb.ts';

let storage: Storage;
let jobs: Jobs;

beforeEach(async () => {
  freshIndexedDb();
  storage = await openIndexedDbStorage('jobs');
  const channel = tabChannel('list');
  jobs = new Jobs({ storage, channel, authors: authors(await writerName(storage), () => 'Surveyor') });
  return () => channel.close();
});
afterEach(() => storage.close());

it('starts with the demo jobs, once', async () => {
  await jobs.list.firstStart();
  expect(jobs.list.view.cards).toHaveLength(DEMO_JOBS.length);
  expect(jobs.list.view.cards.every((card) => card.demo)).toBe(true);
  for (const { id } of jobs.list.view.cards) await jobs.list.remove(id);
  await jobs.list.empty();
  await jobs.list.firstStart();
  expect(jobs.list.view.cards).toEqual([]);
});

it('draws the pictures of the demo jobs, so that an archive of one lacks none', {
  timeout: 30_000,
}, async () => {
  await jobs.list.addDemos();
  const { id } = jobs.list.view.cards.find((card) => card.id === 'demo-doubted-liner')!;
  await jobs.list.drawDemoPictures();
  const file = await jobs.list.exportArchive(id);
  await jobs.list.remove(id);
  await jobs.list.empty();
  expect(await jobs.list.importArchive(file)).toEqual({ ok: true, id, missingBlobs: 0, warnings: [] });
  const photos = (await jobs.open(id))?.view.job?.media.photos ?? [];
  expect(photos.length).toBe(32);
  for (const { sha256, bytes } of photos) expect((await storage.blob(sha256))?.size).toBe(bytes);
});

it('brings a removed job back whole', async () => {
  const id = await jobs.list.create('Elm Street');
  await jobs.list.remove(id);
  expect(jobs.list.view.cards).toEqual([]);
  expect(jobs.list.view.removed.map((card) => card.title)).toEqual(['Elm Street']);
  await jobs.list.restore(id);
  expect(jobs.list.view.cards.map((card) => card.id)).toEqual([id]);
  expect((await jobs.open(id))?.view.title).toBe('Elm Street');
});

it('copies a job under a new title and leaves the old one alone', async () => {
  await jobs.list.addDemos();
  const [original] = jobs.list.view.cards;
  const id = await jobs.list.duplicate(original.id, 'Second try');
  const [old, copy] = [await jobs.open(original.id), await jobs.open(id)];
  const { id: _, header, ...rest } = copy?.view.job ?? {};
  const { id: __, header: oldHeader, ...oldRest } = old?.view.job ?? {};
  expect(rest).toEqual(oldRest);
  expect(header).toEqual({ ...oldHeader, title: 'Second try' });
  expect(jobs.list.view.cards.find((card) => card.id === id)?.demo).toBeUndefined();
});

it('gives a job back from its archive file, with its photos, after it was deleted', async () => {
  await jobs.list.addDemos();
  // A demo job without pictures of its own, whose bytes are not stored with it.
  const id = 'demo-sound-closed';
  const title = jobs.list.view.cards.find((card) => card.id === id)?.title;
  const job = await jobs.open(id);
  const sha256 = await storage.putBlob(id, new Blob(['a picture'], { type: 'image/jpeg' }));
  await job?.commit({
    do: 'create',
    kind: 'photo',
    item: 'shot-1',
    value: {
      sha256,
      bytes: 9,
      mediaType: 'image/jpeg',
      takenAt: '2031-05-14T09:20:00-04:00',
      who: 'S',
      place: {},
    },
  });
  const entries = await storage.entries(id);
  const file = await jobs.list.exportArchive(id);
  await jobs.list.remove(id);
  await jobs.list.empty();
  expect(await storage.entries(id)).toEqual([]);
  expect(await storage.blob(sha256)).toBeUndefined();

  expect(await jobs.list.importArchive(file)).toEqual({ ok: true, id, missingBlobs: 0, warnings: [] });
  expect((await storage.entries(id)).map((entry) => entry.id).sort()).toEqual(
    entries.map((entry) => entry.id).sort(),
  );
  expect(jobs.list.view.cards.find((card) => card.id === id)?.title).toBe(title);
  expect((await storage.blob(sha256))?.type).toBe('image/jpeg');

  const known = await storage.entries(id);
  await jobs.list.importArchive(file);
  expect(await storage.entries(id)).toEqual(known);
});

it('says what is wrong with a file that is no archive, and keeps nothing of it', async () => {
  const read = await jobs.list.importArchive(new TextEncoder().encode('not an archive'));
  expect(read.ok).toBe(false);
  expect(!read.ok && read.issues[0].expected).not.toBe('');
  expect(await storage.cards()).toEqual([]);
});

it('writes the time with the offset of the device', () => {
  const now = Date.UTC(2031, 4, 14, 13, 20, 5);
  expect(Date.parse(deviceTime(now))).toBe(now);
  expect(deviceTime(now)).toMatch(/^20\d\d-\d\d-\d\dT\d\d:\d\d:05[+-]\d\d:\d\d$/);
});

it('gives a job without walls back from its archive file, and takes the walls later', async () => {
  const id = await jobs.list.create('Elm Street');
  const job = await jobs.open(id);
  const reading = {
    where: 'crawl',
    place: { words: 'by the door' },
    temperatureC: 21,
    relativeHumidity: 0.8,
    when: '2031-05-14T09:20:00-04:00',
    who: 'Surveyor',
  };
  await job?.commit({ do: 'create', kind: 'air', item: 'air1', value: reading });
  const file = await jobs.list.exportArchive(id);
  await jobs.list.remove(id);
  await jobs.list.empty();
  expect(await jobs.list.importArchive(file)).toEqual({ ok: true, id, missingBlobs: 0, warnings: [] });
  const again = await jobs.open(id);
  expect(again?.view.job?.readings.air).toMatchObject([{ id: 'air1', relativeHumidity: 0.8 }]);
  const corners = [0, 1, 2].map((i) => ({ id: `c${i}`, at: { xM: i === 1 ? 9 : 0, yM: i === 2 ? 6 : 0 } }));
  const outline = { kind: 'corners', corners };
  expect(
    await again?.commit({ do: 'set', kind: 'plan', item: 'plan', field: 'outline', value: outline }),
  ).toEqual({
    ok: true,
  });
  expect(again?.view.job?.plan.outline).toEqual(outline);
});
