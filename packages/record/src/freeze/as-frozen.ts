import type { RecordIssue } from '../issues.ts';
import { JobLog } from '../log/job-log.ts';
import type { FrozenState } from '../schema/frozen.ts';
import { checkSeal, sealLog } from './log-version.ts';
import { readSeal } from './seal-file.ts';

/** A frozen state held against the log as it is now. */
export type FrozenCheck =
  | {
      readonly ok: true;
      /** The entries of the state and no other. */
      readonly log: JobLog;
      /** Entries that came later, those left out that only freeze. */
      readonly later: number;
    }
  | { readonly ok: false; readonly issues: readonly RecordIssue[] };

/**
 * Gives a log as it was when it was frozen, or names what of it is gone or altered.
 * @param file the list of entries that the state names; undefined where it is not at hand
 */
export function asFrozen(log: JobLog, state: FrozenState, file: Uint8Array | undefined): FrozenCheck {
  if (file === undefined) {
    const found = 'no list of its entries';
    const issue = {
      path: `frozen ${state.id}`,
      found,
      expected: `the file with SHA-256 ${state.sealSha256}`,
    };
    return { ok: false, issues: [issue] };
  }
  const read = readSeal(file, state);
  if (!read.ok) return read;
  const { issues, later } = checkSeal(read.seal, log);
  if (issues.length > 0) return { ok: false, issues };
  const sealed = new Map(read.seal.entries.map(({ id, sha256 }) => [id, sha256]));
  const then = new JobLog(
    log.jobId,
    log.entries().filter(({ id }) => sealed.has(id)),
  );
  const { entriesSha256, entryCount } = sealLog(then);
  if (entriesSha256 !== state.entriesSha256) {
    const found = `${entryCount} entries with SHA-256 ${entriesSha256}`;
    const expected = `${state.entryCount} entries with SHA-256 ${state.entriesSha256}`;
    return { ok: false, issues: [{ path: `frozen ${state.id}`, found, expected }] };
  }
  return { ok: true, log: then, later };
}
