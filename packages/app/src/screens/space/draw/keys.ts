import type { Point } from '@undercroft/record';
import type { KeyboardEvent } from 'react';
import { arrowStep, arrowWay } from '../../../plan/arrow-step.ts';
import { anchorOf, shapeOf } from '../../../plan/shape.ts';
import { thingsOf } from '../../../plan/things.ts';
import { spanOf } from '../../../plan/viewport.ts';
import { wallsOf } from '../../../plan/walls.ts';
import { draftMode } from '../outline/draft-mode.ts';
import { EMPTY_DRAFTS } from '../outline/outline-draft.ts';
import { keepNudge, nudge, remove, selectedThing } from './actions.ts';
import type { DrawState, Editor } from './editor.ts';
import type { Mode } from './mode.ts';
import { tapped } from './tap.ts';

/** A key pressed exactly there is meant exactly there [m]. */
const NO_REACH_M = 1e-3;

/** Puts what is being placed at a point, as a tap would, without being drawn to anything. */
export function placeAt(editor: Editor, at: Point): Promise<void> {
  return tapped(editor, { at, reachM: NO_REACH_M, exact: true });
}

const isPlacing = ({ mode }: DrawState) =>
  mode?.is === 'place' || mode?.is === 'row' || mode?.is === 'corners' || mode?.is === 'move';

/** The last point that was set while something is drawn point by point. */
export function lastPoint({ mode, outline }: DrawState): Point | undefined {
  if (mode?.is === 'place' || mode?.is === 'row') return mode.points.at(-1);
  return mode?.is === 'corners' && outline?.by === 'grid' ? outline.corners.at(-1)?.at : undefined;
}

/** Where the crosshair begins: at the last point, on what is selected, or in the middle of the plan. */
function firstCursor(editor: Editor): Point {
  const { job } = editor.openJob.view;
  const last = lastPoint(editor.state);
  if (last !== undefined) return last;
  const thing = selectedThing(editor);
  const shape = thing === null ? null : shapeOf(thing, wallsOf(job));
  if (shape !== null) return anchorOf(shape);
  const span = spanOf(wallsOf(job)?.corners ?? []);
  return span === null
    ? { xM: 0, yM: 0 }
    : { xM: (span.leftM + span.rightM) / 2, yM: (span.bottomM + span.topM) / 2 };
}

/** Selects the next or previous thing of the plan. */
function step(editor: Editor, by: 1 | -1): void {
  const things = thingsOf(editor.openJob.view.job);
  if (things.length === 0) return;
  const { selection } = editor.state;
  const now = things.findIndex(({ kind, value }) => kind === selection?.kind && value.id === selection.id);
  const next =
    things[now < 0 ? (by > 0 ? 0 : things.length - 1) : (now + by + things.length) % things.length];
  editor.select({ kind: next.kind, id: next.value.id });
}

function takeBack(editor: Editor): boolean {
  const { mode, outline } = editor.state;
  if (mode?.is === 'place' || mode?.is === 'row') {
    editor.go({ ...mode, points: mode.points.slice(0, -1) });
    return true;
  }
  if (mode?.is === 'corners' && outline?.by === 'grid') {
    editor.keepOutline({ ...EMPTY_DRAFTS.grid, corners: outline.corners.slice(0, -1) });
    return true;
  }
  return false;
}

/** Goes one step back; nothing is lost by it. */
export function stepBack(editor: Editor): void {
  const { mode, selection } = editor.state;
  const mayStay = mode !== null && mode.is !== 'selected';
  editor.set({ mode: modeBefore(editor.state), selection: mayStay ? selection : null, nudge: null });
}

function modeBefore({ mode, outline }: DrawState): Mode | null {
  switch (mode?.is) {
    case undefined:
    case 'menu':
    case 'selected':
      return null;
    case 'exact':
      return mode.back;
    case 'form':
      return mode.field === undefined ? { is: 'selected' } : { is: 'form' };
    case 'move':
      return { is: 'selected' };
    case 'floor':
      return mode.field === undefined ? { is: 'menu' } : { is: 'floor' };
    case 'place':
      return mode.asking === undefined
        ? { is: 'menu' }
        : { is: 'place', spec: mode.spec, points: mode.points };
    case 'corners':
      return mode.picked === undefined ? { is: 'menu' } : { is: 'corners' };
    case 'rectangle':
      return mode.wall === undefined ? { is: 'menu' } : { is: 'rectangle' };
    case 'walls': {
      const began = outline !== null && outline.by !== 'grid' && outline.legs.length > 0;
      return mode.step !== 'turn' && began ? { is: 'walls', step: 'turn' } : { is: 'menu' };
    }
    case 'closing':
      if (outline === null) return { is: 'menu' };
      return outline.by === 'tape' ? { is: 'walls', step: 'turn' } : draftMode(outline);
    default:
      return { is: 'menu' };
  }
}

/** A key on the plan. True where it was used up; the caller then keeps it from the page. */
export function planKey(editor: Editor, event: KeyboardEvent): boolean {
  const used = keyOf(editor, event);
  if (used) event.preventDefault();
  return used;
}

function keyOf(editor: Editor, event: KeyboardEvent): boolean {
  const { state, openJob } = editor;
  const { key } = event;
  if ((event.ctrlKey || event.metaKey) && key.toLowerCase() === 'z') {
    void keepNudge(editor).then(() => (event.shiftKey ? openJob.redo() : openJob.undo()));
    return true;
  }
  if (event.ctrlKey || event.metaKey) return false;
  const by = arrowStep(event);
  if (by !== null) {
    const way = arrowWay(event) as Point;
    if (isPlacing(state)) {
      const from = state.cursor ?? firstCursor(editor);
      editor.set({ way, cursor: { xM: from.xM + by.xM, yM: from.yM + by.yM } });
      return true;
    }
    if (state.selection === null) return false;
    editor.set({ way });
    nudge(editor, by);
    return true;
  }
  if (key === '[' || key === ']') {
    void keepNudge(editor).then(() => step(editor, key === ']' ? 1 : -1));
    return true;
  }
  // The pad for an exact distance is opening: keys that come before it has the focus belong to it.
  if (state.mode?.is === 'exact' && key.length === 1) {
    editor.go({ ...state.mode, typed: state.mode.typed + key });
    return true;
  }
  if (/^[1-9.]$/.test(key)) return exact(editor, key);
  switch (key) {
    case 'Enter':
      if (isPlacing(state)) {
        void placeAt(editor, state.cursor ?? firstCursor(editor));
        return true;
      }
      if (state.selection === null) return false;
      editor.go({ is: 'form' });
      return true;
    case 'Backspace':
      return takeBack(editor);
    case 'Delete': {
      const thing = selectedThing(editor);
      if (thing !== null) void remove(editor, thing);
      return thing !== null;
    }
    case 'Escape':
      stepBack(editor);
      return true;
    case '?':
      editor.go({ is: 'keys' });
      return true;
    default:
      return false;
  }
}

/** A digit begins an exact distance: for the next point, or for what is selected. */
function exact(editor: Editor, digit: string): boolean {
  const { state } = editor;
  const { mode } = state;
  if (isPlacing(state) && mode?.is !== 'move') {
    const from = lastPoint(state) ?? state.cursor ?? firstCursor(editor);
    editor.go({ is: 'exact', typed: digit, from, back: mode });
    return true;
  }
  if (state.selection === null || mode?.is === 'exact') return false;
  editor.go({ is: 'exact', typed: digit, back: { is: 'selected' } });
  return true;
}
