import { distanceM, type Point, SAME_PLACE_M } from '../geometry/point.ts';
import { distanceToSegmentM, nearestOnSegment } from '../geometry/segment-distance.ts';
import { type Blockers, isOpenFloor } from './blockers.ts';
import type { CompiledScene } from './compiled-scene.ts';

/** A mark this far inside a wall or pier is a slip of the finger, m. Common practice, no source. */
export const SLIP_M = 0.3;
/** How far off the surface a slipped mark is put, m. */
const OFF_SURFACE_M = 0.01;

/**
 * Where someone stands who marked a place: there, if it is open floor or on a surface; else on the nearest open floor
 * when that is at most 0.3 m away; else nowhere (null).
 */
export function standingPlace({ solids, blockers }: CompiledScene, at: Point): Point | null {
  if (isOpenFloor(solids, at.xM, at.yM)) return at;
  let nearest: Point | null = null;
  let least = SLIP_M;
  for (let i = 0; i < blockers.count; i += 1) {
    const on = nearestOnSegment(at, startOf(blockers, i), endOf(blockers, i));
    const away = distanceM(at, on);
    if (away <= SAME_PLACE_M) return at;
    if (away >= least) continue;
    least = away;
    nearest = on;
  }
  return nearest === null ? null : offSurface({ solids, blockers }, nearest);
}

/** A place just off the surfaces that meet in a place on them, on their open side; null if there is no room. */
function offSurface(
  { solids, blockers: b }: Pick<CompiledScene, 'solids' | 'blockers'>,
  on: Point,
): Point | null {
  let nx = 0;
  let ny = 0;
  for (let i = 0; i < b.count; i += 1) {
    const from = startOf(b, i);
    const to = endOf(b, i);
    if (distanceToSegmentM(on, from, to) > SAME_PLACE_M) continue;
    const length = distanceM(from, to);
    nx -= (to.yM - from.yM) / length;
    ny += (to.xM - from.xM) / length;
  }
  const length = Math.hypot(nx, ny);
  if (length < 1e-6) return null;
  const xM = on.xM + (nx / length) * OFF_SURFACE_M;
  const yM = on.yM + (ny / length) * OFF_SURFACE_M;
  return isOpenFloor(solids, xM, yM) ? { xM, yM } : null;
}

function startOf(b: Blockers, i: number): Point {
  return { xM: b.ax[i]!, yM: b.ay[i]! };
}

function endOf(b: Blockers, i: number): Point {
  return { xM: b.bx[i]!, yM: b.by[i]! };
}
