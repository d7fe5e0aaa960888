import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readArchive, readJob, readJobText } from '../../src/index.ts';

function fixture(name: string): Buffer {
  return readFileSync(new URL(`../fixtures/${name}`, import.meta.url));
}

/** The same data, which nobody may write to. */
function frozen<T>(value: T): T {
  if (value !== null && typeof value === 'object') {
    for (const part of Object.values(value)) frozen(part);
    Object.freeze(value);
  }
  return value;
}

describe('a job of version 1', () => {
  const text = fixture('v1.job.json').toString('utf8');

  it('opens', () => {
    const read = readJobText(text);
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    const { job } = read;
    expect(job.header.title).toBe('Weir Street 212: second opinion on a two-year-old liner');
    expect(job.plan.piers).toHaveLength(14);
    expect(job.plan.piers[0]).toMatchObject({
      id: 'pa1',
      at: { xM: 2.1336, yM: 2.8346 },
      wrapHeightM: 0.2032,
    });
    expect(job.plan.vents).toHaveLength(6);
    expect(job.readings.air).toHaveLength(5);
  });

  it('is not written to by reading it', () => {
    const raw = frozen(JSON.parse(text));
    expect(readJob(raw).ok).toBe(true);
    expect(raw).toEqual(JSON.parse(text));
  });

  it('that says it is of a newer version is refused for that alone, and not written to', () => {
    const raw = frozen({ ...JSON.parse(text), version: 3, header: null, weather: ['x'] });
    const expected = 'at most 2; this job was written by a newer program and is left untouched';
    expect(readJob(raw)).toEqual({ ok: false, issues: [{ path: 'version', found: '3', expected }] });
    expect(readJob({ ...raw, version: 1e300 })).toMatchObject({ issues: [{ path: 'version', expected }] });
  });
});

describe('an archive of version 1', () => {
  it('opens with its history, its disagreements, the photo that it holds and the one that it lacks', () => {
    const read = readArchive(fixture('v1.archive.zip'));
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    const { job, log, blobs, missingBlobs, warnings } = read.archive;
    expect(job.header).toMatchObject({
      title: 'Weir Street 212: second opinion on a two-year-old liner',
      notes: 'Second look at the seams — ask for “before” photos',
    });
    expect(job.plan.piers.map((pier) => pier.id)).toEqual([
      'pa4',
      'pa1',
      'pa2',
      'pa5',
      'pa6',
      'pa7',
      'pb1',
      'pb2',
      'pb3',
      'pb4',
      'pb5',
      'pb6',
      'pb7',
    ]);
    expect(job.plan.piers[1]).toMatchObject({ id: 'pa1', widthM: 0.43 });
    expect(log.size).toBe(165);
    expect(
      log
        .history('pier', 'pa1')
        ?.field('widthM')
        ?.values.map((v) => [v.entry.who, v.value]),
    ).toEqual([
      ['Office', 0.4],
      ['Surveyor', 0.41],
      ['Estimator', 0.43],
    ]);
    expect(log.disagreements().map((d) => [d.about, d.item, d.sides.map((side) => side.value)])).toEqual([
      ['field', 'pa1', [0.41, 0.43]],
      ['removal', 'pa2', [true, 'leans north']],
    ]);
    expect([...blobs.values()].map((bytes) => bytes.length)).toEqual([640]);
    expect(missingBlobs).toEqual(['c0ffee'.padEnd(64, '0')]);
    expect(warnings).toEqual([]);
  });
});

describe('a job and an archive of version 2', () => {
  it('may stand without walls and ground', () => {
    const read = readJobText(fixture('v2.job.json').toString('utf8'));
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    expect(read.job.plan).toMatchObject({ northDeg: 0, piers: [{ id: 'pier1', at: { xM: 2, yM: 1 } }] });
    expect(read.job.plan.outline).toBeUndefined();
    expect(read.job.readings.air).toMatchObject([{ relativeHumidity: 0.83 }]);
    const opened = readArchive(fixture('v2.archive.zip'));
    if (!opened.ok) throw new Error(JSON.stringify(opened.issues));
    expect(opened.archive.job).toEqual(read.job);
    expect(opened.archive.log.size).toBe(3);
  });
});
