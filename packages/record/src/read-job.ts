import { ENOUGH_ISSUES, firstIssues, issuesOf, pathText, type RecordIssue, shown } from './issues.ts';
import { ITEM_KINDS, type ItemKind } from './log/item-kinds.ts';
import { migrateJob } from './migrations/migrate.ts';
import { Job, RECORD_VERSION } from './schema/job.ts';

/** A job, or what is wrong with what was given. */
export type JobRead =
  | { readonly ok: true; readonly job: Job }
  | { readonly ok: false; readonly issues: readonly RecordIssue[] };

function fault(path: string, found: unknown, expected: string): JobRead {
  return { ok: false, issues: [{ path, found: shown(found), expected }] };
}

type Parts = Record<string, unknown>;

function isParts(value: unknown): value is Parts {
  return value !== null && typeof value === 'object' && !Array.isArray(value);
}

const LISTS = Object.values(ITEM_KINDS)
  .filter((kind) => !kind.single)
  .map((kind) => ({ ...kind, name: kind.path[kind.path.length - 1] }));
type List = (typeof LISTS)[number];

/** What holds a list: the job itself or one of its sections. */
function holderOf(job: Parts, { path }: ItemKind): unknown {
  return path.length === 1 ? job : job[path[0]];
}

/** The job with its lists emptied, and what stood in them. */
function withoutLists(job: Parts): { frame: Parts; lists: Map<List, unknown[]> } {
  const frame: Parts = {};
  for (const [name, part] of Object.entries(job)) frame[name] = isParts(part) ? { ...part } : part;
  const lists = new Map<List, unknown[]>();
  for (const list of LISTS) {
    const holder = holderOf(frame, list);
    if (!isParts(holder)) continue;
    const items = holder[list.name];
    if (!Array.isArray(items)) continue;
    lists.set(list, items);
    holder[list.name] = [];
  }
  return { frame, lists };
}

/**
 * Reads the items of a list one by one, so that a list of a million faults stops at the first thousand. Two items with
 * one id would make references to it ambiguous.
 */
function readItems(list: List, raw: readonly unknown[], issues: RecordIssue[]): Parts[] {
  const items: Parts[] = [];
  const places = new Map<string, string>();
  for (let index = 0; index < raw.length && issues.length <= ENOUGH_ISSUES; index += 1) {
    const path = [...list.path, index];
    const parsed = list.schema.safeParse(raw[index]);
    if (!parsed.success) {
      issues.push(...issuesOf(parsed.error, raw[index], path));
      continue;
    }
    const id = parsed.data.id as string;
    const place = places.get(id);
    if (place === undefined) places.set(id, pathText(path));
    else
      issues.push({
        path: pathText([...path, 'id']),
        found: shown(id),
        expected: `an id not used by ${place}`,
      });
    items.push(parsed.data);
  }
  return items;
}

function readParts(job: Parts): JobRead {
  const { frame, lists } = withoutLists(job);
  const parsed = Job.safeParse(frame);
  const issues = parsed.success ? [] : issuesOf(parsed.error, frame);
  for (const [list, raw] of lists) {
    const items = readItems(list, raw, issues);
    if (parsed.success) (holderOf(parsed.data, list) as Parts)[list.name] = items;
  }
  return parsed.success && issues.length === 0
    ? { ok: true, job: parsed.data }
    : { ok: false, issues: firstIssues(issues) };
}

/**
 * Reads a job from plain JSON data: older versions are migrated, newer ones refused, every fault (up to a thousand) is
 * listed with its path, the value found and what was expected.
 */
export function readJob(raw: unknown): JobRead {
  if (!isParts(raw)) return fault('the record', raw, 'an object with format "undercroft-job"');
  const { format, version } = raw;
  if (format !== 'undercroft-job') return fault('format', format, '"undercroft-job"');
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return fault('version', version, `a whole number from 1 to ${RECORD_VERSION}`);
  }
  if (version > RECORD_VERSION) {
    const expected = `at most ${RECORD_VERSION}; this job was written by a newer program and is left untouched`;
    return fault('version', version, expected);
  }
  return readParts(migrateJob(raw, version));
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
