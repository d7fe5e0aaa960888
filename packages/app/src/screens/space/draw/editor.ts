import type { Point } from '@undercroft/record';
import type { OpenJob } from '../../../jobs/open-job.ts';
import { isThingKind, type ThingRef } from '../../../plan/things.ts';
import type { Storage } from '../../../storage/storage.ts';
import { draftMode } from '../outline/draft-mode.ts';
import { hasWalls, keepOutlineDraft, type OutlineDraft, readOutlineDraft } from '../outline/outline-draft.ts';
import type { Mode } from './mode.ts';

export interface DrawState {
  /** Null where nothing is being drawn. */
  readonly mode: Mode | null;
  readonly selection: ThingRef | null;
  /** Where the keyboard would put something. */
  readonly cursor: Point | null;
  /** Direction of the last arrow key. */
  readonly way: Point;
  /** Moved by arrow keys and not kept yet [m]. */
  readonly nudge: Point | null;
  readonly outline: OutlineDraft | null;
  /** What was done last, for those who do not see it. */
  readonly said: string;
}

const REST: DrawState = {
  mode: null,
  selection: null,
  cursor: null,
  way: { xM: 1, yM: 0 },
  nudge: null,
  outline: null,
  said: '',
};

/** What is being drawn on the plan of a job. One for each open job, so that the parts of a screen see the same. */
export class Editor {
  readonly openJob: OpenJob;
  readonly #storage: Storage;
  readonly #listeners = new Set<() => void>();
  #state: DrawState = REST;

  constructor(openJob: OpenJob, storage: Storage) {
    this.openJob = openJob;
    this.#storage = storage;
    readOutlineDraft(storage, openJob.view.id).then((outline) => {
      if (outline === null || this.#state.outline !== null) return;
      // After a dead battery the walls stand there as they were, at the same step.
      const mode = this.#state.mode ?? (hasWalls(outline) ? draftMode(outline) : null);
      this.set({ outline, mode });
    });
  }

  get state(): DrawState {
    return this.#state;
  }

  subscribe(changed: () => void): () => void {
    this.#listeners.add(changed);
    return () => this.#listeners.delete(changed);
  }

  set(changes: Partial<DrawState>): void {
    this.#state = { ...this.#state, ...changes };
    for (const changed of this.#listeners) changed();
  }

  /** Goes to another step. A selection stays. */
  go(mode: Mode | null): void {
    this.set({ mode });
  }

  select(
    selection: ThingRef | null,
    mode: Mode | null = selection === null ? null : { is: 'selected' },
  ): void {
    this.set({ selection, mode, nudge: null });
  }

  /** The walls as they are drawn now; on the disk before anything else happens. */
  keepOutline(outline: OutlineDraft | null): void {
    this.set({ outline });
    // What the disk refuses here stays in memory; closing the walls goes through the job, which tells of its fault.
    keepOutlineDraft(this.#storage, this.openJob.view.id, outline).catch(() => undefined);
  }
}

const editors = new WeakMap<OpenJob, Editor>();

/** The editor of an open job. */
export function editorOf(openJob: OpenJob, storage: Storage): Editor {
  const known = editors.get(openJob);
  if (known !== undefined) return known;
  const editor = new Editor(openJob, storage);
  editors.set(openJob, editor);
  return editor;
}

/** The thing that an address names, e.g. `pier:abc`; null for what is none. */
export function refOf(place: string | undefined): ThingRef | null {
  const [kind, id] = (place ?? '').split(':');
  return id !== undefined && id !== '' && isThingKind(kind) ? { kind, id } : null;
}
