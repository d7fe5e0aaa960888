import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import {
  type Change,
  canonicalJson,
  checkSeal,
  type Entry,
  entriesBehind,
  entriesOfJob,
  JobLog,
  readArchive,
  sealLog,
  sha256Hex,
  writeArchive,
  writeEntry,
} from '../../src/index.ts';
import { authorOn, START_MS, smallJob, smallLog } from '../small-job.ts';

const PICTURE = Uint8Array.from({ length: 900 }, (_, i) => (i * 13) % 251);
const PHOTO = {
  id: 'ph',
  sha256: sha256Hex(PICTURE),
  bytes: PICTURE.length,
  mediaType: 'image/jpeg',
  takenAt: '2031-05-14T09:20:00-04:00',
  deviceTime: '2031-05-14T09:21:07-04:00',
  who: 'Ada',
  place: {},
};

function logWithPhoto(): JobLog {
  const job = { ...smallJob(), media: { photos: [PHOTO], clips: [], audio: [] } };
  return new JobLog('small', entriesOfJob(job, authorOn('office', START_MS - 1000)));
}

function written(log: JobLog, change: Change, atMs: number): Entry {
  const made = writeEntry(log, authorOn('phone', atMs), change);
  if ('issues' in made) throw new Error(JSON.stringify(made.issues));
  return made.entry;
}

/** An archive whose files were changed by somebody who also mended the list of contents, so that every hash fits. */
function forged(change: (files: Record<string, Uint8Array>) => void): Uint8Array {
  const files = unzipSync(writeArchive(logWithPhoto(), new Map([[sha256Hex(PICTURE), PICTURE]])));
  change(files);
  const manifest = JSON.parse(strFromU8(files['undercroft.json']));
  const lines = files['entries.jsonl'];
  const mended = {
    ...manifest,
    entriesSha256: sha256Hex(lines),
    entryCount: strFromU8(lines).split('\n').length - 1,
    blobs: Object.keys(files)
      .filter((n) => n.startsWith('blobs/'))
      .map((n) => n.slice(6)),
  };
  files['undercroft.json'] = strToU8(JSON.stringify(mended));
  return zipSync(
    Object.fromEntries(
      Object.entries(files).map(([n, b]) => [n, [b, { level: n.startsWith('blobs/') ? 0 : 6 }]]),
    ),
  );
}

const editLines = (edit: (lines: string[]) => string[]) => (files: Record<string, Uint8Array>) => {
  const lines = strFromU8(files['entries.jsonl']).trimEnd().split('\n');
  files['entries.jsonl'] = strToU8(
    edit(lines)
      .map((l) => `${l}\n`)
      .join(''),
  );
};

function opened(bytes: Uint8Array) {
  const read = readArchive(bytes);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.archive;
}

describe('a sealed log', () => {
  const log = logWithPhoto();
  const seal = sealLog(log);

  test('names each entry once, in order, and the hash that an archive has', () => {
    expect(seal.entries.map((e) => e.id)).toEqual(log.entries().map((e) => e.id));
    expect(seal.entryCount).toBe(log.entries().length);
    const files = unzipSync(writeArchive(log, new Map()));
    expect(JSON.parse(strFromU8(files['undercroft.json'])).entriesSha256).toBe(seal.entriesSha256);
    for (const { sha256 } of seal.entries) expect(sha256).toMatch(/^[0-9a-f]{64}$/);
  });

  test('is the same whatever the order in which the entries came', () => {
    expect(sealLog(new JobLog('small', log.entries().reverse()))).toEqual(seal);
  });

  test('holds as long as every entry is there, however the log went on', () => {
    expect(checkSeal(seal, log)).toEqual({ issues: [], altered: 0, later: 0 });
    const on = new JobLog('small', log.entries());
    const change = { do: 'set', kind: 'pier', item: 'pier2', field: 'widthM', value: 0.5 } as const;
    on.add(written(on, change, START_MS + 5000));
    expect(checkSeal(seal, on)).toEqual({ issues: [], altered: 0, later: 1 });
  });

  test('survives an archive', () => {
    const archive = opened(writeArchive(log, new Map([[PHOTO.sha256, PICTURE]])));
    expect(checkSeal(seal, archive.log)).toEqual({ issues: [], altered: 0, later: 0 });
  });

  test('tells another job', () => {
    const issues = checkSeal(seal, new JobLog('other', log.entries())).issues;
    expect(issues).toEqual([{ path: 'jobId', found: 'other', expected: 'small' }]);
  });

  test('that was tampered with itself is told', () => {
    const short = { ...seal, entries: seal.entries.slice(1) };
    expect(checkSeal(short, log).issues[0]).toMatchObject({ path: 'seal' });
    const twice = { ...seal, entries: [seal.entries[1], ...seal.entries.slice(1)] };
    expect(checkSeal(twice, log).issues[0]).toMatchObject({ path: 'seal' });
  });
});

describe('a forged archive, in which every hash fits again', () => {
  const log = logWithPhoto();
  const seal = sealLog(log);
  const wider = forged(editLines((lines) => lines.map((l) => l.replace('"widthM":0.41', '"widthM":0.61'))));
  const target = log.entries().find((e) => e.item === 'pier2') as Entry;

  test('opens, since nothing in it is wrong; the seal names the entry that was changed', () => {
    const { log: other } = opened(wider);
    const { issues, later } = checkSeal(seal, other);
    expect(later).toBe(0);
    expect(issues).toHaveLength(1);
    expect(issues[0].path).toBe(`entry ${target.id}`);
    expect(issues[0].found).toContain('other content');
    expect(issues[0].expected).toContain(sha256Hex(strToU8(canonicalJson(target))));
  });

  test('taken in where the log is, clashes with it: the entry is named, both are kept', () => {
    const here = new JobLog('small', log.entries());
    for (const entry of opened(wider).log.entries()) here.add(entry);
    expect(here.clashes().map((e) => e.id)).toEqual([target.id]);
    expect(here.fold().issues[0].path).toBe(`entry ${target.id}`);
    expect(here.size).toBe(log.size + 1);
  });

  test('with an entry taken out is told by the seal, by its stamp', () => {
    const without = forged(editLines((lines) => lines.filter((l) => !l.includes('"pier3"'))));
    const gone = log.entries().find((e) => e.item === 'pier3') as Entry;
    expect(checkSeal(seal, opened(without).log).issues).toEqual([
      { path: `entry ${gone.id}`, found: 'nothing', expected: expect.stringContaining('SHA-256') },
    ]);
  });

  test('with another picture under a name of its own misses the one that the job names', () => {
    const bytes = forged((files) => {
      delete files[`blobs/${PHOTO.sha256}`];
      const other = Uint8Array.from(PICTURE, (b) => b ^ 1);
      files[`blobs/${sha256Hex(other)}`] = other;
    });
    expect(opened(bytes).missingBlobs).toEqual([PHOTO.sha256]);
  });
});

describe('an archive that was changed and not mended is refused, with the name of what is wrong', () => {
  const zip = (change: (files: Record<string, Uint8Array>) => void): Uint8Array => {
    const files = unzipSync(writeArchive(logWithPhoto(), new Map([[PHOTO.sha256, PICTURE]])));
    change(files);
    return zipSync(
      Object.fromEntries(
        Object.entries(files).map(([n, b]) => [n, [b, { level: n.startsWith('blobs/') ? 0 : 6 }]]),
      ),
    );
  };
  const paths = (bytes: Uint8Array) => {
    const read = readArchive(bytes);
    return read.ok ? [] : read.issues.map((i) => i.path);
  };
  const blob = `blobs/${PHOTO.sha256}`;

  test('a changed blob, a blob that is gone, a changed entry, an entry that is gone', () => {
    expect(paths(zip((f) => (f[blob] = Uint8Array.from(f[blob], (b, i) => (i === 5 ? b ^ 1 : b)))))).toEqual([
      blob,
    ]);
    expect(paths(zip((f) => delete f[blob]))).toEqual([blob]);
    expect(paths(zip(editLines((l) => l.map((x) => x.replace('0.41', '0.61')))))).toEqual(['entries.jsonl']);
    expect(paths(zip(editLines((l) => l.slice(0, -1))))).toEqual(['entries.jsonl']);
  });

  test('a count that does not fit the entries', () => {
    const bytes = zip((files) => {
      const manifest = JSON.parse(strFromU8(files['undercroft.json']));
      files['undercroft.json'] = strToU8(
        JSON.stringify({ ...manifest, entryCount: manifest.entryCount + 1 }),
      );
    });
    expect(paths(bytes)).toEqual(['entries.jsonl']);
  });
});

describe('the entries behind an item', () => {
  test('are those whose values are shown, not those that were replaced', () => {
    const log = new JobLog('small', smallLog());
    const created = log.entries().find((e) => e.item === 'pier2') as Entry;
    expect(entriesBehind(log, { kind: 'pier', id: 'pier2' })).toEqual([created.id]);
    const set = (value: number, atMs: number) => {
      const change = { do: 'set', kind: 'pier', item: 'pier2', field: 'widthM', value } as const;
      const entry = written(log, change, atMs);
      log.add(entry);
      return entry.id;
    };
    const first = set(0.5, START_MS + 1000);
    expect(entriesBehind(log, { kind: 'pier', id: 'pier2' })).toEqual([created.id, first].sort());
    const second = set(0.6, START_MS + 2000);
    expect(entriesBehind(log, { kind: 'pier', id: 'pier2' })).toEqual([created.id, second].sort());
  });

  test('of a part that a job has once go by its kind, of what is not there are none', () => {
    const log = new JobLog('small', smallLog());
    expect(entriesBehind(log, { kind: 'header', id: 'header' })).toHaveLength(1);
    expect(entriesBehind(log, { kind: 'pier', id: 'pier9' })).toEqual([]);
    expect(entriesBehind(log, { kind: 'dragon', id: 'x' })).toEqual([]);
  });
});
