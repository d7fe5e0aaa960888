import { issuesOf, type RecordIssue, shown } from './issues.ts';
import { migrateJob } from './migrations/migrate.ts';
import { Job, RECORD_VERSION } from './schema/job.ts';

/** A job, or everything that is wrong with what was given. */
export type JobRead =
  | { readonly ok: true; readonly job: Job }
  | { readonly ok: false; readonly issues: readonly RecordIssue[] };

function fault(path: string, found: unknown, expected: string): JobRead {
  return { ok: false, issues: [{ path, found: shown(found), expected }] };
}

/** Every list of a job in which two items share an id, which would make references ambiguous. */
function repeatedIds(value: unknown, path: string): RecordIssue[] {
  if (value === null || typeof value !== 'object') return [];
  const issues: RecordIssue[] = [];
  if (Array.isArray(value)) {
    const seen = new Map<string, number>();
    value.forEach((item, index) => {
      const id = (item as { id?: unknown } | null)?.id;
      if (typeof id === 'string') {
        const first = seen.get(id);
        if (first === undefined) seen.set(id, index);
        else
          issues.push({
            path: `${path}[${index}].id`,
            found: shown(id),
            expected: `an id not used by ${path}[${first}]`,
          });
      }
      issues.push(...repeatedIds(item, `${path}[${index}]`));
    });
    return issues;
  }
  for (const [key, part] of Object.entries(value))
    issues.push(...repeatedIds(part, path === '' ? key : `${path}.${key}`));
  return issues;
}

/**
 * Reads a job from plain JSON data: older versions are migrated, newer ones refused, every fault is listed with its path,
 * the value found and what was expected.
 */
export function readJob(raw: unknown): JobRead {
  if (raw === null || typeof raw !== 'object' || Array.isArray(raw)) {
    return fault('the record', raw, 'an object with format "undercroft-job"');
  }
  const { format, version } = raw as { format?: unknown; version?: unknown };
  if (format !== 'undercroft-job') return fault('format', format, '"undercroft-job"');
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return fault('version', version, `a whole number from 1 to ${RECORD_VERSION}`);
  }
  if (version > RECORD_VERSION) {
    return fault(
      'version',
      version,
      `at most ${RECORD_VERSION}; this job was written by a newer program and is left untouched`,
    );
  }
  const parsed = Job.safeParse(migrateJob(raw as Record<string, unknown>, version));
  if (!parsed.success) return { ok: false, issues: issuesOf(parsed.error, raw) };
  const repeated = repeatedIds(parsed.data, '');
  return repeated.length > 0 ? { ok: false, issues: repeated } : { ok: true, job: parsed.data };
}

/** Reads a job from JSON text. */
export function readJobText(text: string): JobRead {
  let raw: unknown;
  try {
    raw = JSON.parse(text.charCodeAt(0) === 0xfeff ? text.slice(1) : text);
  } catch (error) {
    return fault('the record', text.slice(0, 40), `JSON text (${(error as Error).message})`);
  }
  return readJob(raw);
}
