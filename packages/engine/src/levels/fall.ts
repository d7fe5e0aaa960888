import { EngineError } from '../numerics/engine-error.ts';
import { requireRange } from '../numerics/require-range.ts';

/**
 * What a measured fall proves. `back-fall`: it runs the wrong way; `undecided`: the fall is within the error of the
 * survey; `flat`: it falls, but less than is required; `ok`: it falls enough.
 */
export type FallVerdict = 'back-fall' | 'undecided' | 'flat' | 'ok';

/** Fall between two leveled points. */
export interface Fall {
  /** Height lost going downstream, m; negative when the line rises. */
  readonly fallM: number;
  /** Fall over length, a ratio (0.0104 is 1/8 in per foot). */
  readonly slope: number;
  /** Error of this fall, √2 times the error of one height, m. */
  readonly uncertaintyM: number;
  readonly requiredFallM: number;
  readonly verdict: FallVerdict;
}

/** A leveled point along a line, in the direction of flow. */
export interface LinePoint {
  /** Distance along the line from its upstream end, m. */
  readonly stationM: number;
  readonly heightM: number;
}

/**
 * Fall between two points with a verdict: `back-fall` below −u, `undecided` within ±u (a limit itself is undecided),
 * `flat` above u but less than required, else `ok`; u = √2·σ, the errors of two heights together.
 * @param upM height at the upstream end, m
 * @param downM height at the downstream end, m
 * @param lengthM length of line between them, m, at least 0.001
 * @param sigmaM error of one height, m, 0 or more (see `joinSetUps`)
 * @param requiredSlope fall over length that is wanted, a ratio, 0 to 1
 * @throws EngineError `not-finite` or `out-of-range`
 */
export function fallBetween(
  upM: number,
  downM: number,
  lengthM: number,
  sigmaM: number,
  requiredSlope: number,
): Fall {
  requireRange('upstream height (m)', upM, -1e4, 1e4);
  requireRange('downstream height (m)', downM, -1e4, 1e4);
  requireRange('length of the line (m)', lengthM, 0.001, 1e5);
  requireRange('error of one height (m)', sigmaM, 0, 10);
  const requiredFallM = requireRange('required slope', requiredSlope, 0, 1) * lengthM;
  const fallM = upM - downM;
  const uncertaintyM = Math.SQRT2 * sigmaM;
  let verdict: FallVerdict = 'ok';
  if (fallM < -uncertaintyM) verdict = 'back-fall';
  else if (Math.abs(fallM) <= uncertaintyM) verdict = 'undecided';
  else if (fallM < requiredFallM) verdict = 'flat';
  return { fallM, slope: fallM / lengthM, uncertaintyM, requiredFallM, verdict };
}

/**
 * Falls from each point of a line to the next, downstream. Points at one station (a step) make no reach.
 * @param line at least two points, stations never falling back
 * @throws EngineError `bad-input` for stations that fall back; otherwise as `fallBetween`
 */
export function reachFalls(line: readonly LinePoint[], sigmaM: number, requiredSlope: number): Fall[] {
  requireLine(line);
  const falls: Fall[] = [];
  for (let i = 0; i + 1 < line.length; i += 1) {
    const up = line[i]!;
    const down = line[i + 1]!;
    const lengthM = down.stationM - up.stationM;
    if (lengthM > 0) falls.push(fallBetween(up.heightM, down.heightM, lengthM, sigmaM, requiredSlope));
  }
  return falls;
}

/**
 * Least slope, a ratio, that heights with error σ can prove over a length: √2·σ/L.
 * @throws EngineError `not-finite` or `out-of-range` for a length below 0.001 m or a negative error
 */
export function smallestProvableSlope(sigmaM: number, lengthM: number): number {
  requireRange('length of the line (m)', lengthM, 0.001, 1e5);
  return (Math.SQRT2 * requireRange('error of one height (m)', sigmaM, 0, 10)) / lengthM;
}

/**
 * Checks that a line's points are numbers and its stations never fall back.
 * @throws EngineError `not-finite`, `out-of-range` or `bad-input`, naming the point
 */
export function requireLine(line: readonly LinePoint[]): void {
  for (let i = 0; i < line.length; i += 1) {
    requireRange(`station of point ${i + 1} (m)`, line[i]!.stationM, -1e5, 1e5);
    requireRange(`height of point ${i + 1} (m)`, line[i]!.heightM, -1e4, 1e4);
    if (i > 0 && line[i]!.stationM < line[i - 1]!.stationM) {
      throw new EngineError(
        'bad-input',
        `points must go downstream: station ${line[i]!.stationM} m of point ${i + 1} is before ${line[i - 1]!.stationM} m`,
      );
    }
  }
}
