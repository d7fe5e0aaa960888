import * as fake from 'fake-indexeddb';
import { vi } from 'vitest';

/** Gives the test an IndexedDB of its own, empty. */
export function freshIndexedDb(): void {
  const { default: _, ...interfaces } = fake;
  for (const [name, value] of Object.entries(interfaces))
    if (name.startsWith('IDB')) vi.stubGlobal(name, value);
  vi.stubGlobal('indexedDB', new fake.IDBFactory());
}
