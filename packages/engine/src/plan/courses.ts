import { cosDeg, sinDeg, wrapDeg } from '../geometry/bearing.ts';
import { EngineError } from '../numerics/engine-error.ts';

/** One taped wall: how long, and which way it was walked. */
export interface TraverseLeg {
  readonly id?: string;
  readonly lengthM: number;
  /** Survey azimuth, degrees clockwise from the plan's +y axis; any number of whole turns is allowed. */
  readonly azimuthDeg: number;
}

/** A leg as its shares along the axes: latitude along +y (north), departure along +x (east), m. */
export interface Course {
  readonly lengthM: number;
  readonly latitudeM: number;
  readonly departureM: number;
}

/**
 * Latitude L·cos(Az) and departure L·sin(Az) of a leg.
 * @throws EngineError `not-finite` for a length or azimuth that is no finite number
 */
export function courseOf(leg: Pick<TraverseLeg, 'lengthM' | 'azimuthDeg'>): Course {
  const { lengthM, azimuthDeg } = leg;
  if (!Number.isFinite(lengthM) || !Number.isFinite(azimuthDeg)) {
    throw new EngineError(
      'not-finite',
      `a traverse leg must have a finite length and azimuth; got ${lengthM} m, ${azimuthDeg} degrees`,
    );
  }
  return { lengthM, latitudeM: lengthM * cosDeg(azimuthDeg), departureM: lengthM * sinDeg(azimuthDeg) };
}

/**
 * Azimuths of legs that were recorded by the turn at each corner between them, degrees 0 to below 360: one more than
 * there are turns, the first leg's first.
 * @param firstAzimuthDeg azimuth of the first leg, degrees clockwise from +y
 * @param turnsDeg the turn from the first leg into the second, from the second into the third and so on, degrees,
 *   right positive
 * @throws EngineError `not-finite` for an angle that is no finite number
 */
export function azimuthsFromTurns(firstAzimuthDeg: number, turnsDeg: readonly number[]): number[] {
  let azimuth = 0;
  return [firstAzimuthDeg, ...turnsDeg].map((turn, i) => {
    azimuth += turn;
    if (!Number.isFinite(azimuth)) {
      throw new EngineError('not-finite', `the azimuth of leg ${i} must be a number; got ${azimuth}`);
    }
    return wrapDeg(azimuth);
  });
}

/**
 * By how much the turns of a whole round, the turn from the last leg into the first included, miss one full turn,
 * degrees. Positive where the turns add up to more than a full turn the way they go (right or left). A check on the
 * angles alone, whatever the lengths.
 * @param turnsDeg the turn at every corner, degrees, right positive
 */
export function turnMisclosureDeg(turnsDeg: readonly number[]): number {
  const sum = turnsDeg.reduce((total, turn) => total + turn, 0);
  return Math.abs(sum) - 360;
}
