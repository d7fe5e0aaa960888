import { canonicalJson } from '../canonical.ts';
import { firstNot } from './binary-search.ts';
import { stampMs } from './clock.ts';
import type { Entry } from './entry.ts';

/** What adding an entry did: `known` means that this very entry was there already. */
export type AddOutcome = 'added' | 'known' | 'clash';

/** The outcome, and the entry that counted until now where another one took its place. */
export interface Added {
  readonly outcome: AddOutcome;
  readonly displaced: Entry | null;
}

const ADDED: Added = { outcome: 'added', displaced: null };
const KNOWN: Added = { outcome: 'known', displaced: null };
const KEPT: Added = { outcome: 'clash', displaced: null };

/** Above this many, sorting everything anew is cheaper than placing the late ones one by one. */
const FEW = 16;

function byText(clashing: ReadonlyMap<string, Entry>): Entry[] {
  return [...clashing.keys()].sort().map((text) => clashing.get(text) as Entry);
}

/**
 * The entries of a log, each kept once. Different entries with one identity are a clash: all are kept, and the one whose
 * text sorts first counts.
 */
export class EntrySet {
  #counting = new Map<string, Entry>();
  /** For each identity that clashes, all its entries by their text. */
  #clashing = new Map<string, Map<string, Entry>>();
  #size = 0;
  #stamps: string[] = [];
  /** Stamps that came after a greater one. */
  #late: string[] = [];

  /** Number of entries, clashing ones included. */
  get size(): number {
    return this.#size;
  }

  add(entry: Entry): Added {
    const { id } = entry;
    const same = this.#counting.get(id);
    if (same === entry) return KNOWN;
    if (same !== undefined) return this.#addAgain(same, entry);
    this.#counting.set(id, entry);
    this.#size += 1;
    const last = this.#stamps.length - 1;
    if (last < 0 || id > this.#stamps[last]) this.#stamps.push(id);
    else this.#late.push(id);
    return ADDED;
  }

  #addAgain(same: Entry, entry: Entry): Added {
    const text = canonicalJson(entry);
    const sameText = canonicalJson(same);
    const clashing = this.#clashing.get(entry.id) ?? new Map([[sameText, same]]);
    if (clashing.has(text)) return KNOWN;
    this.#clashing.set(entry.id, clashing.set(text, entry));
    this.#size += 1;
    if (text > sameText) return KEPT;
    this.#counting.set(entry.id, entry);
    return { outcome: 'clash', displaced: same };
  }

  /** The entries that count, in no particular order. */
  counting(): IterableIterator<Entry> {
    return this.#counting.values();
  }

  /** Every entry in the order of the stamps; of those that clash, the one that counts first, then by their text. */
  all(): Entry[] {
    return this.#sortedStamps().flatMap((id) => {
      const clashing = this.#clashing.get(id);
      return clashing === undefined ? (this.#counting.get(id) as Entry) : byText(clashing);
    });
  }

  /** Entries that share their identity with a different entry and do not count. */
  clashes(): Entry[] {
    return [...this.#clashing]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .flatMap(([, entries]) => byText(entries).slice(1));
  }

  /** The greatest stamp that claims no later time than `untilMs`, or null. */
  newestStamp(untilMs: number): string | null {
    const stamps = this.#sortedStamps();
    const after = firstNot(stamps, (stamp) => stampMs(stamp) <= untilMs);
    return after === 0 ? null : stamps[after - 1];
  }

  #sortedStamps(): readonly string[] {
    if (this.#late.length > FEW) {
      this.#stamps = [...this.#stamps, ...this.#late].sort();
    } else {
      for (const late of this.#late)
        this.#stamps.splice(
          firstNot(this.#stamps, (stamp) => stamp < late),
          0,
          late,
        );
    }
    this.#late = [];
    return this.#stamps;
  }
}
