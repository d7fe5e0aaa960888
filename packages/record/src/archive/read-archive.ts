import { strFromU8, type UnzipFileInfo, unzipSync } from 'fflate';
import { issuesOf, type RecordIssue, shown } from '../issues.ts';
import { JobLog, readEntries } from '../log/job-log.ts';
import type { Job } from '../schema/job.ts';
import { ARCHIVE_VERSION, BLOB_FOLDER, ENTRIES_NAME, MANIFEST_NAME, Manifest } from './manifest.ts';
import { sha256Hex } from './sha256.ts';

/** How much an archive may hold before it is taken for damage or an attack [bytes, files]. */
export interface ArchiveLimits {
  readonly totalBytes: number;
  readonly textBytes: number;
  readonly files: number;
}

const DEFAULT_LIMITS: ArchiveLimits = { totalBytes: 2 ** 31, textBytes: 2 ** 28, files: 100_000 };

export interface OpenedArchive {
  readonly log: JobLog;
  readonly job: Job;
  readonly blobs: ReadonlyMap<string, Uint8Array>;
  /** Parts of the log that the job shows with an older value or not at all. */
  readonly warnings: readonly RecordIssue[];
  /** Hashes of pictures and sound that the job names and the archive does not hold. */
  readonly missingBlobs: readonly string[];
}

export type ArchiveRead =
  | { readonly ok: true; readonly archive: OpenedArchive }
  | { readonly ok: false; readonly issues: readonly RecordIssue[] };

const refuse = (...issues: RecordIssue[]): ArchiveRead => ({ ok: false, issues });

const BLOB_NAME = /^blobs\/[0-9a-f]{64}$/;

/** Unpacks only what an archive of ours can hold, within the limits; anything else is an issue. */
function unpack(bytes: Uint8Array, limits: ArchiveLimits, issues: RecordIssue[]): Record<string, Uint8Array> {
  const seen = new Set<string>();
  let total = 0;
  const wanted = (file: UnzipFileInfo): boolean => {
    const text = file.name === MANIFEST_NAME || file.name === ENTRIES_NAME;
    if (!text && !BLOB_NAME.test(file.name)) {
      issues.push({
        path: 'archive',
        found: `a file named ${shown(file.name)}`,
        expected: `only ${MANIFEST_NAME}, ${ENTRIES_NAME} and ${BLOB_FOLDER}<hash>`,
      });
      return false;
    }
    if (seen.has(file.name))
      issues.push({ path: file.name, found: 'the name twice', expected: 'each name once' });
    seen.add(file.name);
    total += file.originalSize;
    if (text && file.originalSize > limits.textBytes) {
      issues.push({
        path: file.name,
        found: `${file.originalSize} bytes`,
        expected: `at most ${limits.textBytes}`,
      });
    }
    return issues.length === 0 && total <= limits.totalBytes && seen.size <= limits.files;
  };
  const files = unzipSync(bytes, { filter: wanted });
  if (total > limits.totalBytes) {
    issues.push({
      path: 'archive',
      found: `${total} bytes unpacked`,
      expected: `at most ${limits.totalBytes}`,
    });
  }
  if (seen.size > limits.files) {
    issues.push({ path: 'archive', found: `${seen.size} files`, expected: `at most ${limits.files}` });
  }
  return files;
}

function readManifest(bytes: Uint8Array | undefined): { manifest: Manifest } | { issues: RecordIssue[] } {
  if (bytes === undefined) {
    return { issues: [{ path: MANIFEST_NAME, found: 'nothing', expected: 'the list of contents' }] };
  }
  let raw: unknown;
  try {
    raw = JSON.parse(strFromU8(bytes));
  } catch (error) {
    return {
      issues: [{ path: MANIFEST_NAME, found: 'other text', expected: `JSON (${(error as Error).message})` }],
    };
  }
  const parsed = Manifest.safeParse(raw);
  if (!parsed.success) return { issues: issuesOf(parsed.error, raw, [MANIFEST_NAME]) };
  if (parsed.data.version > ARCHIVE_VERSION) {
    const expected = `at most ${ARCHIVE_VERSION}; this archive was written by a newer program and is left untouched`;
    return { issues: [{ path: `${MANIFEST_NAME}.version`, found: String(parsed.data.version), expected }] };
  }
  return { manifest: parsed.data };
}

/** Compares what is inside with what the manifest says, by hash. */
function tampering(manifest: Manifest, files: Record<string, Uint8Array>): RecordIssue[] {
  const issues: RecordIssue[] = [];
  const check = (path: string, hash: string) => {
    const bytes = files[path];
    const found = bytes === undefined ? 'nothing' : sha256Hex(bytes);
    if (found !== hash) issues.push({ path, found, expected: `bytes with SHA-256 ${hash}` });
  };
  check(ENTRIES_NAME, manifest.entriesSha256);
  for (const hash of manifest.blobs) check(BLOB_FOLDER + hash, hash);
  const listed = new Set(manifest.blobs.map((hash) => BLOB_FOLDER + hash));
  for (const name of Object.keys(files)) {
    if (name.startsWith(BLOB_FOLDER) && !listed.has(name)) {
      issues.push({ path: name, found: 'a blob', expected: `nothing that ${MANIFEST_NAME} does not list` });
    }
  }
  return issues;
}

function parseLines(text: string): { raw: unknown[] } | { issues: RecordIssue[] } {
  const raw: unknown[] = [];
  const issues: RecordIssue[] = [];
  text.split('\n').forEach((line, index) => {
    if (line === '') return;
    try {
      raw.push(JSON.parse(line));
    } catch (error) {
      const path = `${ENTRIES_NAME} line ${index + 1}`;
      issues.push({ path, found: shown(line), expected: `a JSON entry (${(error as Error).message})` });
    }
  });
  return issues.length > 0 ? { issues } : { raw };
}

function blobsNamedBy(job: Job): string[] {
  const { photos, clips, audio } = job.media;
  return [...new Set([...photos, ...clips, ...audio].map((m) => m.sha256))].sort();
}

/**
 * Opens an archive. Everything is checked before anything is given: the zip itself, names, sizes, hashes, each entry, the
 * folded job. Either the whole archive opens or a list of issues comes back.
 */
export function readArchive(bytes: Uint8Array, limits: ArchiveLimits = DEFAULT_LIMITS): ArchiveRead {
  const issues: RecordIssue[] = [];
  let files: Record<string, Uint8Array>;
  try {
    files = unpack(bytes, limits, issues);
  } catch (error) {
    return refuse(...issues, {
      path: 'archive',
      found: `${bytes.length} bytes that do not unpack`,
      expected: `a whole zip file (${(error as Error).message})`,
    });
  }
  if (issues.length > 0) return { ok: false, issues };

  const read = readManifest(files[MANIFEST_NAME]);
  if ('issues' in read) return { ok: false, issues: read.issues };
  const { manifest } = read;
  const wrong = tampering(manifest, files);
  if (wrong.length > 0) return { ok: false, issues: wrong };

  const lines = parseLines(strFromU8(files[ENTRIES_NAME]));
  if ('issues' in lines) return { ok: false, issues: lines.issues };
  const foreign = readEntries(lines.raw);
  if ('issues' in foreign) return { ok: false, issues: foreign.issues };
  if (foreign.entries.length !== manifest.entryCount) {
    const expected = `${manifest.entryCount} entries`;
    return refuse({ path: ENTRIES_NAME, found: `${foreign.entries.length} entries`, expected });
  }

  const log = new JobLog(manifest.jobId, foreign.entries);
  const folded = log.fold();
  if (folded.job === null) return { ok: false, issues: folded.issues };
  const blobs = new Map(manifest.blobs.map((hash) => [hash, files[BLOB_FOLDER + hash]]));
  const missingBlobs = blobsNamedBy(folded.job).filter((hash) => !blobs.has(hash));
  return { ok: true, archive: { log, job: folded.job, blobs, warnings: folded.issues, missingBlobs } };
}
