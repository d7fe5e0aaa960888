import { strFromU8, strToU8 } from 'fflate';
import { describe, expect, test } from 'vitest';
import {
  asFrozen,
  type FrozenState,
  JobLog,
  type JobSchema,
  readArchive,
  readSeal,
  sealLog,
  sha256Hex,
  writeArchive,
  writeEntry,
  writeSeal,
} from '../../src/index.ts';
import { authorOn, START_MS, smallLog } from '../small-job.ts';
import { forged } from './forge.ts';

/** A log in which a state was frozen and a pier was widened afterwards. */
function frozenLog(): { log: JobLog; state: FrozenState; file: Uint8Array } {
  const log = new JobLog('small', smallLog());
  const seal = sealLog(log);
  const file = writeSeal(seal);
  const { entryCount, entriesSha256 } = seal;
  const value = {
    when: '2031-05-15T08:00:00-04:00',
    who: 'Ada',
    entryCount,
    entriesSha256,
    sealSha256: sha256Hex(file),
  };
  const act = (change: Parameters<typeof writeEntry>[2], atMs: number) => {
    const made = writeEntry(log, authorOn('phone', atMs), change);
    if ('issues' in made) throw new Error(JSON.stringify(made.issues));
    log.add(made.entry);
  };
  act({ do: 'create', kind: 'frozen', item: 'fz', value }, START_MS + 60_000);
  act({ do: 'set', kind: 'pier', item: 'pier2', field: 'widthM', value: 0.5 }, START_MS + 90_000);
  return { log, state: { id: 'fz', ...value }, file };
}

const widthOf = (job: ReturnType<typeof JobSchema.parse> | null | undefined) =>
  job?.plan.piers.find((p) => p.id === 'pier2')?.widthM;

describe('a frozen state', () => {
  const { log, state, file } = frozenLog();
  const blobs = new Map([[state.sealSha256, file]]);

  test('stands in the job, and gives the job again as it was', () => {
    const { job } = log.fold();
    expect(job?.frozen).toEqual([state]);
    expect(widthOf(job)).toBe(0.5);
    const then = asFrozen(log, state, file);
    expect(then).toMatchObject({ ok: true, later: 1 });
    if (!then.ok) return;
    expect(widthOf(then.log.fold().job)).toBe(0.41);
    expect(then.log.fold().job?.frozen).toEqual([]);
  });

  test('goes with an archive, list of entries and all', () => {
    const read = readArchive(writeArchive(log, blobs));
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    expect(read.archive.missingBlobs).toEqual([]);
    expect(read.archive.warnings).toEqual([]);
    expect(asFrozen(read.archive.log, state, read.archive.blobs.get(state.sealSha256)).ok).toBe(true);
  });

  test('without its list is named, and nothing is taken for it', () => {
    const read = readArchive(writeArchive(log, new Map()));
    expect(read.ok && read.archive.missingBlobs).toEqual([state.sealSha256]);
    const check = asFrozen(log, state, undefined);
    expect(check.ok ? [] : check.issues[0]).toMatchObject({ path: 'frozen fz' });
  });

  test('refuses a forged archive in which every other hash fits, and names the entry', () => {
    const bytes = forged(writeArchive(log, blobs), (lines) =>
      lines.map((l) => l.replace('"widthM":0.41', '"widthM":0.61')),
    );
    const read = readArchive(bytes);
    const target = log.entries().find((e) => e.item === 'pier2');
    expect(read.ok ? [] : read.issues).toEqual([
      {
        path: `entry ${target?.id}, frozen ${state.when}`,
        found: expect.stringContaining('other content'),
        expected: expect.stringContaining('what was sealed'),
      },
    ]);
  });

  test('warns where an entry is not there, for it may come from another device', () => {
    const gone = log.entries().find((e) => e.item === 'pier3');
    const read = readArchive(
      forged(writeArchive(log, blobs), (l) => l.filter((x) => !x.includes('"pier3"'))),
    );
    expect(read.ok && read.archive.warnings.map((w) => w.path)).toEqual([
      `entry ${gone?.id}, frozen ${state.when}`,
    ]);
  });

  test.each([
    ['another file', (t: string) => `${t} `, (s: FrozenState) => s],
    [
      'other numbers in the state',
      (t: string) => t,
      (s: FrozenState) => ({ ...s, entryCount: s.entryCount - 1 }),
    ],
    [
      'another sum in the state',
      (t: string) => t,
      (s: FrozenState) => ({ ...s, entriesSha256: '0'.repeat(64) }),
    ],
    [
      'a list that is none, rightly hashed',
      () => '{"jobId":"small"}',
      (s: FrozenState) => ({ ...s, sealSha256: sha256Hex(strToU8('{"jobId":"small"}')) }),
    ],
    [
      'text that is no JSON, rightly hashed',
      () => 'seal',
      (s: FrozenState) => ({ ...s, sealSha256: sha256Hex(strToU8('seal')) }),
    ],
  ])('is not read from %s', (_name, text, altered) => {
    const read = readSeal(strToU8(text(strFromU8(file))), altered(state));
    expect(read.ok ? [] : read.issues[0]?.path).toMatch(/^frozen fz/);
  });
});
