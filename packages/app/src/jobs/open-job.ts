import {
  type Change,
  type Disagreement,
  type Entry,
  type Job,
  JobLog,
  type RecordIssue,
  type Side,
  settleWith,
  writeEntry,
} from '@undercroft/record';
import { type Storage, StorageError, type StorageFault } from '../storage/storage.ts';
import type { Authors } from './author.ts';
import type { Channel } from './channel.ts';
import { againOf, inverseOf } from './inverse.ts';
import { cardOf, titleOf } from './job-card.ts';

/** `saved`: on this device's disk. `unsaved`: the disk refused, and the change waits in memory for `retry`. */
export type SaveState =
  | { readonly is: 'saved' }
  | { readonly is: 'saving' }
  | { readonly is: 'unsaved'; readonly fault: StorageFault; readonly waiting: number };

/** An open job as the screens see it. A new object after each change, the same one between changes. */
export interface JobView {
  readonly id: string;
  readonly title: string;
  /** Null where the log is damaged beyond a header. May stand without walls: `isSurveyed` of the record tells. */
  readonly job: Job | null;
  /** Grows with each entry: equal versions of one job are equal. */
  readonly version: number;
  readonly log: JobLog;
  readonly issues: readonly RecordIssue[];
  /** What two people decided without having seen each other. */
  readonly disagreements: readonly Disagreement[];
  readonly save: SaveState;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** True when another tab wrote entries that only a newer version of the app understands. */
  readonly outdated: boolean;
}

/** What a commit did: it is on the disk, it breaks the schema, or the disk refused. */
export type CommitResult =
  | { readonly ok: true }
  | { readonly ok: false; readonly issues: readonly RecordIssue[] }
  | { readonly ok: false; readonly fault: StorageFault };

interface Step {
  readonly undo: readonly Change[];
  readonly redo: readonly Change[];
}

interface Waiting {
  readonly entries: readonly Entry[];
  readonly after: () => void;
}

/** One job that is open in this tab. Writes one after the other, each on the disk before it shows. */
export class OpenJob {
  /** What is on the disk. */
  readonly #log: JobLog;
  /** The same, with what waits for the disk: what the next change is written against. */
  #ahead: JobLog;
  readonly #demo: boolean;
  readonly #storage: Storage;
  readonly #channel: Channel;
  readonly #authors: Authors;
  readonly #listeners = new Set<() => void>();
  #undo: Step[] = [];
  #redo: Step[] = [];
  #save: SaveState = { is: 'saved' };
  #waiting: Waiting[] = [];
  #queue: Promise<unknown> = Promise.resolve();
  #outdated = false;
  #view: JobView;

  constructor(
    log: JobLog,
    demo: boolean,
    { storage, channel, authors }: { storage: Storage; channel: Channel; authors: Authors },
  ) {
    this.#log = log;
    this.#ahead = new JobLog(log.jobId, log.entries());
    this.#demo = demo;
    this.#storage = storage;
    this.#channel = channel;
    this.#authors = authors;
    this.#view = this.#look();
    channel.listen((message) => {
      if (message.about === 'entries' && message.jobId === log.jobId) this.#take(message.entries);
    });
  }

  get view(): JobView {
    return this.#view;
  }

  subscribe(changed: () => void): () => void {
    this.#listeners.add(changed);
    return () => this.#listeners.delete(changed);
  }

  /**
   * Does one thing that a person decided: one change or several that belong together. Resolves when it is on the disk.
   * Changes that break the schema are not written at all.
   */
  commit(...changes: readonly Change[]): Promise<CommitResult> {
    return this.#inTurn(() => this.#write(changes, (step) => this.#done(step)));
  }

  undo(): Promise<CommitResult> {
    return this.#inTurn(async () => {
      const step = this.#undo.at(-1);
      if (step === undefined) return { ok: true };
      return this.#write(step.undo, () => {
        this.#undo = this.#undo.filter((other) => other !== step);
        this.#redo = [...this.#redo, step];
      });
    });
  }

  redo(): Promise<CommitResult> {
    return this.#inTurn(async () => {
      const step = this.#redo.at(-1);
      if (step === undefined) return { ok: true };
      return this.#write(step.redo, () => {
        this.#redo = this.#redo.filter((other) => other !== step);
        this.#undo = [...this.#undo, step];
      });
    });
  }

  /** Settles a disagreement in favor of one side. */
  settle(disagreement: Disagreement, side: Side): Promise<CommitResult> {
    return this.commit(settleWith(disagreement, side));
  }

  /** Tries again to keep what the disk refused. */
  retry(): Promise<CommitResult> {
    return this.#inTurn(() => this.#keepWaiting());
  }

  /** Reads what other tabs wrote while this one slept. */
  refresh(): Promise<void> {
    return this.#inTurn(async () => this.#take(await this.#storage.entries(this.#log.jobId)));
  }

  /** All entries, those included that wait for the disk: what a rescue file must hold. */
  entriesWithWaiting(): Entry[] {
    return [...this.#log.entries(), ...this.#waiting.flatMap((one) => one.entries)];
  }

  #inTurn<T>(work: () => Promise<T>): Promise<T> {
    const turn = this.#queue.then(work);
    this.#queue = turn.catch(() => undefined);
    return turn;
  }

  #done(step: Step | null): void {
    if (step !== null) this.#undo = [...this.#undo, step];
    this.#redo = [];
  }

  async #write(changes: readonly Change[], after: (step: Step | null) => void): Promise<CommitResult> {
    const entries: Entry[] = [];
    const undo: (Change | null)[] = [];
    for (const change of changes) {
      undo.unshift(inverseOf(this.#ahead, change));
      const written = writeEntry(this.#ahead, this.#authors(), change);
      if ('issues' in written) {
        if (entries.length > 0) this.#ahead = new JobLog(this.#log.jobId, this.entriesWithWaiting());
        return { ok: false, issues: written.issues };
      }
      entries.push(written.entry);
      this.#ahead.add(written.entry);
    }
    const whole = undo.filter((change) => change !== null);
    const step = whole.length < undo.length ? null : { undo: whole, redo: changes.map(againOf) };
    this.#waiting.push({ entries, after: () => after(step) });
    return this.#keepWaiting();
  }

  async #keepWaiting(): Promise<CommitResult> {
    const waiting = this.#waiting;
    if (waiting.length === 0) return { ok: true };
    this.#show({ is: 'saving' });
    const entries = waiting.flatMap((one) => one.entries);
    try {
      await this.#storage.append(cardOf(this.#ahead, this.#authors().deviceTime, this.#demo), entries);
    } catch (error) {
      const fault = error instanceof StorageError ? error.fault : 'failed';
      this.#show({ is: 'unsaved', fault, waiting: entries.length });
      return { ok: false, fault };
    }
    this.#waiting = [];
    for (const entry of entries) this.#log.add(entry);
    for (const one of waiting) one.after();
    this.#show({ is: 'saved' });
    this.#channel.tell({ about: 'entries', jobId: this.#log.jobId, entries });
    return { ok: true };
  }

  #take(entries: readonly Entry[]): void {
    let taken = false;
    for (const entry of entries) {
      try {
        if (this.#log.add(entry) !== 'known') taken = true;
        this.#ahead.add(entry);
      } catch {
        // An entry of a newer record version: it stays untouched on the disk.
        if (!this.#outdated) taken = true;
        this.#outdated = true;
      }
    }
    if (taken) this.#show(this.#save);
  }

  #show(save: SaveState): void {
    this.#save = save;
    this.#view = this.#look();
    for (const changed of this.#listeners) changed();
  }

  #look(): JobView {
    const { job, issues } = this.#log.fold();
    return {
      id: this.#log.jobId,
      title: titleOf(this.#log),
      job,
      version: this.#log.size,
      log: this.#log,
      issues,
      disagreements: this.#log.disagreements(),
      save: this.#save,
      canUndo: this.#undo.length > 0,
      canRedo: this.#redo.length > 0,
      outdated: this.#outdated,
    };
  }
}
