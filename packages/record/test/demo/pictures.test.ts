import { unzlibSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { DEMO_JOBS, demoPictures, readJob, sha256Hex } from '../../src/index.ts';

const demo = DEMO_JOBS.find((d) => d.name === 'doubted-liner')!;
const read = readJob(demo.job);
if (!read.ok) throw new Error(JSON.stringify(read.issues));
const { photos } = read.job.media;
const pictures = demoPictures(demo);

/** What a PNG says of itself: its chunks by name, each with its data. */
function chunksOf(bytes: Uint8Array): Map<string, Uint8Array> {
  expect([...bytes.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const chunks = new Map<string, Uint8Array>();
  for (let at = 8; at < bytes.length; ) {
    const length = view.getUint32(at);
    const name = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    chunks.set(name, bytes.subarray(at + 8, at + 8 + length));
    at += length + 12;
  }
  return chunks;
}

/** Palette places of a picture whose rows are written as differences to the row above. */
function pixelsOf(chunks: ReadonlyMap<string, Uint8Array>): { width: number; rows: Uint8Array[] } {
  const header = chunks.get('IHDR')!;
  const view = new DataView(header.buffer, header.byteOffset, header.byteLength);
  const width = view.getUint32(0);
  const raw = unzlibSync(chunks.get('IDAT')!);
  const rows: Uint8Array[] = [];
  for (let at = 0; at < raw.length; at += width + 1) {
    expect(raw[at]).toBe(2);
    const above = rows.at(-1);
    rows.push(raw.slice(at + 1, at + 1 + width).map((value, x) => value + (above?.[x] ?? 0)));
  }
  expect(rows).toHaveLength(view.getUint32(4));
  return { width, rows };
}

describe('the pictures of the doubted liner', () => {
  test('are drawn with the bytes that the job names, each by its hash', () => {
    expect(pictures.size).toBe(photos.length);
    for (const { id, sha256, bytes } of photos) {
      const drawn = pictures.get(sha256);
      expect(drawn?.length, `${id}: drawn anew, its hash and size belong into doubted-liner-photos.ts`).toBe(
        bytes,
      );
      expect(sha256Hex(drawn!)).toBe(sha256);
    }
  });

  test('are whole PNG files of a few kilobytes', () => {
    for (const bytes of [...pictures.values()].slice(0, 5)) {
      expect(bytes.length).toBeLessThan(6000);
      const chunks = chunksOf(bytes);
      expect([...chunks.keys()]).toEqual(['IHDR', 'PLTE', 'IDAT', 'IEND']);
      const { width, rows } = pixelsOf(chunks);
      expect([width, rows.length]).toEqual([240, 160]);
      const colors = chunks.get('PLTE')!.length / 3;
      for (const row of rows) expect(Math.max(...row)).toBeLessThan(colors);
    }
  });

  test('differ from each other', () => {
    expect(new Set(photos.map((p) => p.sha256)).size).toBe(photos.length);
  });

  test('were taken one after the other on the visit, where the plan is', () => {
    const times = photos.map((p) => p.takenAt);
    expect([...times].sort()).toEqual(times);
    for (const { takenAt, place, bearingDeg } of photos) {
      expect(takenAt).toMatch(/^2026-08-12T0[89]:\d\d:00-04:00$/);
      expect(place.at!.xM).toBeGreaterThan(0);
      expect(place.at!.xM).toBeLessThan(52 * 0.3048);
      expect(place.at!.yM).toBeLessThan(28 * 0.3048);
      expect(bearingDeg).toBeDefined();
    }
  });
});

test('a demo job without photos has no pictures', () => {
  const others = DEMO_JOBS.filter((d) => d.name !== 'doubted-liner');
  for (const other of others) expect(demoPictures(other).size).toBe(0);
});
