import fc from 'fast-check';
import { type Author, type Change, type Entry, JobLog, settleWith, writeEntry } from '../../src/index.ts';
import { authorOn, START_MS, smallLog } from '../small-job.ts';

/** One step of a program: somebody edits, or something of what one device has reaches another. */
export type Step =
  | {
      readonly step: 'edit';
      readonly device: number;
      readonly what: number;
      readonly picks: readonly number[];
    }
  | {
      readonly step: 'send';
      readonly from: number;
      readonly to: number;
      /** Which entries arrive and in what order: a pick for each delivery. Some never do, some twice. */
      readonly picks: readonly number[];
    }
  | { readonly step: 'sync'; readonly from: number; readonly to: number }
  | { readonly step: 'clock'; readonly device: number; readonly offMs: number };

const DAY_MS = 24 * 3600 * 1000;
const device = fc.nat(4);
const pick = fc.nat(9999);

export const step: fc.Arbitrary<Step> = fc.oneof(
  {
    weight: 12,
    arbitrary: fc.record({
      step: fc.constant('edit' as const),
      device,
      what: fc.nat(99),
      picks: fc.array(pick, { minLength: 4, maxLength: 4 }),
    }),
  },
  {
    weight: 4,
    arbitrary: fc.record({
      step: fc.constant('send' as const),
      from: device,
      to: device,
      picks: fc.array(pick, { maxLength: 30 }),
    }),
  },
  { weight: 2, arbitrary: fc.record({ step: fc.constant('sync' as const), from: device, to: device }) },
  {
    weight: 1,
    arbitrary: fc.record({
      step: fc.constant('clock' as const),
      device,
      offMs: fc.constantFrom(
        0,
        0,
        -1500,
        90_000,
        -2 * DAY_MS,
        20 * 3600 * 1000,
        2 * DAY_MS,
        365 * DAY_MS,
        -365 * DAY_MS,
      ),
    }),
  },
);

const NOTES = ['dry', 'damp', 'wet', null];

function from<T>(list: readonly T[], at: number): T {
  return list[at % list.length];
}

/** The change that picks stand for, as the device sees its log. Some are refused: that is part of the program. */
function changeOf(log: JobLog, what: number, [a, b, c, d]: readonly number[]): Change {
  const kind = from(['pier', 'pier', 'pier', 'seam'], a);
  const item = `${kind}${1 + (b % 7)}`;
  const open = log.disagreements();
  if (what < 8 && open.length > 0) {
    const one = from(open, c);
    return settleWith(one, from(one.sides, d));
  }
  if (what < 20) {
    const path = [
      { xM: 0, yM: a % 9 },
      { xM: 3, yM: b % 9 },
    ];
    const value =
      kind === 'pier' ? { at: path[0], widthM: (1 + (c % 5)) / 10 } : { path, lapM: (d % 4) / 10 };
    return { do: 'create', kind, item, value, ...(d % 3 === 0 ? { after: null } : {}) };
  }
  if (what < 30) return { do: 'remove', kind, item };
  if (what < 36) return { do: 'restore', kind, item };
  if (what < 52) return { do: 'move', kind, item, after: c % 4 === 0 ? null : `${kind}${1 + (d % 7)}` };
  if (what < 60)
    return { do: 'set', kind: 'house', item: 'house', field: 'cooled', value: from([true, false, null], c) };
  if (what < 75) return { do: 'set', kind, item, field: 'note', value: from(NOTES, c) };
  return { do: 'set', kind, item, field: kind === 'pier' ? 'widthM' : 'lapM', value: (1 + (c % 6)) / 10 };
}

/** Devices that edit and send, and every entry that was ever written. */
export class Crew {
  readonly logs: readonly JobLog[];
  readonly written: Entry[] = smallLog();
  /** How many changes were refused. */
  refused = 0;
  readonly #offMs: number[];
  #step = 0;

  constructor(devices: number) {
    this.logs = Array.from({ length: devices }, () => new JobLog('small', smallLog()));
    this.#offMs = this.logs.map(() => 0);
  }

  /** Several steps fall into one millisecond. */
  #author(index: number): Author {
    return authorOn(`device${index}`, START_MS + Math.floor(this.#step / 3) + this.#offMs[index]);
  }

  run(one: Step): void {
    const count = this.logs.length;
    this.#step += 1;
    switch (one.step) {
      case 'clock':
        this.#offMs[one.device % count] = one.offMs;
        return;
      case 'edit': {
        const index = one.device % count;
        const log = this.logs[index];
        const made = writeEntry(log, this.#author(index), changeOf(log, one.what, one.picks));
        if (!('entry' in made)) {
          this.refused += 1;
          return;
        }
        this.written.push(made.entry);
        log.add(made.entry);
        return;
      }
      case 'send': {
        const entries = this.logs[one.from % count].entries();
        for (const at of one.picks) this.logs[one.to % count].add(from(entries, at));
        return;
      }
      case 'sync':
        for (const entry of this.logs[one.from % count].entries()) this.logs[one.to % count].add(entry);
    }
  }

  /** Everybody gets everything, each from another side. */
  reunite(): void {
    this.logs.forEach((log, index) => {
      const turned = [...this.written.slice(index * 7), ...this.written.slice(0, index * 7)];
      for (const entry of index % 2 === 0 ? turned : turned.reverse()) log.add(entry);
    });
  }
}
