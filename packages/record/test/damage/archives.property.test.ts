import fc from 'fast-check';
import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { canonicalJson, JobLog, readArchive, readJob, sha256Hex, writeArchive } from '../../src/index.ts';
import { joined, type Part, zipOf } from '../archive/zip-parts.ts';
import { DEMO_LOGS, RUNS } from './demo-parts.ts';
import { from, type Picks, spoiledRow, spoiledText } from './spoil.ts';

const SEED = 20310608;
const LIMITS = { totalBytes: 2 ** 22, textBytes: 2 ** 21, files: 20 };
const pick = fc.nat(2 ** 30);
const BLOB = strToU8('a picture of nothing');

/** What comes of damage: an archive that is whole, or issues with every part named. */
function judge(bytes: Uint8Array): boolean {
  const read = readArchive(bytes, LIMITS);
  if (!read.ok) {
    if (read.issues.length === 0) throw new Error('refused without an issue');
    for (const { path, found, expected } of read.issues) {
      if (path === '' || found === '' || expected === '') throw new Error(JSON.stringify(read.issues));
    }
    return false;
  }
  const { job, log, blobs, warnings, missingBlobs } = read.archive;
  if (!readJob(job).ok) throw new Error('a job that is none');
  if (log.size === 0 || warnings.some(({ path }) => path === '')) throw new Error('half an archive');
  for (const [hash, blob] of blobs) if (sha256Hex(blob) !== hash) throw new Error('a blob of other bytes');
  if (missingBlobs.some((hash) => blobs.has(hash))) throw new Error('a blob that is missing and is not');
  return true;
}

function manifestOf(lines: Uint8Array, count: number): Record<string, unknown> {
  return {
    format: 'undercroft-archive',
    version: 1,
    jobId: 'demo',
    entriesSha256: sha256Hex(lines),
    entryCount: count,
    blobs: [sha256Hex(BLOB)],
  };
}

const LINES = DEMO_LOGS.map((entries) => entries.map(canonicalJson));

/** Whole archives, as bytes and as what they are laid of. */
const ARCHIVES = DEMO_LOGS.map((entries, index) => {
  const lines = strToU8(LINES[index].map((line) => `${line}\n`).join(''));
  const parts: Part[] = [
    { name: 'undercroft.json', packed: strToU8(JSON.stringify(manifestOf(lines, entries.length))) },
    { name: 'entries.jsonl', packed: lines },
    { name: `blobs/${sha256Hex(BLOB)}`, packed: BLOB },
  ];
  return { bytes: writeArchive(new JobLog('demo', entries), new Map([[sha256Hex(BLOB), BLOB]])), parts };
});

/** An archive whose entries are damaged, with hashes that are right for it. */
function withSpoiledEntries([which, damages, ofManifest, ...picks]: Picks): Uint8Array {
  let lines = from(LINES, which).slice();
  for (let i = 0; i <= damages % 4; i += 1) {
    const at = (picks[0] + i * 31) % lines.length;
    lines[at] = spoiledText(from(DEMO_LOGS, which)[at], picks.slice(i));
  }
  if (damages % 5 === 0)
    lines = spoiledRow<string[]>(lines, [lines[0]], picks.slice(0, 3), (parts) => parts.flat());
  const text = strToU8(lines.map((line) => `${line}\n`).join(''));
  const manifest = manifestOf(text, lines.length);
  const listed = ofManifest % 6 === 0 ? spoiledText(manifest, picks) : JSON.stringify(manifest);
  return zipOf([
    { name: 'undercroft.json', packed: strToU8(listed) },
    { name: 'entries.jsonl', packed: text },
    { name: `blobs/${sha256Hex(BLOB)}`, packed: BLOB },
  ]);
}

const NAMES = [
  '../x',
  '/x',
  'blobs\\x',
  'C:x',
  '',
  'undercroft.json',
  'entries.jsonl',
  'blobs/x',
  '__proto__',
  'é',
  'a\u0000b',
];
const SIZES = [0, 1, 10, 2 ** 16, 2 ** 21, 2 ** 31, 2 ** 32 - 1];

/** An archive whose zip says about one file, or about itself, what is not so. */
function withSpoiledZip([which, what, size, other, ...picks]: Picks): Uint8Array {
  const { bytes, parts: whole } = from(ARCHIVES, which);
  const noise = Uint8Array.from(picks);
  if (what % 2 === 0) return spoiledRow<Uint8Array>(bytes, noise, [size, other, what], joined);
  const parts = whole.slice();
  const at = other % parts.length;
  const lies: Partial<Part>[] = [
    { name: from(NAMES, size) },
    { localName: from(NAMES, size) },
    { method: from([1, 8, 9, 99], size) },
    { localMethod: 8 },
    { flags: from([1, 8, 0x40, 0x800, 0x2000], size) },
    { size: from(SIZES, size) },
    { packedSize: from(SIZES, size) },
    { size: from(SIZES, size), packedSize: from(SIZES, size) },
    { size: from(SIZES, size), method: 8 },
    { offset: from(SIZES, size) },
    { packed: spoiledRow<Uint8Array>(parts[at].packed, noise, picks, joined) },
    {},
  ];
  parts[at] = { ...parts[at], ...from(lies, what >> 1) };
  const endings = [
    {},
    {},
    { count: from([0, 1, 2, 4, 0xfffe, 0xffff], size) },
    { directorySize: from(SIZES, size) },
    { directoryStart: from(SIZES, size) },
    { disk: 1 },
    { comment: 'PK\u0005\u0006'.repeat(9) },
  ];
  return zipOf(what % 5 === 0 ? [...parts, parts[at]] : parts, from(endings, other));
}

describe('a damaged archive', () => {
  it('is whole when nothing is damaged', () => {
    for (const { bytes } of ARCHIVES) expect(judge(bytes)).toBe(true);
  });

  it.each([
    ['entries', RUNS.entries, withSpoiledEntries],
    ['zip', RUNS.zip, withSpoiledZip],
  ] as const)('is refused by name or opens whole: damaged %s, %i runs', (_, numRuns, spoil) => {
    const met = { refused: 0, taken: 0 };
    fc.assert(
      fc.property(fc.array(pick, { minLength: 10, maxLength: 13 }), (picks) => {
        if (judge(spoil(picks))) met.taken += 1;
        else met.refused += 1;
      }),
      { numRuns, seed: SEED + numRuns },
    );
    expect(met.refused).toBeGreaterThan(numRuns / 3);
    expect(met.taken).toBeGreaterThan(20);
    expect(Object.keys(Object.prototype)).toEqual([]);
  });
});
