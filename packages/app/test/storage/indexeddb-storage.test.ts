import { IDBObjectStore } from 'fake-indexeddb';
import { openDB } from 'idb';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { openIndexedDbStorage } from '../../src/storage/indexeddb-storage.ts';
import { freshIndexedDb } from './fresh-indexeddb.ts';
import { storageAcceptance } from './storage-acceptance.ts';

beforeEach(freshIndexedDb);
afterEach(() => {
  vi.restoreAllMocks();
});

/** Makes the n-th put or add from now fail as the browser does when there is no room. */
function failWrite(n: number): void {
  vi.restoreAllMocks();
  let left = n;
  for (const method of ['put', 'add'] as const) {
    const real = IDBObjectStore.prototype[method];
    vi.spyOn(IDBObjectStore.prototype, method).mockImplementation(function (this: IDBObjectStore, ...args) {
      left -= 1;
      if (left === 0) throw new DOMException('no room', 'QuotaExceededError');
      return real.apply(this, args as Parameters<typeof real>);
    });
  }
}

let stores = 0;
storageAcceptance('IndexedDB', async () => {
  stores += 1;
  const name = `store-${stores}`;
  return { open: () => openIndexedDbStorage(name), failWrite, healthy: () => vi.restoreAllMocks() };
});

it('refuses a store of a newer layout and leaves it as it was', async () => {
  const newer = await openDB('from-the-future', 99);
  newer.close();
  await expect(openIndexedDbStorage('from-the-future')).rejects.toMatchObject({ fault: 'newer' });
  const again = await openDB('from-the-future');
  expect(again.version).toBe(99);
  again.close();
});

it('closes and tells when a newer app wants to change the layout', async () => {
  const outdated = vi.fn();
  await openIndexedDbStorage('shared', outdated);
  const newer = await openDB('shared', 2);
  expect(outdated).toHaveBeenCalledOnce();
  newer.close();
});
