import { strToU8 } from 'fflate';
import { sha256Hex } from '../archive/sha256.ts';
import { canonicalJson } from '../canonical.ts';
import { firstIssues, type RecordIssue } from '../issues.ts';
import type { Entry } from '../log/entry.ts';
import type { JobLog } from '../log/job-log.ts';
import { RECORD_VERSION } from '../schema/job.ts';

/** One entry as it was: its stamp and the SHA-256 of its canonical JSON. */
export interface EntrySeal {
  readonly id: string;
  readonly sha256: string;
}

/** A log at one moment, so that it can be told later whether the same entries are still in it, unchanged. */
export interface LogVersion {
  readonly jobId: string;
  readonly recordVersion: number;
  readonly entryCount: number;
  /** SHA-256 of all entries as an archive holds them: canonical JSON, a line feed behind each, in the order of the stamps. */
  readonly entriesSha256: string;
  /** Every entry, in the order of the stamps. */
  readonly entries: readonly EntrySeal[];
}

const sealOf = (entry: Entry): EntrySeal => ({
  id: entry.id,
  sha256: sha256Hex(strToU8(canonicalJson(entry))),
});

/** Seals a log as it stands. The same entries give the same seal, whatever the order in which they came. */
export function sealLog(log: JobLog): LogVersion {
  const entries = log.entries();
  return {
    jobId: log.jobId,
    recordVersion: RECORD_VERSION,
    entryCount: entries.length,
    entriesSha256: sha256Hex(strToU8(entries.map((e) => `${canonicalJson(e)}\n`).join(''))),
    entries: entries.map(sealOf),
  };
}

/** What a log holds against a seal. */
export interface SealCheck {
  /** Entries that are not as they were sealed, or not there, each by its stamp. Empty where all are. */
  readonly issues: readonly RecordIssue[];
  /** How many faults are more than an entry that is not there: content that is not what was sealed. */
  readonly altered: number;
  /** Entries that came later, those left out that only freeze. That is no fault: a log goes on. */
  readonly later: number;
}

function faultsOfSeal(seal: LogVersion): RecordIssue[] {
  const stamps = new Set(seal.entries.map((e) => `${e.id} ${e.sha256}`)).size;
  const issues: RecordIssue[] = [];
  if (stamps !== seal.entryCount || seal.entries.length !== seal.entryCount) {
    const found = `${seal.entries.length} sealed entries`;
    issues.push({ path: 'seal', found, expected: `${seal.entryCount}, each once` });
  }
  return issues;
}

/** Looks whether every entry of a seal is in a log, unchanged. */
export function checkSeal(seal: LogVersion, log: JobLog): SealCheck {
  const issues = faultsOfSeal(seal);
  if (seal.jobId !== log.jobId) issues.push({ path: 'jobId', found: log.jobId, expected: seal.jobId });
  const here = new Map<string, Set<string>>();
  const entries = log.entries();
  for (const { id, sha256 } of entries.map(sealOf)) {
    const known = here.get(id);
    if (known === undefined) here.set(id, new Set([sha256]));
    else known.add(sha256);
  }
  let missing = 0;
  const sealed = new Map<string, number>();
  for (const { id, sha256 } of seal.entries) {
    sealed.set(id, (sealed.get(id) ?? 0) + 1);
    const found = here.get(id);
    if (found === undefined) {
      missing += 1;
      issues.push({ path: `entry ${id}`, found: 'nothing', expected: `the entry with SHA-256 ${sha256}` });
    } else if (!found.has(sha256)) {
      const [other] = found;
      issues.push({
        path: `entry ${id}`,
        found: `other content, SHA-256 ${other}`,
        expected: `what was sealed, SHA-256 ${sha256}`,
      });
    }
  }
  return {
    issues: firstIssues(issues),
    altered: issues.length - missing,
    later: entries.filter((e) => !sealed.has(e.id) && e.kind !== 'frozen').length,
  };
}
