import { afterAll, beforeEach, describe, expect, it, vi } from 'vitest';
import * as z from 'zod';
import type { Entry, Job } from '../../src/index.ts';

/*
 * A program of version 3, as it will be some day, reads what programs of versions 1 and 2 wrote. In version 1 the width of
 * a pier was called `breadthCm` and stood in centimeters; in version 2 piers were called posts.
 */

type Parts = Record<string, unknown>;

const steps = (() => {
  const fromCm = ({ breadthCm, ...rest }: Parts): Parts =>
    typeof breadthCm === 'number' ? { ...rest, widthM: breadthCm / 100 } : rest;
  const isParts = (value: unknown): value is Parts =>
    value !== null && typeof value === 'object' && !Array.isArray(value);
  const first = {
    from: 1,
    job: (job: Parts): Parts => {
      const plan = job.plan as Parts | undefined;
      if (!isParts(plan) || !Array.isArray(plan.posts)) return job;
      return {
        ...job,
        plan: { ...plan, posts: plan.posts.map((post) => (isParts(post) ? fromCm(post) : post)) },
      };
    },
    entry: (entry: Entry): Entry => {
      if (entry.kind !== 'post') return entry;
      if (entry.field === '*' && isParts(entry.value)) return { ...entry, value: fromCm(entry.value) };
      if (entry.field !== 'breadthCm') return entry;
      const { value } = entry;
      return { ...entry, field: 'widthM', value: typeof value === 'number' ? value / 100 : value };
    },
  };
  const second = {
    from: 2,
    job: (job: Parts): Parts => {
      if (!isParts(job.plan)) return job;
      const { posts, ...plan } = job.plan;
      return { ...job, plan: { ...plan, piers: posts } };
    },
    entry: (entry: Entry): Entry => (entry.kind === 'post' ? { ...entry, kind: 'pier' } : entry),
  };
  return [first, second];
})();

// The modules are loaded once more, with other migrations, and forgotten again for the tests that come after.
vi.resetModules();
vi.doMock('../../src/migrations/list.ts', () => ({ MIGRATIONS: steps }));
vi.doMock('../../src/schema/job.ts', async (original) => {
  const job = await original<typeof import('../../src/schema/job.ts')>();
  return { ...job, RECORD_VERSION: 3, Job: job.Job.extend({ version: z.literal(3) }) };
});
const record = await import('../../src/index.ts');
const { canonicalJson, JobLog, readArchive, readEntries, readJob, writeArchive, writeEntry } = record;
const { migrateJob, viewInCurrentVersion } = await import('../../src/migrations/migrate.ts');
const { authorOn, START_MS, smallJob, smallLog } = await import('../small-job.ts');

afterAll(() => {
  vi.doUnmock('../../src/migrations/list.ts');
  vi.doUnmock('../../src/schema/job.ts');
  vi.resetModules();
});

/** The job of the tests as version 3 has it, and as versions 2 and 1 had it. */
function jobOf(version: 1 | 2 | 3): Parts {
  const job: Parts & Pick<Job, 'plan'> = { ...smallJob(), version } as never;
  if (version === 3) return job;
  const { piers, ...plan } = job.plan;
  const asPost = ({ widthM, ...rest }: (typeof piers)[number]) =>
    version === 2 ? { ...rest, widthM } : { ...rest, breadthCm: widthM * 100 };
  return { ...job, plan: { ...plan, posts: piers.map(asPost) } };
}

function entryOf(version: number, ms: number, changes: Partial<Entry>): Entry {
  const [template] = smallLog();
  const id = `${(START_MS + ms).toString(36).padStart(9, '0')}-0000-phone`;
  return { ...template, id, version, seen: [], ...changes };
}

describe('a job of an older version', () => {
  it('is raised step by step to the same job', () => {
    const current = readJob(jobOf(3));
    expect(current).toMatchObject({ ok: true, job: { version: 3 } });
    expect(readJob(jobOf(2))).toEqual(current);
    expect(readJob(jobOf(1))).toEqual(current);
  });

  it('is not written to', () => {
    const old = jobOf(1);
    const text = canonicalJson(old);
    readJob(old);
    expect(canonicalJson(old)).toBe(text);
  });

  it('that says it is newer than it is gets no step too many', () => {
    expect(readJob({ ...jobOf(1), version: 2 }).ok).toBe(false);
    expect(migrateJob(jobOf(3), 3)).toEqual(jobOf(3));
  });

  it('is judged as it is after the last step', () => {
    const old = jobOf(1) as { plan: { posts: Parts[] } };
    old.plan.posts[1].breadthCm = -41;
    old.plan.posts[2].breadthCm = 'wide';
    expect(readJob(old)).toEqual({
      ok: false,
      issues: [{ path: 'plan.piers[1].widthM', found: '-0.41', expected: 'a value above 0' }],
    });
  });

  it.each([4, 99])('but of version %i is refused', (version) => {
    expect(readJob({ ...jobOf(3), version })).toMatchObject({
      issues: [{ path: 'version', found: String(version) }],
    });
  });
});

describe('a log of entries of several versions', () => {
  let log: InstanceType<typeof JobLog>;
  const inOne = entryOf(1, 1, {
    kind: 'post',
    item: 'p1',
    field: '*',
    value: { at: { xM: 1, yM: 1 }, breadthCm: 30 },
  });
  const inTwo = entryOf(2, 2, { kind: 'post', item: 'p1', field: 'widthM', value: 0.4, seen: [inOne.id] });
  const inThree = entryOf(3, 3, { kind: 'pier', item: 'p1', field: 'widthM', value: 0.5, seen: [inOne.id] });
  const lateInOne = entryOf(1, 4, {
    kind: 'post',
    item: 'p1',
    field: 'breadthCm',
    value: 60,
    seen: [inTwo.id],
  });
  const begin = smallLog().filter((entry) => entry.kind !== 'pier');

  beforeEach(() => {
    log = new JobLog('small', [...begin, inOne, inTwo, inThree, lateInOne]);
  });

  it('folds to a job of the current version', () => {
    const { job, issues } = log.fold();
    expect(issues).toEqual([]);
    expect(readJob(job)).toEqual({ ok: true, job });
    expect(job?.plan.piers).toMatchObject([{ id: 'p1', widthM: 0.6 }]);
  });

  it('has one history of a field through all its names', () => {
    const values = log
      .history('pier', 'p1')
      ?.field('widthM')
      ?.values.map((v) => v.value);
    expect(values).toEqual([0.3, 0.4, 0.5, 0.6]);
    expect(log.history('post', 'p1')).toBeUndefined();
    expect(log.disagreements()).toMatchObject([
      { kind: 'pier', field: 'widthM', sides: [{ value: 0.5 }, { value: 0.6 }] },
    ]);
  });

  it('keeps the entries as they were written, in an archive too', () => {
    expect(log.entries()).toEqual(expect.arrayContaining([inOne, inTwo, inThree, lateInOne]));
    const opened = readArchive(writeArchive(log, new Map()));
    if (!opened.ok) throw new Error(JSON.stringify(opened.issues));
    expect(opened.archive.log.entries()).toEqual(log.entries());
    expect(opened.archive.job).toEqual(log.fold().job);
  });

  it('goes on in the current version', () => {
    const made = writeEntry(log, authorOn('desk', START_MS + 9), {
      do: 'set',
      kind: 'pier',
      item: 'p1',
      field: 'widthM',
      value: 0.7,
    });
    expect(made).toMatchObject({ entry: { version: 3, seen: [inThree.id, lateInOne.id] } });
  });

  it('takes no entry of a version that is to come', () => {
    const ahead = entryOf(4, 5, { kind: 'post', item: 'p1', field: 'widthM', value: 1 });
    expect(() => log.add(ahead)).toThrow(`entry ${ahead.id} is of record version 4; this program knows 3`);
    expect(readEntries([ahead])).toMatchObject({ issues: [{ path: 'entries[0].version', found: '4' }] });
  });

  it('rebuilds in the current version what clashes', () => {
    const twin = { ...inOne, value: { at: { xM: 1, yM: 1 }, breadthCm: 20 } };
    log.fold();
    log.add(twin);
    expect(log.clashes()).toEqual([inOne]);
    expect(log.history('pier', 'p1')?.field('widthM')?.values[0].value).toBe(0.2);
  });
});

describe('the view of an entry', () => {
  it('is the entry itself in the current version, and keeps its identity in any', () => {
    const current = entryOf(3, 1, {});
    expect(viewInCurrentVersion(current)).toBe(current);
    const old = entryOf(1, 1, { kind: 'post', item: 'p1', field: 'breadthCm', value: 30 });
    expect(viewInCurrentVersion(old)).toEqual({
      ...old,
      version: 3,
      kind: 'pier',
      field: 'widthM',
      value: 0.3,
    });
  });
});
