import { directionDeg } from '../geometry/bearing.ts';
import { EngineError } from '../numerics/engine-error.ts';
import type { Course } from './courses.ts';

/** By how much a round of taped walls misses its start. */
export interface Closure {
  readonly perimeterM: number;
  /** Sums of latitudes and departures: where the walk ends, seen from its start, m. */
  readonly sumLatitudeM: number;
  readonly sumDepartureM: number;
  /** Length of the closing error, m. */
  readonly linearM: number;
  /** Direction from the start to where the walk ended, degrees clockwise from +y; null when it closes. */
  readonly azimuthDeg: number | null;
  /** n of a precision of 1:n, perimeter over closing error; null when the error is no more than rounding. */
  readonly precisionDenominator: number | null;
}

/** How good a closure is: `good` can be used, `doubtful` needs a look, `poor` hides a blunder. */
export type ClosureVerdict = 'good' | 'doubtful' | 'poor';

/** Limits of the verdict, each the n of 1:n. */
export interface ClosureLimits {
  /** From here on `good`. */
  readonly acceptDenominator: number;
  /** Below this `poor`. */
  readonly warnDenominator: number;
}

/** 1:500 accepted, below 1:200 warned. Common practice for tape-and-corner work, no source. */
export const CLOSURE_LIMITS: ClosureLimits = { acceptDenominator: 500, warnDenominator: 200 };

/** Share of the perimeter that adding up rounded numbers can leave. */
const ROUNDING = 1e-12;

/**
 * Closing error of a round of courses: e = (Σ latitude, Σ departure), linear error hypot(e), precision
 * 1:(perimeter / linear). No courses close exactly.
 * Source: J. Mahun, Open Access Surveying Library, Traverse Computations, chapter E.
 */
export function traverseClosure(courses: readonly Course[]): Closure {
  let perimeterM = 0;
  let sumLatitudeM = 0;
  let sumDepartureM = 0;
  for (const course of courses) {
    perimeterM += course.lengthM;
    sumLatitudeM += course.latitudeM;
    sumDepartureM += course.departureM;
  }
  const linearM = Math.hypot(sumLatitudeM, sumDepartureM);
  const closes = linearM <= ROUNDING * perimeterM;
  return {
    perimeterM,
    sumLatitudeM,
    sumDepartureM,
    linearM,
    azimuthDeg: closes ? null : directionDeg(sumDepartureM, sumLatitudeM),
    precisionDenominator: closes ? null : perimeterM / linearM,
  };
}

/**
 * Verdict on a closure. A denominator that equals a limit is on its better side.
 * @throws EngineError `out-of-range` for limits that are not positive or stand the wrong way round
 */
export function closureVerdict(
  closure: Pick<Closure, 'precisionDenominator'>,
  limits: ClosureLimits = CLOSURE_LIMITS,
): ClosureVerdict {
  const { acceptDenominator, warnDenominator } = limits;
  if (!(warnDenominator > 0 && acceptDenominator >= warnDenominator)) {
    throw new EngineError(
      'out-of-range',
      `closure limits must be positive, the accepted 1:n not below the warned one; got 1:${acceptDenominator} and 1:${warnDenominator}`,
    );
  }
  const n = closure.precisionDenominator;
  if (n === null || n >= acceptDenominator) return 'good';
  return n >= warnDenominator ? 'doubtful' : 'poor';
}
