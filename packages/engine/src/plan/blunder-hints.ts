import { directionDeg, wrapDeg } from '../geometry/bearing.ts';
import { CLOSURE_LIMITS, type ClosureLimits, traverseClosure } from './closure.ts';
import { courseOf, type TraverseLeg } from './courses.ts';

/** One mistake that, put right, would close the traverse. A hint where to look first, never a finding. */
export interface BlunderHint {
  /**
   * `length`: the wall was read or written too short or too long. `turn`: the corner before the wall was turned
   * wrongly, and with it every wall from there on. `direction`: the azimuth of this wall alone is wrong.
   */
  readonly kind: 'length' | 'turn' | 'direction';
  readonly legIndex: number;
  /** What to add to the measured length, m; null for the other kinds. */
  readonly changeM: number | null;
  /** What to add to the turn or azimuth, degrees −180 to 180, right positive; null for `length`. */
  readonly changeDeg: number | null;
  /** Closing error that remains, m. */
  readonly remainingM: number;
}

/**
 * Single mistakes that explain a bad closure, the one that closes best first. A wrong length shows as a closing error
 * parallel to its wall; a wrong turn as a corner equally far from the start and from the end of the walk; a wrong
 * azimuth as a wall whose length spans the rest. Walls parallel to each other can't be told apart and are all listed;
 * two mistakes at once are not found. Empty when the traverse closes within the accepted limit as it is.
 * @param legs as measured
 * @param directions `turned` when azimuths were added up from turns, `compass` when each was taken by itself
 * @param limits a mistake is listed when what remains is within the accepted limit
 * @throws EngineError `not-finite` for a length or azimuth that is no finite number
 */
export function blunderHints(
  legs: readonly TraverseLeg[],
  directions: 'turned' | 'compass',
  limits: ClosureLimits = CLOSURE_LIMITS,
): BlunderHint[] {
  const courses = legs.map(courseOf);
  const { perimeterM, sumDepartureM: ex, sumLatitudeM: ey, linearM } = traverseClosure(courses);
  const allowedM = perimeterM / limits.acceptDenominator;
  if (linearM <= allowedM) return [];
  const hints: BlunderHint[] = [];
  let beforeX = 0;
  let beforeY = 0;
  for (let i = 0; i < courses.length; i += 1) {
    const { lengthM, departureM: x, latitudeM: y } = courses[i]!;
    if (lengthM > 0) {
      const changeM = -(ex * x + ey * y) / lengthM;
      const remainingM = Math.abs(ex * y - ey * x) / lengthM;
      if (remainingM <= allowedM && lengthM + changeM > 0) {
        hints.push({ kind: 'length', legIndex: i, changeM, changeDeg: null, remainingM });
      }
    }
    // Fixed is what stays as walked; free is what turns about one of its ends until it points back to the start.
    const [kind, fixedX, fixedY, freeX, freeY] =
      directions === 'turned'
        ? (['turn', beforeX, beforeY, ex - beforeX, ey - beforeY] as const)
        : (['direction', ex - x, ey - y, x, y] as const);
    const wanted = directionDeg(-fixedX, -fixedY);
    const walked = directionDeg(freeX, freeY);
    const remainingM = Math.abs(Math.hypot(fixedX, fixedY) - Math.hypot(freeX, freeY));
    if (wanted !== null && walked !== null && remainingM <= allowedM) {
      const turn = wrapDeg(wanted - walked);
      hints.push({ kind, legIndex: i, changeM: null, changeDeg: turn > 180 ? turn - 360 : turn, remainingM });
    }
    beforeX += x;
    beforeY += y;
  }
  return hints.sort((a, b) => a.remainingM - b.remainingM || a.legIndex - b.legIndex);
}
