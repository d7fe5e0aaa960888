import { ENOUGH_ISSUES, firstIssues, issuesOf, pathText, type RecordIssue, shown } from '../issues.ts';
import { RECORD_VERSION } from '../schema/job.ts';
import { Entry } from './entry.ts';

/** Checks one foreign entry that stands at `path`. */
export function readEntry(raw: unknown, path: readonly PropertyKey[]): Entry | RecordIssue[] {
  const version = (raw as { version?: unknown } | null)?.version;
  if (typeof version === 'number' && Number.isInteger(version) && version > RECORD_VERSION) {
    const expected = `a record version up to ${RECORD_VERSION}; open this job with a newer program`;
    return [{ path: pathText([...path, 'version']), found: shown(version), expected }];
  }
  const parsed = Entry.safeParse(raw);
  return parsed.success ? parsed.data : issuesOf(parsed.error, raw, path);
}

/** Checks foreign entries. Either every entry is well formed or none is given, with what is wrong. */
export function readEntries(raw: unknown): { entries: Entry[] } | { issues: readonly RecordIssue[] } {
  if (!Array.isArray(raw)) {
    return { issues: [{ path: 'entries', found: shown(raw), expected: 'a list of entries' }] };
  }
  const entries: Entry[] = [];
  const issues: RecordIssue[] = [];
  for (let index = 0; index < raw.length && issues.length <= ENOUGH_ISSUES; index += 1) {
    const read = readEntry(raw[index], ['entries', index]);
    if (Array.isArray(read)) issues.push(...read);
    else entries.push(read);
  }
  return issues.length > 0 ? { issues: firstIssues(issues) } : { entries };
}
