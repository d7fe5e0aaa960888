import { firstIssues, type RecordIssue, shown } from '../issues.ts';
import { inflate } from './inflate.ts';
import { BLOB_FOLDER, ENTRIES_NAME, MANIFEST_NAME } from './manifest.ts';
import { ZipFault, type ZipFile, zipDirectory } from './zip-directory.ts';

/** How much an archive may hold before it is taken for damage or an attack. */
export interface ArchiveLimits {
  /** All files together [bytes]. */
  readonly totalBytes: number;
  /** The entries, unpacked [bytes]. */
  readonly textBytes: number;
  readonly files: number;
}

export const DEFAULT_LIMITS: ArchiveLimits = { totalBytes: 2 ** 31, textBytes: 2 ** 27, files: 60_000 };

const BLOB_NAME = new RegExp(`^${BLOB_FOLDER}[0-9a-f]{64}$`);

/** The list of contents of the most files that there may be fits twice [bytes]. */
const MANIFEST_BYTES = 2 ** 23;

/** What names and sizes already show to be wrong. */
function faultsOf(listed: readonly ZipFile[], limits: ArchiveLimits): RecordIssue[] {
  const issues: RecordIssue[] = [];
  const names = new Set<string>();
  let total = 0;
  const most = new Map([
    [MANIFEST_NAME, MANIFEST_BYTES],
    [ENTRIES_NAME, limits.textBytes],
  ]);
  for (const { name, size, deflated } of listed) {
    const mostBytes = most.get(name);
    const path = mostBytes !== undefined || BLOB_NAME.test(name) ? name : shown(name);
    if (path !== name) {
      const expected = `only ${MANIFEST_NAME}, ${ENTRIES_NAME} and ${BLOB_FOLDER}<hash>`;
      issues.push({ path: 'archive', found: `a file named ${shown(name)}`, expected });
    }
    if (names.has(name)) issues.push({ path, found: 'the name twice', expected: 'each name once' });
    if (mostBytes !== undefined && size > mostBytes) {
      issues.push({ path, found: `${size} bytes`, expected: `at most ${mostBytes}` });
    }
    if (mostBytes === undefined && deflated) {
      issues.push({ path, found: 'compressed bytes', expected: 'a blob stored as it is' });
    }
    names.add(name);
    total += size;
  }
  if (total > limits.totalBytes) {
    const expected = `at most ${limits.totalBytes}`;
    issues.push({ path: 'archive', found: `${total} bytes unpacked`, expected });
  }
  return issues;
}

/**
 * Unpacks what an archive of ours can hold, within the limits. Names and sizes are judged before anything is unpacked.
 * Blobs are stored and not copied, so that no archive takes more memory than its own size and its two texts.
 */
export function unpack(
  bytes: Uint8Array,
  limits: ArchiveLimits,
): { files: Map<string, Uint8Array> } | { issues: readonly RecordIssue[] } {
  let listed: ZipFile[];
  try {
    listed = zipDirectory(bytes, limits.files);
  } catch (error) {
    if (!(error instanceof ZipFault)) throw error;
    return { issues: [{ path: 'archive', found: error.message, expected: error.expected }] };
  }
  const issues = faultsOf(listed, limits);
  if (issues.length > 0) return { issues: firstIssues(issues) };
  const files = new Map<string, Uint8Array>();
  for (const { name, deflated, packed, size } of listed) {
    const unpacked = deflated ? inflate(packed, size) : packed;
    if (unpacked === null) {
      return { issues: [{ path: name, found: 'damaged bytes', expected: `bytes that unpack to ${size}` }] };
    }
    files.set(name, unpacked);
  }
  return { files };
}
