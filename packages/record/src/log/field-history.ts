import { canonicalJson } from '../canonical.ts';
import type { Entry } from './entry.ts';

/** A value that an entry gave to one field. A creating entry gives one to every field it names. */
export interface FieldValue {
  readonly entry: Entry;
  readonly value: unknown;
}

function byStamp(a: FieldValue, b: FieldValue): number {
  return a.entry.id < b.entry.id ? -1 : a.entry.id > b.entry.id ? 1 : 0;
}

/** Up to so many values are compared with each other; from there on the heads are kept account of. */
const FEW = 8;

/** The heads among values that are added one by one. */
class Heads {
  readonly byStamp = new Map<string, FieldValue>();
  /** Stamps that authors had seen, of entries that are not here. */
  #awaited = new Set<string>();

  add(given: FieldValue): void {
    const { id, seen } = given.entry;
    if (!this.#awaited.delete(id)) this.byStamp.set(id, given);
    for (const stamp of seen) if (!this.byStamp.delete(stamp)) this.#awaited.add(stamp);
  }
}

/**
 * All values that one field has had, and its heads: those that no author of another value had seen. The order in which
 * values are added makes no difference.
 */
export class FieldHistory {
  #values: FieldValue[] = [];
  #inOrder = true;
  #account: Heads | null = null;
  #heads: readonly FieldValue[] | null = null;

  add(entry: Entry, value: unknown): void {
    const given = { entry, value };
    const count = this.#values.push(given);
    if (count > 1 && this.#values[count - 2].entry.id > entry.id) this.#inOrder = false;
    if (this.#account !== null) {
      this.#account.add(given);
    } else if (count > FEW) {
      this.#account = new Heads();
      for (const known of this.#values) this.#account.add(known);
    }
    this.#heads = null;
  }

  /** Every value, in the order of the stamps. */
  get values(): readonly FieldValue[] {
    if (!this.#inOrder) this.#values.sort(byStamp);
    this.#inOrder = true;
    return this.#values;
  }

  /** The values that stand side by side, in the order of their stamps; never none. */
  get heads(): readonly FieldValue[] {
    this.#heads ??= this.#findHeads();
    return this.#heads;
  }

  #findHeads(): readonly FieldValue[] {
    const { values } = this;
    if (values.length < 2) return values;
    const heads =
      this.#account === null
        ? values.filter(({ entry }) => !values.some((other) => other.entry.seen.includes(entry.id)))
        : [...this.#account.byStamp.values()].sort(byStamp);
    // Only in a damaged log do entries replace each other in a ring, so that no head is left.
    return heads.length === 0 ? values.slice(-1) : heads;
  }

  /** The value that is shown: the latest head. */
  get shown(): FieldValue {
    const { heads } = this;
    return heads[heads.length - 1];
  }

  /** True when two heads say different things. */
  get disagrees(): boolean {
    if (this.#values.length < 2) return false;
    const { heads } = this;
    return heads.length > 1 && new Set(heads.map((head) => canonicalJson(head.value))).size > 1;
  }
}
