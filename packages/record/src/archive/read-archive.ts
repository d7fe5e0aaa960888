import { strFromU8, strToU8 } from 'fflate';
import { checkSeal } from '../freeze/log-version.ts';
import { readSeal } from '../freeze/seal-file.ts';
import { ENOUGH_ISSUES, firstIssues, issuesOf, type RecordIssue, shown } from '../issues.ts';
import type { Entry } from '../log/entry.ts';
import { JobLog } from '../log/job-log.ts';
import { readEntry } from '../log/read-entries.ts';
import type { Job } from '../schema/job.ts';
import { blobsOfJob } from './blobs-of-job.ts';
import { ARCHIVE_VERSION, BLOB_FOLDER, ENTRIES_NAME, MANIFEST_NAME, Manifest } from './manifest.ts';
import { sha256Hex } from './sha256.ts';
import { type ArchiveLimits, DEFAULT_LIMITS, unpack } from './unpack.ts';

export interface OpenedArchive {
  readonly log: JobLog;
  readonly job: Job;
  /** Pictures, sound and lists of frozen states by their hash; the bytes are views into those of the archive. */
  readonly blobs: ReadonlyMap<string, Uint8Array>;
  /** Parts of the log that the job shows with an older value or not at all. */
  readonly warnings: readonly RecordIssue[];
  /** Hashes of files that the job names and the archive does not hold. */
  readonly missingBlobs: readonly string[];
}

export type ArchiveRead =
  | { readonly ok: true; readonly archive: OpenedArchive }
  | { readonly ok: false; readonly issues: readonly RecordIssue[] };

type Files = ReadonlyMap<string, Uint8Array>;
type Faults = { readonly issues: readonly RecordIssue[] };

function fault(path: string, found: string, expected: string): Faults {
  return { issues: [{ path, found, expected }] };
}

/** The text of a file, or undefined where its bytes are not UTF-8. */
function textOf(bytes: Uint8Array): string | undefined {
  const text = strFromU8(bytes);
  // What is not UTF-8 is read as U+FFFD, which a text may also hold rightly; then its bytes are the same.
  if (!text.includes('\ufffd')) return text;
  const again = strToU8(text);
  return again.length === bytes.length && again.every((byte, i) => byte === bytes[i]) ? text : undefined;
}

function readManifest(bytes: Uint8Array | undefined): { manifest: Manifest } | Faults {
  if (bytes === undefined) return fault(MANIFEST_NAME, 'nothing', 'the list of contents');
  let raw: unknown;
  try {
    raw = JSON.parse(textOf(bytes) ?? 'no text');
  } catch (error) {
    return fault(MANIFEST_NAME, 'other text', `JSON (${(error as Error).message})`);
  }
  const version = (raw as { version?: unknown } | null)?.version;
  if (typeof version === 'number' && version > ARCHIVE_VERSION) {
    const expected = `at most ${ARCHIVE_VERSION}; this archive was written by a newer program and is left untouched`;
    return fault(`${MANIFEST_NAME}.version`, shown(version), expected);
  }
  const parsed = Manifest.safeParse(raw);
  if (!parsed.success) return { issues: firstIssues(issuesOf(parsed.error, raw, [MANIFEST_NAME])) };
  return { manifest: parsed.data };
}

/** Compares what is inside with what the manifest says, by hash. */
function tampering(manifest: Manifest, files: Files): RecordIssue[] {
  const issues: RecordIssue[] = [];
  const check = (path: string, hash: string) => {
    const bytes = files.get(path);
    const found = bytes === undefined ? 'nothing' : sha256Hex(bytes);
    if (found !== hash) issues.push({ path, found, expected: `bytes with SHA-256 ${hash}` });
  };
  check(ENTRIES_NAME, manifest.entriesSha256);
  for (const hash of manifest.blobs) check(BLOB_FOLDER + hash, hash);
  const listed = new Set(manifest.blobs.map((hash) => BLOB_FOLDER + hash));
  for (const name of files.keys()) {
    if (name.startsWith(BLOB_FOLDER) && !listed.has(name)) {
      issues.push({ path: name, found: 'a blob', expected: `nothing that ${MANIFEST_NAME} does not list` });
    }
  }
  return issues;
}

/** No entry is longer: ten thousand marks of a clip take a quarter of it [characters]. */
const MOST_LINE = 2 ** 22;

/** Reads the file of entries line by line, each line one entry. */
function readLines(text: string): { entries: Entry[] } | Faults {
  const entries: Entry[] = [];
  const issues: RecordIssue[] = [];
  let number = 0;
  for (let from = 0; from < text.length && issues.length <= ENOUGH_ISSUES; number += 1) {
    const end = text.indexOf('\n', from);
    const line = text.slice(from, end < 0 ? undefined : end);
    from = end < 0 ? text.length : end + 1;
    const path = `${ENTRIES_NAME} line ${number + 1}`;
    if (line.length > MOST_LINE) {
      issues.push({ path, found: `${line.length} characters`, expected: `at most ${MOST_LINE}` });
      continue;
    }
    try {
      const read = readEntry(JSON.parse(line), [path]);
      if (Array.isArray(read)) issues.push(...read);
      else entries.push(read);
    } catch (error) {
      issues.push({ path, found: shown(line), expected: `a JSON entry (${(error as Error).message})` });
    }
  }
  return issues.length > 0 ? { issues: firstIssues(issues) } : { entries };
}

/**
 * Holds each frozen state against the entries. Content that is not what was frozen is tampering; an entry that is not there
 * may not have come yet from another device.
 */
function holdFrozen(log: JobLog, { frozen }: Job, blobs: Files) {
  const altered: RecordIssue[] = [];
  const missing: RecordIssue[] = [];
  for (const state of frozen) {
    const file = blobs.get(state.sealSha256);
    if (file === undefined) continue;
    const read = readSeal(file, state);
    const check = read.ok ? checkSeal(read.seal, log) : { issues: read.issues, altered: 1 };
    const on = check.altered > 0 ? altered : missing;
    for (const { path, ...issue } of check.issues)
      on.push({ path: `${path}, frozen ${state.when}`, ...issue });
  }
  return { altered, missing };
}

function open(bytes: Uint8Array, limits: ArchiveLimits): { archive: OpenedArchive } | Faults {
  const unpacked = unpack(bytes, limits);
  if ('issues' in unpacked) return unpacked;
  const { files } = unpacked;
  const read = readManifest(files.get(MANIFEST_NAME));
  if ('issues' in read) return read;
  const { manifest } = read;
  const wrong = tampering(manifest, files);
  if (wrong.length > 0) return { issues: firstIssues(wrong) };

  const text = textOf(files.get(ENTRIES_NAME) as Uint8Array);
  if (text === undefined) return fault(ENTRIES_NAME, 'other bytes', 'text in UTF-8');
  const lines = readLines(text);
  if ('issues' in lines) return lines;
  const { entries } = lines;
  if (entries.length !== manifest.entryCount) {
    return fault(ENTRIES_NAME, `${entries.length} entries`, `${manifest.entryCount} entries`);
  }
  const log = new JobLog(manifest.jobId, entries);
  const { job, issues } = log.fold();
  if (job === null) return { issues };
  const blobs = new Map(manifest.blobs.map((hash) => [hash, files.get(BLOB_FOLDER + hash) as Uint8Array]));
  const held = holdFrozen(log, job, blobs);
  if (held.altered.length > 0) return { issues: firstIssues(held.altered) };
  const missingBlobs = blobsOfJob(job).filter((hash) => !blobs.has(hash));
  return { archive: { log, job, blobs, warnings: [...issues, ...held.missing], missingBlobs } };
}

/**
 * Opens an archive. Everything is checked before anything is given: the zip itself, names, sizes, hashes, each entry, the
 * folded job. Either the whole archive opens or a list of issues comes back.
 */
export function readArchive(bytes: Uint8Array, limits: ArchiveLimits = DEFAULT_LIMITS): ArchiveRead {
  const opened = open(bytes, limits);
  return 'archive' in opened ? { ok: true, archive: opened.archive } : { ok: false, issues: opened.issues };
}
