import type { Change, Point } from '@undercroft/record';
import { randomName } from '../../../jobs/author.ts';
import type { CommitResult } from '../../../jobs/open-job.ts';
import { movedFields, settingOf } from '../../../plan/move.ts';
import { findThing, LISTS, type Thing, type ThingRef } from '../../../plan/things.ts';
import { wallsOf } from '../../../plan/walls.ts';
import type { Editor } from './editor.ts';
import type { KindSpec } from './kinds.ts';

type Value = Readonly<Record<string, unknown>>;

const jobOf = (editor: Editor) => editor.openJob.view.job;

/** The thing that is selected, as it stands; null where it is gone. */
export const selectedThing = ({ openJob, state }: Editor): Thing | null =>
  findThing(openJob.view.job, state.selection);

/** What a new thing of a kind is taken to be: its start, and what the last one of the kind was. */
export function startOf(editor: Editor, { kind, start, carries }: KindSpec): Value {
  const list = (jobOf(editor)?.plan[LISTS[kind]] ?? []) as readonly Value[];
  const last = list.findLast((value) => start.kind === undefined || value.kind === start.kind);
  const carried = carries
    .filter((field) => last?.[field] !== undefined)
    .map((field) => [field, last?.[field]]);
  return { ...start, ...Object.fromEntries(carried) };
}

/** Puts a thing on the plan and selects it. Gives its name, or null where it was not taken. */
export async function create(editor: Editor, spec: KindSpec, value: Value): Promise<ThingRef | null> {
  const item = randomName(16);
  const result = await editor.openJob.commit({ do: 'create', kind: spec.kind, item, value });
  if ('issues' in result) return null;
  const selection = { kind: spec.kind, id: item };
  editor.set({ selection });
  return selection;
}

/** Puts several things of a kind on the plan at once. */
export async function createAll(
  editor: Editor,
  spec: KindSpec,
  values: readonly Value[],
): Promise<CommitResult> {
  const changes = values.map(
    (value): Change => ({ do: 'create', kind: spec.kind, item: randomName(16), value }),
  );
  return editor.openJob.commit(...changes);
}

/** Sets one fact of a thing; `at` is its path in the record. Nothing takes it away. */
export function setFact(editor: Editor, thing: Thing, at: string, to: unknown): Promise<CommitResult> {
  const [field, ...rest] = at.split('.');
  const value = rest.length === 0 ? to : within((thing.value as Value)[field], rest, to);
  return editor.openJob.commit(...settingOf(thing, { [field]: value === undefined ? null : value }));
}

/** A value with a part deep inside replaced; what becomes empty goes away. */
export function within(value: unknown, [field, ...rest]: readonly string[], to: unknown): unknown {
  const { [field]: old, ...others } = (value ?? {}) as Value;
  const part = rest.length === 0 ? to : within(old, rest, to);
  const whole = part === undefined || part === null ? others : { ...others, [field]: part };
  return Object.keys(whole).length === 0 ? undefined : whole;
}

/** The fact at a path of the record. */
export function factOf(value: Value, at: string): unknown {
  return at.split('.').reduce<unknown>((part, field) => (part as Value | undefined)?.[field], value);
}

/** Moves a thing. Gives false where nothing changed. */
export async function moveBy(editor: Editor, thing: Thing, by: Point): Promise<boolean> {
  if (by.xM === 0 && by.yM === 0) return false;
  const fields = movedFields(thing, by, wallsOf(jobOf(editor)));
  if (fields === null) return false;
  const result = await editor.openJob.commit(...settingOf(thing, fields));
  return !('issues' in result);
}

/** So far a copy stands from its original, that both can be seen [m]: two feet. */
const BESIDE = { xM: 0.6096, yM: 0 } as const;

/** Copies a thing beside itself and selects the copy. */
export async function duplicate(editor: Editor, thing: Thing): Promise<void> {
  const { id: _, ...value } = thing.value;
  const fields = movedFields(thing, BESIDE, wallsOf(jobOf(editor))) ?? {};
  const item = randomName(16);
  const result = await editor.openJob.commit({
    do: 'create',
    kind: thing.kind,
    item,
    value: { ...value, ...fields },
    after: thing.value.id,
  });
  if (!('issues' in result)) editor.select({ kind: thing.kind, id: item });
}

/** Takes a thing off the plan; undo brings it back. */
export async function remove(editor: Editor, { kind, value }: Thing): Promise<void> {
  const result = await editor.openJob.commit({ do: 'remove', kind, item: value.id });
  if (!('issues' in result)) editor.select(null);
}

/** Keys come faster than entries should: steps of the arrow keys are kept together after this pause [ms]. */
const NUDGE_MS = 500;

const timers = new WeakMap<Editor, ReturnType<typeof setTimeout>>();

/** Moves what is selected by a step; shown at once, kept when the keys rest. */
export function nudge(editor: Editor, step: Point): void {
  const before = editor.state.nudge ?? { xM: 0, yM: 0 };
  editor.set({ nudge: { xM: before.xM + step.xM, yM: before.yM + step.yM } });
  clearTimeout(timers.get(editor));
  timers.set(
    editor,
    setTimeout(() => void keepNudge(editor), NUDGE_MS),
  );
}

/** Keeps at once what the arrow keys have moved. */
export async function keepNudge(editor: Editor): Promise<void> {
  clearTimeout(timers.get(editor));
  const { nudge: by } = editor.state;
  const thing = selectedThing(editor);
  if (by === null || thing === null) return;
  await moveBy(editor, thing, by);
  editor.set({ nudge: null });
}
