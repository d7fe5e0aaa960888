import { geometry, type plan } from '@undercroft/engine';
import type { Job, Point } from '@undercroft/record';
import { along, distanceTo, shapeOf } from './shape.ts';
import { findThing, type ThingRef, thingsOf } from './things.ts';

/** What a place was drawn to. */
export type SnapTo = 'corner' | 'wall' | 'row' | 'thing' | 'grid';

export interface Snapped {
  readonly at: Point;
  readonly to: readonly SnapTo[];
  /** Lines that show why, from what it was drawn to. */
  readonly guides: readonly (readonly [Point, Point])[];
}

/** What places may be drawn to, gathered once before something is placed or dragged. */
export interface SnapTargets {
  readonly corners: readonly Point[];
  readonly walls: readonly plan.OutlineEdge[];
  /** Middles of piers and ends of girders: rows along the axes of the plan. */
  readonly rows: readonly Point[];
  /** The place before, to which the next one is mostly square. */
  readonly last?: Point | undefined;
  readonly gridM: number;
}

/** @param without the thing that is moved, which is not drawn to itself */
export function snapTargets(
  job: Job | null,
  walls: plan.ResolvedOutline | null,
  gridM: number,
  without: ThingRef | null = null,
): SnapTargets {
  const rows = thingsOf(job).flatMap(({ kind, value }): Point[] => {
    if (value.id === without?.id && kind === without.kind) return [];
    if (kind === 'pier') return [value.at];
    return kind === 'girder' || kind === 'interior-wall' ? [value.from, value.to] : [];
  });
  return { corners: walls?.corners ?? [], walls: walls?.edges ?? [], rows, gridM };
}

const near = (a: number, b: number) => Math.abs(a - b);

/** The target nearest to a coordinate, within reach. */
function nearest(targets: readonly Point[], axis: 'xM' | 'yM', value: number, reachM: number): Point | null {
  let best: Point | null = null;
  for (const target of targets) {
    const away = near(target[axis], value);
    if (away <= reachM && (best === null || away < near(best[axis], value))) best = target;
  }
  return best;
}

/** A micrometer is finer than any tape. */
const micro = (meters: number) => Math.round(meters * 1e6) / 1e6;

const tidy = ({ xM, yM }: Point): Point => ({ xM: micro(xM), yM: micro(yM) });

const onGrid = (value: number, gridM: number) => micro(Math.round(value / gridM) * gridM);

/**
 * A place drawn to a corner within reach; else into a row with piers, along each axis by itself; else onto a wall; and
 * what is left free, onto the grid.
 */
export function snap(targets: SnapTargets, at: Point, reachM: number): Snapped {
  const corner = targets.corners.find((c) => geometry.distanceM(c, at) <= reachM);
  if (corner !== undefined) return { at: corner, to: ['corner'], guides: [] };
  const last = targets.last === undefined ? [] : [targets.last];
  const rowOn = (axis: 'xM' | 'yM') =>
    nearest(targets.rows, axis, at[axis], reachM / 2) ?? nearest(last, axis, at[axis], reachM);
  let column = rowOn('xM');
  let row = rowOn('yM');
  // Drawn to the last place along both axes it would be that place again: a short side could not be tapped.
  const again = column === row && column === targets.last ? column : null;
  if (again !== null && geometry.distanceM(again, at) > reachM / 3) {
    if (near(again.xM, at.xM) < near(again.yM, at.yM)) row = null;
    else column = null;
  }
  if (column === null && row === null) {
    const wall = onNearestWall(targets.walls, at, reachM / 2);
    if (wall !== null) return { at: tidy(wall.at), to: ['wall'], guides: [] };
  }
  const snapped = {
    xM: column?.xM ?? onGrid(at.xM, targets.gridM),
    yM: row?.yM ?? onGrid(at.yM, targets.gridM),
  };
  const guides = [column, row].flatMap((target) => (target === null ? [] : [[target, snapped] as const]));
  return { at: snapped, to: [...(guides.length > 0 ? (['row'] as const) : []), 'grid'], guides };
}

/** A place on a wall: which wall, how far from its start [m], and where that is. */
export interface OnWall {
  readonly wall: plan.OutlineEdge;
  readonly offsetM: number;
  readonly at: Point;
}

/** The wall nearest to a place; null where none is within reach. */
export function onNearestWall(walls: readonly plan.OutlineEdge[], at: Point, reachM: number): OnWall | null {
  let best: OnWall | null = null;
  let least = reachM;
  for (const wall of walls) {
    const nearestAt = geometry.nearestOnSegment(at, wall.from, wall.to);
    const away = geometry.distanceM(at, nearestAt);
    if (away > least) continue;
    least = away;
    best = { wall, offsetM: geometry.distanceM(wall.from, nearestAt), at: nearestAt };
  }
  return best;
}

/** Clear lines from a place to the first wall on each side, along the axes of the plan, as the tape would be held. */
export function tapeLines(walls: plan.ResolvedOutline | null, at: Point): (readonly [Point, Point])[] {
  if (walls === null) return [];
  return [
    { xM: -1, yM: 0 },
    { xM: 0, yM: -1 },
  ].flatMap((way) => {
    const far = { xM: at.xM + way.xM * 1000, yM: at.yM + way.yM * 1000 };
    let least = Number.POSITIVE_INFINITY;
    for (const { from, to } of walls.edges) least = Math.min(least, crossingM(at, way, from, to));
    return least > 1e-3 && Number.isFinite(least) ? [[at, along(at, far, least)] as const] : [];
  });
}

/** How far along a direction (one of the axes) a line from a place meets a wall [m]; infinite where it does not. */
function crossingM(at: Point, way: Point, from: Point, to: Point): number {
  const [run, side] = way.xM === 0 ? (['yM', 'xM'] as const) : (['xM', 'yM'] as const);
  const [a, b] = [from[side] - at[side], to[side] - at[side]];
  if (a > 0 === b > 0 || a === b) return Number.POSITIVE_INFINITY;
  const meets = from[run] + ((to[run] - from[run]) * a) / (a - b);
  const distance = (meets - at[run]) * (way[run] as number);
  return distance >= 0 ? distance : Number.POSITIVE_INFINITY;
}

/** Whether a place lies within reach of the thing that is selected. */
export function isOn(
  job: Job | null,
  walls: plan.ResolvedOutline | null,
  ref: ThingRef | null,
  at: Point,
  reachM: number,
): boolean {
  const thing = findThing(job, ref);
  const shape = thing === null ? null : shapeOf(thing, walls);
  return shape !== null && distanceTo(shape, at) <= reachM;
}
