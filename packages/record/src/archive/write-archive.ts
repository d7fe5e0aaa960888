import { strToU8, type Zippable, zipSync } from 'fflate';
import { canonicalJson } from '../canonical.ts';
import type { JobLog } from '../log/job-log.ts';
import { ARCHIVE_VERSION, BLOB_FOLDER, ENTRIES_NAME, MANIFEST_NAME, type Manifest } from './manifest.ts';
import { sha256Hex } from './sha256.ts';
import { DEFAULT_LIMITS } from './unpack.ts';

/** Zip times start in 1980; one fixed time makes equal contents give equal bytes. */
const FIXED_TIME = new Date(1980, 0, 1);

/**
 * Packs a log and its blobs into one zip file. The same log and blobs give the same bytes.
 * @throws RangeError when a blob's bytes do not have the hash that names them, or an archive cannot hold so much
 */
export function writeArchive(log: JobLog, blobs: ReadonlyMap<string, Uint8Array>): Uint8Array {
  const { files, textBytes, totalBytes } = DEFAULT_LIMITS;
  const entries = log.entries();
  const lines = strToU8(entries.map((e) => `${canonicalJson(e)}\n`).join(''));
  const names = [...blobs.keys()].sort();
  const manifest: Manifest = {
    format: 'undercroft-archive',
    version: ARCHIVE_VERSION,
    jobId: log.jobId,
    entriesSha256: sha256Hex(lines),
    entryCount: entries.length,
    blobs: names,
  };
  const total = names.reduce((sum, name) => sum + (blobs.get(name) as Uint8Array).length, lines.length);
  if (names.length + 2 > files || lines.length > textBytes || total > totalBytes) {
    throw new RangeError(
      `${names.length} blobs and ${entries.length} entries of ${total} bytes fill more than one archive`,
    );
  }
  const contents: Zippable = {
    [MANIFEST_NAME]: [strToU8(`${JSON.stringify(manifest, null, 2)}\n`), { level: 6 }],
    [ENTRIES_NAME]: [lines, { level: 6 }],
  };
  for (const name of names) {
    const bytes = blobs.get(name) as Uint8Array;
    if (sha256Hex(bytes) !== name) throw new RangeError(`blob ${name} holds other bytes than its name says`);
    // Pictures and sound are compressed already.
    contents[BLOB_FOLDER + name] = [bytes, { level: 0 }];
  }
  return zipSync(contents, { mtime: FIXED_TIME });
}
