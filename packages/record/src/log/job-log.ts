import { canonicalJson } from '../canonical.ts';
import { issuesOf, pathText, type RecordIssue } from '../issues.ts';
import { viewInCurrentVersion } from '../migrations/migrate.ts';
import { type Job, RECORD_VERSION } from '../schema/job.ts';
import { type Disagreement, disagreementsOf } from './disagreement.ts';
import { Entry, ORDER } from './entry.ts';
import { addToHistory, type ItemHistory, isPresent, newItemHistory, winner } from './item-history.ts';
import { ITEM_KINDS } from './item-kinds.ts';
import { itemValue } from './item-value.ts';
import { SortedItems } from './sorted-items.ts';

/** The job that a log folds to. Without a header and a plan there is none yet. */
export interface FoldedJob {
  readonly job: Job | null;
  /** Parts that break the schema and are left out or shown with an older value; missing parts. */
  readonly issues: readonly RecordIssue[];
}

/** What adding an entry did: `known` means that this very entry was there already. */
export type AddOutcome = 'added' | 'known' | 'clash';

/**
 * The log of one job and its fold. Entries may be added in any order, any number of times. Two different entries with
 * one identity are a clash: it comes from damage or tampering, both are kept, and the one whose text sorts first counts.
 */
export class JobLog {
  readonly jobId: string;
  #entries = new Map<string, Entry>();
  #clashes = new Map<string, Entry[]>();
  #items = new Map<string, ItemHistory>();
  #lists = new Map<string, SortedItems>();
  #singles = new Map<string, Record<string, unknown>>();
  #issues = new Map<string, readonly RecordIssue[]>();
  #disagreements = new Map<string, readonly Disagreement[]>();
  #dirty = new Set<string>();
  #newest: string | null = null;
  #folded: FoldedJob | null = null;

  constructor(jobId: string, entries: Iterable<Entry> = []) {
    this.jobId = jobId;
    for (const entry of entries) this.add(entry);
  }

  /** Number of entries, clashing ones included. */
  get size(): number {
    let clashing = 0;
    for (const list of this.#clashes.values()) clashing += list.length;
    return this.#entries.size + clashing;
  }

  /** The greatest stamp in the log, or null. */
  get newestStamp(): string | null {
    return this.#newest;
  }

  /** Every entry in the order of their stamps. This is what is stored and sent. */
  entries(): Entry[] {
    const all = [...this.#entries.values(), ...[...this.#clashes.values()].flat()];
    return all.sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
  }

  /** Entries that share their identity with a different entry. */
  clashes(): Entry[] {
    return [...this.#clashes.values()].flat();
  }

  /**
   * Adds an entry. The entry must have the form of `Entry`; check foreign ones with `readEntries` first.
   * @throws RangeError for an entry of a newer record version, which this code must not judge
   */
  add(entry: Entry): AddOutcome {
    if (entry.version > RECORD_VERSION) {
      throw new RangeError(
        `entry ${entry.id} is of record version ${entry.version}; this program knows ${RECORD_VERSION}`,
      );
    }
    const same = this.#entries.get(entry.id);
    if (same !== undefined) return this.#addAgain(same, entry);
    this.#entries.set(entry.id, entry);
    if (this.#newest === null || entry.id > this.#newest) this.#newest = entry.id;
    this.#place(entry);
    return 'added';
  }

  #addAgain(same: Entry, entry: Entry): AddOutcome {
    const text = canonicalJson(entry);
    const others = this.#clashes.get(entry.id) ?? [];
    if (canonicalJson(same) === text || others.some((o) => canonicalJson(o) === text)) return 'known';
    const kept = [same, ...others, entry].sort((a, b) => (canonicalJson(a) < canonicalJson(b) ? -1 : 1));
    this.#entries.set(entry.id, kept[0]);
    this.#clashes.set(entry.id, kept.slice(1));
    if (kept[0] !== same) this.#rebuild(same, kept[0]);
    return 'clash';
  }

  #rebuild(...changed: Entry[]): void {
    const keys = new Set(changed.map((e) => `${e.kind}/${e.item}`));
    for (const key of keys) this.#items.delete(key);
    for (const e of this.#entries.values()) if (keys.has(`${e.kind}/${e.item}`)) this.#place(e);
    for (const key of keys) this.#dirty.add(key);
    this.#folded = null;
  }

  #place(entry: Entry): void {
    const view = viewInCurrentVersion(entry);
    const key = `${view.kind}/${view.item}`;
    let history = this.#items.get(key);
    if (history === undefined) {
      history = newItemHistory(view.kind, view.item);
      this.#items.set(key, history);
    }
    addToHistory(history, view);
    this.#dirty.add(key);
    this.#folded = null;
  }

  /** History of one item, or undefined: who set what, when. */
  history(kind: string, item: string): ItemHistory | undefined {
    return this.#items.get(`${kind}/${item}`);
  }

  /** Everything that waits for a person, in a fixed order. */
  disagreements(): Disagreement[] {
    this.fold();
    return [...this.#disagreements.keys()].sort().flatMap((key) => this.#disagreements.get(key) ?? []);
  }

  /** List of the items of a kind with their order keys, as shown. */
  order(kind: string): readonly { item: string; order: string }[] {
    this.fold();
    return this.#lists.get(kind)?.keys() ?? [];
  }

  /** The job as it stands. Only what changed since the last call is worked out anew. */
  fold(): FoldedJob {
    if (this.#folded !== null && this.#dirty.size === 0) return this.#folded;
    for (const key of this.#dirty) this.#refresh(key);
    for (const list of this.#lists.values()) list.settle();
    this.#dirty.clear();
    this.#folded = this.#assemble();
    return this.#folded;
  }

  #refresh(key: string): void {
    const slash = key.indexOf('/');
    const kindName = key.slice(0, slash);
    const item = key.slice(slash + 1);
    const kind = ITEM_KINDS[kindName];
    this.#issues.delete(key);
    this.#disagreements.delete(key);
    const history = this.#items.get(key);
    if (kind === undefined) {
      this.#issues.set(key, [
        { path: key, found: kindName, expected: 'a kind of item that this program knows' },
      ]);
      return;
    }
    const open = history === undefined ? [] : disagreementsOf(history);
    if (open.length > 0) this.#disagreements.set(key, open);
    const present = history !== undefined && isPresent(history);
    const { value, issues } = present ? itemValue(history, kind) : { value: null, issues: [] };
    if (issues.length > 0) this.#issues.set(key, issues);
    if (kind.single) {
      if (value === null || item !== kindName) this.#singles.delete(kindName);
      else this.#singles.set(kindName, value);
      return;
    }
    let list = this.#lists.get(kindName);
    if (list === undefined) {
      list = new SortedItems();
      this.#lists.set(kindName, list);
    }
    const order = winner(history?.fields.get(ORDER))?.value;
    list.put(item, typeof order === 'string' ? order : '', value);
  }

  #assemble(): FoldedJob {
    const issues = [...this.#issues.keys()].sort().flatMap((key) => this.#issues.get(key) ?? []);
    const header = this.#singles.get('header');
    const plan = this.#singles.get('plan');
    if (header === undefined)
      issues.push({ path: 'header', found: 'nothing', expected: 'a header with a title' });
    if (plan === undefined)
      issues.push({ path: 'plan', found: 'nothing', expected: 'a plan with an outline and a ground' });
    if (header === undefined || plan === undefined) return { job: null, issues };
    const job: Record<string, unknown> = {
      format: 'undercroft-job',
      version: RECORD_VERSION,
      id: this.jobId,
    };
    for (const [name, kind] of Object.entries(ITEM_KINDS)) {
      const section = kind.path[0];
      if (kind.single) {
        job[section] = { ...(job[section] as object), ...(this.#singles.get(name) ?? defaultsOf(name)) };
        continue;
      }
      const items = this.#lists.get(name)?.values() ?? [];
      if (kind.path.length === 1) job[section] = items;
      else job[section] = { ...(job[section] as object), [kind.path[1]]: items };
    }
    return { job: job as unknown as Job, issues };
  }
}

function defaultsOf(single: string): Record<string, unknown> {
  const parsed = ITEM_KINDS[single].schema.safeParse({});
  return parsed.success ? parsed.data : {};
}

/** Checks foreign entries. All faults are collected; either every entry is well formed or none is given. */
export function readEntries(raw: unknown): { entries: Entry[] } | { issues: RecordIssue[] } {
  if (!Array.isArray(raw)) {
    return { issues: [{ path: 'entries', found: typeof raw, expected: 'a list of entries' }] };
  }
  const entries: Entry[] = [];
  const issues: RecordIssue[] = [];
  raw.forEach((one, index) => {
    const parsed = Entry.safeParse(one);
    if (!parsed.success) issues.push(...issuesOf(parsed.error, one, ['entries', index]));
    else if (parsed.data.version > RECORD_VERSION) {
      issues.push({
        path: pathText(['entries', index, 'version']),
        found: String(parsed.data.version),
        expected: `a record version up to ${RECORD_VERSION}; open this job with a newer program`,
      });
    } else entries.push(parsed.data);
  });
  return issues.length > 0 ? { issues } : { entries };
}
