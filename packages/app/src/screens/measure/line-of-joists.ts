import { geometry, type plan } from '@undercroft/engine';
import type { Job, Place, Point } from '@undercroft/record';

/** From one joist to the next on the plan [m]. */
export type Step = Point;

/** Two places nearer than this are one [m]. */
const SAME_M = 0.02;

/**
 * The step from one reading to the next: across the drawn joists by their spacing, else as between the last two that
 * were taken in a row. Null where neither tells.
 * @param row places of the readings in a row, newest last
 */
export function stepOf(job: Job, row: readonly Point[]): Step | null {
  const [joists] = job.plan.joists;
  if (joists !== undefined) {
    // Across: a quarter turn clockwise from the direction in which they run.
    const acrossDeg = joists.bearingDeg + 90;
    return {
      xM: geometry.sinDeg(acrossDeg) * joists.spacingM,
      yM: geometry.cosDeg(acrossDeg) * joists.spacingM,
    };
  }
  const [before, last] = row.slice(-2);
  if (before === undefined || last === undefined || geometry.distanceM(before, last) <= SAME_M) return null;
  return { xM: last.xM - before.xM, yM: last.yM - before.yM };
}

/** The words for the next place: a number at their end goes on by one, up or down, and stays at one or more. */
export function nextWords(words: string, way: 1 | -1): string {
  return words.replace(/(\d+)(\s*)$/, (_, number: string, rest: string) => {
    return `${Math.max(1, Number(number) + way)}${rest}`;
  });
}

/**
 * The place of the next reading along a line.
 * @param walls null while none are drawn
 * @returns null where the line has come to a wall
 */
export function nextPlace(
  place: Place,
  step: Step | null,
  way: 1 | -1,
  walls: plan.ResolvedOutline | null,
): Place | null {
  const { at, words, on: _, ...rest } = place;
  const told = words === undefined ? {} : { words: nextWords(words, way) };
  if (at === undefined || step === null) return { ...rest, ...told, ...(at === undefined ? {} : { at }) };
  const next = { xM: at.xM + way * step.xM, yM: at.yM + way * step.yM };
  if (walls !== null && geometry.pointInPolygon(next, walls.corners) === 'outside') return null;
  return { ...rest, ...told, at: next };
}

/** Which way a step goes on the plan as it is drawn. */
export function wayOf(step: Step, way: 1 | -1): 'right' | 'left' | 'up' | 'down' {
  const [x, y] = [way * step.xM, way * step.yM];
  if (Math.abs(x) >= Math.abs(y)) return x > 0 ? 'right' : 'left';
  return y > 0 ? 'up' : 'down';
}
