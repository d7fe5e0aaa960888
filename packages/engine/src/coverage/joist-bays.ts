import { cosDeg, sinDeg } from '../geometry/bearing.ts';
import { boundingBox } from '../geometry/bounding-box.ts';
import type { Point } from '../geometry/point.ts';
import { EngineError } from '../numerics/engine-error.ts';
import { requireRange } from '../numerics/require-range.ts';
import { insideRings } from './intervals.ts';
import { alongLine } from './rings.ts';
import type { JoistBay } from './scene.ts';

/** A run of equal joists over a whole floor. */
export interface JoistRun {
  readonly id: string;
  /** Direction in which they run, degrees clockwise from the plan's +y axis. */
  readonly bearingDeg: number;
  /** Middle to middle [m]. */
  readonly spacingM: number;
  /** Thickness of a joist [m]; 38 mm, the dressed size of 2x lumber, by default. */
  readonly thicknessM?: number;
  readonly depthM: number;
  /** Underside over the floor [m]. */
  readonly undersideM: number;
  /** A place under the middle of some joist; without it the joists are spread evenly over the floor. */
  readonly through?: Point;
}

/** Dressed thickness of nominal 2-inch lumber, m (1.5 in; American Softwood Lumber Standard PS 20, from memory). */
const JOIST_THICKNESS_M = 0.038;

/**
 * The bays between the joists of a run, from wall to wall; a bay that a recess of the outline cuts gives one for each
 * part. Bays are numbered across the run, toward the right of its direction; ids are `<run>-1`, `<run>-2`, ... in the
 * order across, then along.
 * @throws EngineError `out-of-range` for a spacing not from 0.1 to 5 m or a joist no thinner than the spacing;
 *   `not-finite` for figures that are none; `bad-geometry` for an outline without corners
 */
export function joistBays(outline: readonly Point[], run: JoistRun): JoistBay[] {
  const box = boundingBox(outline);
  if (box === null) throw new EngineError('bad-geometry', 'outline: must have corners to lay joists over');
  const spacing = requireRange(`spacing of joists ${run.id} (m)`, run.spacingM, 0.1, 5);
  const thick = requireRange(
    `thickness of joists ${run.id} (m)`,
    run.thicknessM ?? JOIST_THICKNESS_M,
    0,
    spacing - 0.01,
  );
  requireRange(`depth of joists ${run.id} (m)`, run.depthM, 0, 5);
  requireRange(`underside of joists ${run.id} (m)`, run.undersideM, 0, 100);
  const bearing = requireRange(`bearing of joists ${run.id} (degrees)`, run.bearingDeg, -3600, 3600);
  const ux = sinDeg(bearing);
  const uy = cosDeg(bearing);
  // Across, to the right of the run's direction.
  const across = (p: Point): number => p.xM * uy - p.yM * ux;
  const along = (p: Point): number => p.xM * ux + p.yM * uy;
  const acrossAll = outline.map(across);
  const alongAll = outline.map(along);
  const least = Math.min(...acrossAll);
  const most = Math.max(...acrossAll);
  const start = Math.min(...alongAll) - 1;
  const end = Math.max(...alongAll) + 1;
  const count = Math.round((most - least) / spacing);
  const first = run.through
    ? across(run.through) + spacing * (Math.floor((least - across(run.through)) / spacing) + 0.5)
    : (least + most) / 2 - (spacing * (count - 1)) / 2;
  const bays: JoistBay[] = [];
  for (let line = first; line < most; line += spacing) {
    if (line <= least) continue;
    const at = (t: number): Point => ({ xM: line * uy + t * ux, yM: -line * ux + t * uy });
    const [from, to] = [at(start), at(end)];
    for (const { fromM, toM } of insideRings(from, to, 0, end - start, [outline])) {
      bays.push({
        id: `${run.id}-${bays.length + 1}`,
        from: alongLine(from, to, fromM),
        to: alongLine(from, to, toM),
        widthM: spacing - thick,
        depthM: run.depthM,
        undersideM: run.undersideM,
      });
    }
  }
  return bays;
}

/**
 * How far to the side of a bay's middle line one may be and still see the middle of the subfloor in it, m: half the
 * width times (1 + a / d), with a the height of the joists' underside over the lamp and d their depth, because the
 * line of sight must pass the lower edge of the nearer joist. 0 or less when the lamp is not below the joists.
 */
export function bayReachM({ widthM, depthM, undersideM }: JoistBay, eyeM: number): number {
  if (undersideM <= eyeM) return 0;
  return depthM === 0 ? Number.POSITIVE_INFINITY : (widthM / 2) * (1 + (undersideM - eyeM) / depthM);
}
