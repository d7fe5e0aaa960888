import { strFromU8, strToU8 } from 'fflate';
import * as z from 'zod';
import { sha256Hex } from '../archive/sha256.ts';
import { canonicalJson } from '../canonical.ts';
import { firstIssues, issuesOf, type RecordIssue } from '../issues.ts';
import { CLOCK_STAMP } from '../log/clock.ts';
import type { FrozenState } from '../schema/frozen.ts';
import { Id, Sha256 } from '../schema/scalars.ts';
import type { LogVersion } from './log-version.ts';

const SealFile = z.strictObject({
  jobId: Id,
  recordVersion: z.int().positive(),
  entryCount: z.int().min(0),
  entriesSha256: Sha256,
  entries: z.array(z.strictObject({ id: z.string().regex(CLOCK_STAMP, 'a clock stamp'), sha256: Sha256 })),
});

/** A sealed log as a file; the same seal gives the same bytes. */
export function writeSeal(seal: LogVersion): Uint8Array {
  return strToU8(`${canonicalJson(seal)}\n`);
}

/** What a file of a seal holds, or what is wrong with it. */
export type SealRead =
  | { readonly ok: true; readonly seal: LogVersion }
  | { readonly ok: false; readonly issues: readonly RecordIssue[] };

/** Reads the seal of a frozen state from its file. It must be the file that the state names, and say the same. */
export function readSeal(bytes: Uint8Array, state: FrozenState): SealRead {
  const path = `frozen ${state.id}`;
  const wrong = (found: string, expected: string): SealRead => ({
    ok: false,
    issues: [{ path, found, expected }],
  });
  const hash = sha256Hex(bytes);
  if (hash !== state.sealSha256) return wrong(`a list with SHA-256 ${hash}`, `SHA-256 ${state.sealSha256}`);
  let raw: unknown;
  try {
    raw = JSON.parse(strFromU8(bytes));
  } catch (error) {
    return wrong('other text', `a list of entries as JSON (${(error as Error).message})`);
  }
  const parsed = SealFile.safeParse(raw);
  if (!parsed.success) return { ok: false, issues: firstIssues(issuesOf(parsed.error, raw, [path])) };
  const seal = parsed.data;
  if (seal.entriesSha256 !== state.entriesSha256 || seal.entryCount !== state.entryCount) {
    return wrong(
      `a list of ${seal.entryCount} entries with SHA-256 ${seal.entriesSha256}`,
      `${state.entryCount} entries with SHA-256 ${state.entriesSha256}`,
    );
  }
  return { ok: true, seal };
}
