import { existsSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Entry, RECORD_VERSION } from '../../src/index.ts';
import { MIGRATIONS } from '../../src/migrations/list.ts';
import { migrateJob, viewInCurrentVersion } from '../../src/migrations/migrate.ts';
import { smallLog } from '../small-job.ts';

describe('the list of migrations', () => {
  it('goes from version 1 to the current one without a gap', () => {
    expect(MIGRATIONS.map((step) => step.from)).toEqual(
      Array.from({ length: RECORD_VERSION - 1 }, (_, i) => i + 1),
    );
  });

  it('has a job and an archive of every version that there was', () => {
    for (let version = 1; version <= RECORD_VERSION; version += 1) {
      for (const name of [`v${version}.job.json`, `v${version}.archive.zip`]) {
        expect(existsSync(new URL(`../fixtures/${name}`, import.meta.url)), name).toBe(true);
      }
    }
  });

  it('never throws, whatever an old file holds', () => {
    const [template] = smallLog();
    fc.assert(
      fc.property(
        fc.dictionary(fc.string(), fc.jsonValue()),
        fc.integer({ min: 1, max: RECORD_VERSION }),
        (parts, version) => {
          expect(migrateJob(parts, version).version).toBe(
            version < RECORD_VERSION ? RECORD_VERSION : parts.version,
          );
          const entry: Entry = { ...template, version, value: parts };
          expect(viewInCurrentVersion(entry)).toMatchObject({ id: entry.id, version: RECORD_VERSION });
        },
      ),
      { numRuns: 200, seed: 20310606 },
    );
  });
});
