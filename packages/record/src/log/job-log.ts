import { firstIssues, type RecordIssue } from '../issues.ts';
import { viewInCurrentVersion } from '../migrations/migrate.ts';
import { RECORD_VERSION } from '../schema/job.ts';
import { assembleJob, type FoldedJob } from './assemble-job.ts';
import { type Disagreement, disagreementsOf } from './disagreement.ts';
import type { Entry } from './entry.ts';
import { type AddOutcome, EntrySet } from './entry-set.ts';
import { ItemHistory } from './item-history.ts';
import { itemKind } from './item-schema.ts';
import { ABSENT, itemValue } from './item-value.ts';
import { type ShownItems, SortedItems } from './sorted-items.ts';

/** What an item adds to the answers about the whole log, by item. */
type ByItem<T> = Map<ItemHistory, readonly T[]>;

function inOrder<T>(found: ByItem<T>): T[] {
  const items = [...found.keys()].sort((a, b) =>
    a.kind !== b.kind ? (a.kind < b.kind ? -1 : 1) : a.item < b.item ? -1 : 1,
  );
  return items.flatMap((item) => found.get(item) as readonly T[]);
}

/**
 * The log of one job and its fold. Entries may be added in any order, any number of times. Two different entries with
 * one identity are a clash: it comes from damage or tampering, both are kept, and the one whose text sorts first counts.
 */
export class JobLog {
  readonly jobId: string;
  #entries = new EntrySet();
  #items = new Map<string, Map<string, ItemHistory>>();
  #lists = new Map<string, SortedItems>();
  #singles = new Map<string, Record<string, unknown>>();
  #issues: ByItem<RecordIssue> = new Map();
  #disagreements: ByItem<Disagreement> = new Map();
  /** Items that have changed since the last fold. */
  #changed: ItemHistory[] = [];
  /** Items whose history holds an entry that no longer counts. */
  #stale = new Set<ItemHistory>();
  #folded: FoldedJob | null = null;

  constructor(jobId: string, entries: Iterable<Entry> = []) {
    this.jobId = jobId;
    for (const entry of entries) this.add(entry);
  }

  /** Number of entries, clashing ones included. */
  get size(): number {
    return this.#entries.size;
  }

  /** The greatest stamp in the log that claims no later time than `untilMs`, or null. */
  newestStamp(untilMs = Number.POSITIVE_INFINITY): string | null {
    return this.#entries.newestStamp(untilMs);
  }

  /** Every entry in the order of their stamps. This is what is stored and sent. */
  entries(): Entry[] {
    return this.#entries.all();
  }

  /** Entries that share their identity with a different entry and do not count. */
  clashes(): Entry[] {
    return this.#entries.clashes();
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
    const { outcome, displaced } = this.#entries.add(entry);
    if (outcome === 'added') {
      const view = viewInCurrentVersion(entry);
      const history = this.#historyOf(view);
      history.add(view);
      this.#change(history);
    } else if (outcome === 'clash') {
      this.#folded = null;
    }
    if (displaced !== null) {
      for (const one of [displaced, entry]) this.#stale.add(this.#historyOf(viewInCurrentVersion(one)));
    }
    return outcome;
  }

  #change(history: ItemHistory): void {
    if (history.isChanged) return;
    history.isChanged = true;
    this.#changed.push(history);
  }

  #historyOf({ kind, item }: Entry): ItemHistory {
    let ofKind = this.#items.get(kind);
    if (ofKind === undefined) {
      ofKind = new Map();
      this.#items.set(kind, ofKind);
    }
    let history = ofKind.get(item);
    if (history === undefined) {
      history = new ItemHistory(kind, item);
      ofKind.set(item, history);
    }
    return history;
  }

  /** Builds the histories anew that hold an entry which lost against one that it clashes with. */
  #renewStale(): void {
    if (this.#stale.size === 0) return;
    for (const history of this.#stale) {
      this.#change(history);
      history.clear();
    }
    for (const entry of this.#entries.counting()) {
      const view = viewInCurrentVersion(entry);
      const history = this.#historyOf(view);
      if (this.#stale.has(history)) history.add(view);
    }
    this.#stale.clear();
  }

  /** History of one item, or undefined: who set what, when. */
  history(kind: string, item: string): ItemHistory | undefined {
    this.#renewStale();
    const history = this.#items.get(kind)?.get(item);
    return history?.isEmpty ? undefined : history;
  }

  /** Everything that waits for a person, in a fixed order. */
  disagreements(): Disagreement[] {
    this.fold();
    return inOrder(this.#disagreements);
  }

  /** The list of a kind of item as it is shown. */
  list(kind: string): ShownItems {
    this.fold();
    return this.#listOf(kind);
  }

  /** The job as it stands. Only what changed since the last call is worked out anew. */
  fold(): FoldedJob {
    this.#renewStale();
    if (this.#folded !== null && this.#changed.length === 0) return this.#folded;
    for (const history of this.#changed) this.#refresh(history);
    for (const list of this.#lists.values()) list.settle();
    this.#changed = [];
    const issues = firstIssues([...this.#clashIssues(), ...inOrder(this.#issues)]);
    this.#folded = assembleJob(this.jobId, this.#singles, this.#lists, issues);
    return this.#folded;
  }

  #clashIssues(): RecordIssue[] {
    return this.clashes().map(({ id, who }) => ({
      path: `entry ${id}`,
      found: `a second entry of this stamp, by ${who}`,
      expected: 'one; the record was damaged or tampered with, both are kept',
    }));
  }

  #refresh(history: ItemHistory): void {
    const { kind: name, item } = history;
    const kind = itemKind(name);
    history.isChanged = false;
    this.#issues.delete(history);
    this.#disagreements.delete(history);
    if (kind === undefined || (kind.single && item !== name)) {
      if (history.isEmpty) return;
      const expected =
        kind === undefined ? 'a kind of item that this program knows' : `${name}, of which a job has one`;
      this.#issues.set(history, [
        { path: `${name}.${item}`, found: kind === undefined ? name : item, expected },
      ]);
      return;
    }
    const present = history.isPresent;
    const open = present ? disagreementsOf(history, kind) : [];
    if (open.length > 0) this.#disagreements.set(history, open);
    const { value, order, issues } = present ? itemValue(history, kind) : ABSENT;
    if (issues.length > 0) this.#issues.set(history, issues);
    if (!kind.single) this.#listOf(name).put(item, order, value);
    else if (value === null) this.#singles.delete(name);
    else this.#singles.set(name, value);
  }

  #listOf(kind: string): SortedItems {
    let list = this.#lists.get(kind);
    if (list === undefined) {
      list = new SortedItems();
      this.#lists.set(kind, list);
    }
    return list;
  }
}
