import { firstNot } from './binary-search.ts';

interface Slot {
  readonly item: string;
  readonly order: string;
  readonly value: Record<string, unknown>;
}

function compare(a: Slot, b: Slot): number {
  if (a.order !== b.order) return a.order < b.order ? -1 : 1;
  return a.item < b.item ? -1 : a.item > b.item ? 1 : 0;
}

/** Above this many changes at once, sorting the list anew is cheaper than placing them one by one. */
const FEW = 16;

/** A list as others see it: to look at, not to change. */
export type ShownItems = Pick<SortedItems, 'values' | 'has' | 'gap'>;

/** The items of one list in the order of their keys, ties by id. Handed-out lists are never changed afterwards. */
export class SortedItems {
  #slots = new Map<string, Slot>();
  #sorted: Slot[] = [];
  #values: Record<string, unknown>[] = [];
  /** Slots as they stand in the sorted list, for items that have changed since; null where there was none. */
  #before = new Map<string, Slot | null>();

  /** Sets, moves or (with a null value) takes out an item. Call `settle` before reading. */
  put(item: string, order: string, value: Record<string, unknown> | null): void {
    const old = this.#slots.get(item) ?? null;
    if (old === null && value === null) return;
    if (!this.#before.has(item)) this.#before.set(item, old);
    if (value === null) this.#slots.delete(item);
    else this.#slots.set(item, { item, order, value });
  }

  settle(): void {
    if (this.#before.size === 0) return;
    if (this.#before.size > FEW) {
      this.#sorted = [...this.#slots.values()].sort(compare);
      this.#values = this.#sorted.map((slot) => slot.value);
    } else {
      this.#values = this.#values.slice();
      for (const [item, old] of this.#before) {
        if (old !== null) this.#splice(this.#positionOf(old), 1);
        const now = this.#slots.get(item);
        if (now !== undefined) this.#splice(this.#positionOf(now), 0, now);
      }
    }
    this.#before.clear();
  }

  #splice(at: number, remove: number, ...add: Slot[]): void {
    this.#sorted.splice(at, remove, ...add);
    this.#values.splice(at, remove, ...add.map((slot) => slot.value));
  }

  /** Where a slot stands or would stand. */
  #positionOf(slot: Slot): number {
    return firstNot(this.#sorted, (other) => compare(other, slot) < 0);
  }

  get values(): readonly Record<string, unknown>[] {
    return this.#values;
  }

  has(item: string): boolean {
    return this.#slots.has(item);
  }

  /**
   * The keys between which `moved` must come to stand behind the item `after` (null: first; undefined: last). Two devices
   * may have made the same key; the next greater one bounds the gap.
   */
  gap(after: string | null | undefined, moved: string): { low: string | null; high: string | null } {
    const slot = after === null || after === undefined ? undefined : this.#slots.get(after);
    let at = after === undefined ? this.#sorted.length - 1 : slot === undefined ? -1 : this.#positionOf(slot);
    if (after === undefined && this.#sorted[at]?.item === moved) at -= 1;
    const low = this.#sorted[at]?.order ?? '';
    let high = at + 1;
    while (
      high < this.#sorted.length &&
      (this.#sorted[high].item === moved || this.#sorted[high].order <= low)
    ) {
      high += 1;
    }
    return { low: low === '' ? null : low, high: this.#sorted[high]?.order ?? null };
  }
}
