interface Slot {
  readonly item: string;
  readonly order: string;
  readonly value: Record<string, unknown>;
}

function compare(a: Slot, b: Slot): number {
  if (a.order !== b.order) return a.order < b.order ? -1 : 1;
  return a.item < b.item ? -1 : a.item > b.item ? 1 : 0;
}

/** Where `slot` stands or would stand. */
function positionOf(sorted: readonly Slot[], slot: Slot): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (compare(sorted[middle], slot) < 0) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Above this many changes at once, sorting the list anew is cheaper than placing them one by one. */
const FEW = 16;

/** The items of one list in the order of their keys, ties by id. Handed-out lists are never changed afterwards. */
export class SortedItems {
  #slots = new Map<string, Slot>();
  #sorted: Slot[] = [];
  #values: Record<string, unknown>[] = [];
  /** Slots as they stand in the sorted list, for items that have changed since; null where there was none. */
  #before = new Map<string, Slot | null>();

  /** Sets, moves or (with a null value) takes out an item. Call `settle` before reading. */
  put(item: string, order: string, value: Record<string, unknown> | null): void {
    const old = this.#slots.get(item);
    if (!this.#before.has(item)) this.#before.set(item, old ?? null);
    if (value === null) this.#slots.delete(item);
    else this.#slots.set(item, { item, order, value });
  }

  settle(): void {
    if (this.#before.size === 0) return;
    if (this.#before.size > FEW) {
      this.#sorted = [...this.#slots.values()].sort(compare);
      this.#values = this.#sorted.map((s) => s.value);
    } else {
      this.#sorted = this.#sorted.slice();
      this.#values = this.#values.slice();
      for (const [item, old] of this.#before) {
        if (old !== null) this.#splice(positionOf(this.#sorted, old), 1);
        const now = this.#slots.get(item);
        if (now !== undefined) this.#splice(positionOf(this.#sorted, now), 0, now);
      }
    }
    this.#before.clear();
  }

  #splice(at: number, remove: number, ...add: Slot[]): void {
    this.#sorted.splice(at, remove, ...add);
    this.#values.splice(at, remove, ...add.map((s) => s.value));
  }

  values(): Record<string, unknown>[] {
    return this.#values;
  }

  keys(): { item: string; order: string }[] {
    return this.#sorted.map(({ item, order }) => ({ item, order }));
  }
}
