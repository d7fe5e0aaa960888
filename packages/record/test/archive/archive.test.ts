import { describe, expect, it } from 'vitest';
import {
  DEMO_JOBS,
  entriesOfJob,
  JobLog,
  readArchive,
  readJob,
  sha256Hex,
  writeArchive,
} from '../../src/index.ts';
import { authorOn, START_MS, smallLog } from '../small-job.ts';

const PICTURE = Uint8Array.from({ length: 5000 }, (_, i) => (i * i) % 251);
const SOUND = Uint8Array.from({ length: 300 }, (_, i) => (i * 7) % 256);

function withBlobs(...all: Uint8Array[]): Map<string, Uint8Array> {
  return new Map(all.map((bytes) => [sha256Hex(bytes), bytes]));
}

/** The small job with a photo of the picture and a note of the sound. */
function logWithMedia(): JobLog {
  const log = new JobLog('small', smallLog());
  const template = smallLog()[0];
  const captured = { takenAt: '2031-05-14T09:20:00-04:00', who: 'Ada', place: {} };
  const add = (second: number, kind: string, bytes: Uint8Array, mediaType: string) =>
    log.add({
      ...template,
      id: `zz000000${second}-0000-phone`,
      kind,
      item: `${kind}1`,
      value: { sha256: sha256Hex(bytes), bytes: bytes.length, mediaType, order: 'a0', ...captured },
    });
  add(1, 'photo', PICTURE, 'image/jpeg');
  add(2, 'audio', SOUND, 'audio/mp4');
  return log;
}

describe.each(DEMO_JOBS)('an archive of the demo job $name', ({ job: input }) => {
  const read = readJob(input);
  if (!read.ok) throw new Error('the demo job cannot be read');
  const { job } = read;
  const log = new JobLog(job.id, entriesOfJob(job, authorOn('office', START_MS)));

  it('opens to the same job, log and nothing else', () => {
    const opened = readArchive(writeArchive(log, new Map()));
    if (!opened.ok) throw new Error(JSON.stringify(opened.issues));
    const { archive } = opened;
    expect(archive.job).toEqual(job);
    expect(archive.log.jobId).toBe(job.id);
    expect(archive.log.entries()).toEqual(log.entries());
    expect({ blobs: archive.blobs.size, warnings: archive.warnings }).toEqual({ blobs: 0, warnings: [] });
  });

  it('has the same bytes twice, whatever the order in which the entries came', () => {
    const bytes = writeArchive(log, new Map());
    expect(writeArchive(log, new Map())).toEqual(bytes);
    expect(writeArchive(new JobLog(job.id, log.entries().reverse()), new Map())).toEqual(bytes);
    const opened = readArchive(bytes);
    if (opened.ok) expect(writeArchive(opened.archive.log, opened.archive.blobs)).toEqual(bytes);
    expect(opened.ok).toBe(true);
  });
});

describe('the blobs of an archive', () => {
  it('come back as they went in', () => {
    const opened = readArchive(writeArchive(logWithMedia(), withBlobs(PICTURE, SOUND)));
    if (!opened.ok) throw new Error(JSON.stringify(opened.issues));
    expect(opened.archive.blobs).toEqual(withBlobs(PICTURE, SOUND));
    expect(opened.archive.missingBlobs).toEqual([]);
  });

  it('are listed where the job names them and the archive has not got them', () => {
    const opened = readArchive(writeArchive(logWithMedia(), withBlobs(SOUND)));
    if (!opened.ok) throw new Error(JSON.stringify(opened.issues));
    expect(opened.archive.missingBlobs).toEqual([sha256Hex(PICTURE)]);
  });

  it('do not depend on the order in which they are given', () => {
    const log = logWithMedia();
    expect(writeArchive(log, withBlobs(SOUND, PICTURE))).toEqual(
      writeArchive(log, withBlobs(PICTURE, SOUND)),
    );
  });

  it('are refused under another name than their hash', () => {
    const name = sha256Hex(SOUND);
    expect(() => writeArchive(logWithMedia(), new Map([[name, PICTURE]]))).toThrow(
      `blob ${name} holds other bytes than its name says`,
    );
  });

  it('keep a clash of two entries', () => {
    const log = logWithMedia();
    const [first] = log.entries();
    log.add({ ...first, who: 'Somebody else' });
    const opened = readArchive(writeArchive(log, new Map()));
    if (!opened.ok) throw new Error(JSON.stringify(opened.issues));
    expect(opened.archive.log.clashes()).toEqual(log.clashes());
    expect(log.clashes()).toHaveLength(1);
    expect(opened.archive.warnings).toEqual(log.fold().issues);
    expect(opened.archive.warnings[0].path).toBe(`entry ${first.id}`);
  });
});
