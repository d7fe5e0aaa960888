import { geometry } from '@undercroft/engine';
import type { Point } from '@undercroft/record';
import { randomName } from '../../../jobs/author.ts';
import { hitsAt, nextHit } from '../../../plan/hit.ts';
import { offsetAt } from '../../../plan/move.ts';
import { anchorOf, shapeOf } from '../../../plan/shape.ts';
import { onNearestWall, snap, snapTargets } from '../../../plan/snap.ts';
import { wallsOf } from '../../../plan/walls.ts';
import { currentSettings } from '../../../settings/settings.ts';
import { cornersOf, EMPTY_DRAFTS } from '../outline/outline-draft.ts';
import { create, keepNudge, moveBy, selectedThing, setFact, startOf } from './actions.ts';
import type { DrawState, Editor } from './editor.ts';
import { type FieldSpec, type KindSpec, specById, specOf } from './kinds.ts';
import type { Mode } from './mode.ts';

/** Grids to which places are drawn [m], the finest first: inches and feet, or metric. */
const GRIDS = {
  us: [0.0254, 0.0762, 0.1524, 0.3048, 0.6096],
  si: [0.02, 0.05, 0.1, 0.25, 0.5],
} as const;

/** The grid that a finger can hit where it reaches so far: about a quarter of the reach. */
export function gridFor(reachM: number): number {
  const grids: readonly number[] = GRIDS[currentSettings().units];
  return grids.find((grid) => grid >= reachM / 4) ?? (grids.at(-1) as number);
}

/** A wall is meant by a tap up to so many times the reach away from it. */
const WALL_REACH = 3;

/** A key puts something on the nearest wall, however far [m]. */
const FAR_M = 1000;

interface Tap {
  readonly at: Point;
  readonly reachM: number;
  /** Meant exactly there: drawn to nothing. */
  readonly exact?: true;
}

/** Drawn to the corners, walls, rows and the grid, and square to the last place where it is nearly so. */
export function snapped({ openJob, state }: Editor, { at, reachM, exact }: Tap, from?: Point): Point {
  if (exact) return at;
  const { job } = openJob.view;
  const moved = state.mode?.is === 'move' ? state.selection : null;
  const targets = snapTargets(job, wallsOf(job), gridFor(reachM), moved);
  return snap({ ...targets, last: from }, at, reachM).at;
}

/** The plan was tapped: what that means depends on what is being done. */
export async function tapped(editor: Editor, tap: Tap): Promise<void> {
  const { state } = editor;
  const { mode } = state;
  if (state.nudge !== null) await keepNudge(editor);
  editor.set({ cursor: null });
  switch (mode?.is) {
    case 'place': {
      const spec = specById(mode.spec);
      return spec === undefined || mode.asking !== undefined ? undefined : place(editor, spec, mode, tap);
    }
    case 'row': {
      const points = mode.points.length === 2 ? [] : mode.points;
      return editor.go({ is: 'row', points: [...points, snapped(editor, tap, points[0])] });
    }
    case 'corners':
      return corner(editor, mode, tap);
    case 'move': {
      const thing = selectedThing(editor);
      const shape = thing === null ? null : shapeOf(thing, wallsOf(editor.openJob.view.job));
      if (thing === null || shape === null) return editor.select(null);
      const [from, to] = [anchorOf(shape), snapped(editor, tap)];
      await moveBy(editor, thing, { xM: to.xM - from.xM, yM: to.yM - from.yM });
      return editor.go({ is: 'selected' });
    }
    case 'form':
      if (await aimed(editor, mode, tap)) return;
      return select(editor, tap);
    case 'rectangle':
      return pickWall(editor, tap);
    case 'walls':
    case 'closing':
    case 'exact':
      return;
    default:
      return select(editor, tap);
  }
}

function select(editor: Editor, { at, reachM }: Tap): void {
  const { job } = editor.openJob.view;
  const hit = nextHit(hitsAt(job, wallsOf(job), at, reachM), editor.state.selection);
  if (hit !== null) editor.select({ kind: hit.kind, id: hit.value.id });
  else editor.select(null, editor.state.mode === null ? null : { is: 'menu' });
}

/** While a direction is asked for, a tap says it. */
async function aimed(editor: Editor, mode: Mode & { is: 'form' }, { at }: Tap): Promise<boolean> {
  const thing = selectedThing(editor);
  const field = thing === null ? undefined : specOf(thing).fields.find((one) => one.at === mode.field);
  if (thing === null || field?.is !== 'bearing') return false;
  const shape = shapeOf(thing, wallsOf(editor.openJob.view.job));
  const from = shape === null ? null : anchorOf(shape);
  const deg = from === null ? null : geometry.directionDeg(at.xM - from.xM, at.yM - from.yM);
  if (deg === null) return false;
  await setFact(editor, thing, field.at, Math.round(deg) % 360);
  editor.go({ is: 'form' });
  return true;
}

async function place(
  editor: Editor,
  spec: KindSpec,
  mode: DrawState['mode'] & { is: 'place' },
  tap: Tap,
): Promise<void> {
  const start = startOf(editor, spec);
  switch (spec.placing) {
    case 'point': {
      return make(editor, spec, mode, { ...start, at: snapped(editor, tap) });
    }
    case 'two-points': {
      const [from] = mode.points;
      const at = snapped(editor, tap, from);
      if (from === undefined) return editor.go({ ...mode, points: [at] });
      if (geometry.distanceM(from, at) === 0) return;
      return make(editor, spec, mode, { ...start, from, to: at });
    }
    case 'path':
    case 'area': {
      const at = snapped(editor, tap, mode.points.at(-1));
      const closes = spec.placing === 'area' && mode.points.length >= 3;
      if (closes && geometry.distanceM(mode.points[0], tap.at) <= tap.reachM) return finish(editor);
      if (mode.points.some((point) => geometry.distanceM(point, at) === 0)) return;
      return editor.go({ ...mode, points: [...mode.points, at] });
    }
    case 'on-wall':
    case 'wall':
      return placeOnWall(editor, spec, start, tap);
    case 'none':
      return;
  }
}

async function placeOnWall(
  editor: Editor,
  spec: KindSpec,
  start: Readonly<Record<string, unknown>>,
  { at, reachM, exact }: Tap,
): Promise<void> {
  const { job } = editor.openJob.view;
  const spot = onNearestWall(wallsOf(job)?.edges ?? [], at, exact ? FAR_M : WALL_REACH * reachM);
  if (spot?.wall.id === undefined) return;
  const wallId = spot.wall.id;
  if (spec.placing === 'wall') {
    const known = job?.plan.walls.find((facts) => facts.wallId === wallId);
    const ref =
      known === undefined
        ? await create(editor, spec, { ...start, wallId })
        : { kind: 'wall' as const, id: known.id };
    if (ref !== null) editor.select(ref, { is: 'form' });
    return;
  }
  const widthM = start.widthM as number;
  const grid = gridFor(reachM);
  const offsetM = Math.round(Math.round(offsetAt(spot, widthM) / grid) * grid * 1e6) / 1e6;
  await create(editor, spec, { ...start, wallId, offsetM });
}

/** Whether the points tapped so far make a thing. */
export function canFinish(spec: KindSpec, points: readonly Point[]): boolean {
  return spec.placing === 'path' ? points.length >= 2 : spec.placing === 'area' && points.length >= 3;
}

/** Makes a thing of the points that were tapped. */
export async function finish(editor: Editor): Promise<void> {
  const { mode } = editor.state;
  const spec = mode?.is === 'place' ? specById(mode.spec) : undefined;
  if (mode?.is !== 'place' || spec === undefined || !canFinish(spec, mode.points)) return;
  const { points } = mode;
  const shape =
    spec.placing === 'area'
      ? { outline: points }
      : { path: spec.kind === 'drain' ? points.map((at) => ({ at })) : points };
  await make(editor, spec, mode, { ...startOf(editor, spec), ...shape });
}

/** Puts a thing on the plan; first asks for a fact that it cannot do without. */
export async function make(
  editor: Editor,
  spec: KindSpec,
  mode: Mode & { is: 'place' },
  value: Readonly<Record<string, unknown>>,
): Promise<void> {
  if (missingOf(spec, value) !== undefined) return editor.go({ ...mode, asking: value });
  editor.go({ is: 'place', spec: spec.id, points: [] });
  await create(editor, spec, value);
}

/** The first fact that a thing cannot do without and lacks. */
export function missingOf(
  { fields }: KindSpec,
  value: Readonly<Record<string, unknown>>,
): FieldSpec | undefined {
  return fields.find(
    ({ at, required, when }) =>
      required === true && !at.includes('.') && value[at] === undefined && (when?.(value) ?? true),
  );
}

/** The wall of a rectangle in the making that was tapped. */
function pickWall(editor: Editor, { at, reachM }: Tap): void {
  const { outline } = editor.state;
  if (outline === null || outline.by === 'grid') return;
  const corners = cornersOf(outline);
  const walls = outline.legs.map((_, i) => ({
    wall: i,
    away: geometry.distanceToSegmentM(at, corners[i], corners[i + 1]),
  }));
  const nearest = walls.reduce((a, b) => (b.away < a.away ? b : a), { wall: -1, away: WALL_REACH * reachM });
  if (nearest.wall >= 0) editor.go({ is: 'rectangle', wall: nearest.wall });
}

function corner(editor: Editor, mode: Mode & { is: 'corners' }, tap: Tap): void {
  const before = editor.state.outline;
  const draft = before?.by === 'grid' ? before : EMPTY_DRAFTS.grid;
  const { corners } = draft;
  const last = corners.at(-1)?.at;
  const { picked } = mode;
  if (picked !== undefined) {
    const at = snapped(editor, tap, corners[(picked + corners.length - 1) % corners.length]?.at);
    editor.keepOutline({ ...draft, corners: corners.map((one, i) => (i === picked ? { ...one, at } : one)) });
    editor.go({ is: 'corners' });
    return;
  }
  const hit = corners.findIndex(({ at }) => geometry.distanceM(at, tap.at) <= tap.reachM);
  if (hit === 0 && corners.length >= 3) editor.go({ is: 'closing' });
  else if (hit >= 0) editor.go({ is: 'corners', picked: hit });
  else {
    const at = snapped(editor, tap, last);
    editor.keepOutline({ ...draft, corners: [...corners, { id: randomName(16), at }] });
  }
}
