import { CREATE, type Entry, ORDER, REMOVED } from './entry.ts';
import { FieldHistory } from './field-history.ts';

/** Fields whose change is no edit of what the item says. */
const NO_EDIT = new Set([CREATE, REMOVED, ORDER]);

/** The fields that a creating entry gives a value, besides the creation itself. */
function partsOf(creating: Entry): Record<string, unknown> {
  const { value } = creating;
  return value === null || typeof value !== 'object' || Array.isArray(value)
    ? {}
    : (value as Record<string, unknown>);
}

/** True when a creating entry gives a value to the field. */
function gives(creating: Entry, name: string): boolean {
  return name === CREATE || (name !== REMOVED && Object.hasOwn(partsOf(creating), name));
}

function valueIn(creating: Entry, name: string): unknown {
  return name === CREATE ? true : partsOf(creating)[name];
}

function namesIn(creating: Entry): string[] {
  return [CREATE, ...Object.keys(partsOf(creating)).filter((name) => name !== CREATE && name !== REMOVED)];
}

/** What is known of one item: the history of each of its fields. The order of adding entries makes no difference. */
export class ItemHistory {
  readonly kind: string;
  readonly item: string;
  /** For the log: whether it has to look at the item again. */
  isChanged = false;
  /** A creating entry. It is taken apart only where another entry touches one of its fields. */
  #whole: Entry | null = null;
  #fields = new Map<string, FieldHistory>();

  constructor(kind: string, item: string) {
    this.kind = kind;
    this.item = item;
  }

  add(entry: Entry): void {
    if (entry.field !== CREATE) {
      this.#takenApart(entry.field).add(entry, entry.value);
    } else if (this.#whole === null) {
      this.#whole = entry;
      for (const [name, field] of this.#fields) {
        if (gives(entry, name)) field.add(entry, valueIn(entry, name));
      }
    } else {
      for (const name of namesIn(entry)) this.#takenApart(name).add(entry, valueIn(entry, name));
    }
  }

  /** Forgets all entries. */
  clear(): void {
    this.#whole = null;
    this.#fields.clear();
  }

  /** True when no entry that counts is about the item. */
  get isEmpty(): boolean {
    return this.#whole === null && this.#fields.size === 0;
  }

  /** True for a field that only the creating entry gave a value. */
  #isUntouched(name: string): boolean {
    return this.#whole !== null && !this.#fields.has(name) && gives(this.#whole, name);
  }

  /** The history of a field as an object of its own. */
  #takenApart(name: string): FieldHistory {
    let field = this.#fields.get(name);
    if (field === undefined) {
      field = new FieldHistory();
      if (this.#whole !== null && gives(this.#whole, name))
        field.add(this.#whole, valueIn(this.#whole, name));
      this.#fields.set(name, field);
    }
    return field;
  }

  /** Names of all fields that ever had a value, sorted. */
  get fieldNames(): string[] {
    const whole = this.#whole === null ? [] : namesIn(this.#whole);
    return [...new Set([...whole, ...this.#fields.keys()])].sort();
  }

  /** The history of one field, or undefined where it never had a value. */
  field(name: string): FieldHistory | undefined {
    return this.#isUntouched(name) ? this.#takenApart(name) : this.#fields.get(name);
  }

  /** The shown value of a field; undefined where it never had one. */
  shown(name: string): unknown {
    if (this.#isUntouched(name)) return valueIn(this.#whole as Entry, name);
    return this.#fields.get(name)?.shown.value;
  }

  /** The shown values of all fields but some; a field that was taken away is left out. */
  shownWithout(left: ReadonlySet<string>): Record<string, unknown> {
    const shown: Record<string, unknown> = {};
    const whole = this.#whole === null ? {} : partsOf(this.#whole);
    for (const name of Object.keys(whole)) {
      if (whole[name] !== null && !this.#fields.has(name) && !left.has(name)) shown[name] = whole[name];
    }
    for (const [name, field] of this.#fields) {
      if (left.has(name)) continue;
      const { value } = field.shown;
      if (value !== null) shown[name] = value;
    }
    return shown;
  }

  /** Names of the fields in which people disagree, sorted. */
  get disputed(): string[] {
    const names: string[] = [];
    for (const [name, field] of this.#fields) if (field.disagrees) names.push(name);
    return names.sort();
  }

  /** Entries that remove the item and that no other has replaced. */
  get removals(): Entry[] {
    const removed = this.#fields.get(REMOVED);
    if (removed === undefined) return [];
    return removed.heads.filter((head) => head.value === true).map((head) => head.entry);
  }

  /** Edits that no author of a removal had seen, in the order of their stamps. Moving in the list is not an edit. */
  get editsUnseenByRemovals(): Entry[] {
    const removals = this.removals;
    if (removals.length === 0) return [];
    const seen = new Set(removals.flatMap((entry) => entry.seen));
    return this.#current((name) => !NO_EDIT.has(name)).filter((entry) => !seen.has(entry.id));
  }

  get isCreated(): boolean {
    return this.#whole !== null;
  }

  /** True when the item was created, and not removed by people who together had seen all of it. */
  get isPresent(): boolean {
    if (this.#whole === null) return false;
    const removed = this.#fields.get(REMOVED);
    if (removed === undefined || removed.heads.some((head) => head.value !== true)) return true;
    return this.editsUnseenByRemovals.length > 0;
  }

  /** Stamps of everything of the item that is current: what a removal must name as seen. */
  get currentStamps(): string[] {
    return this.#current(() => true).map((entry) => entry.id);
  }

  #current(counts: (name: string) => boolean): Entry[] {
    const found = new Map<string, Entry>();
    for (const [name, field] of this.#fields) {
      if (counts(name)) for (const { entry } of field.heads) found.set(entry.id, entry);
    }
    const whole = this.#whole;
    if (whole !== null && namesIn(whole).some((name) => this.#isUntouched(name) && counts(name))) {
      found.set(whole.id, whole);
    }
    return [...found.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
  }
}
