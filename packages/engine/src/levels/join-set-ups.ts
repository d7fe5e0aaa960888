import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import { requireReading } from './instrument.ts';
import type { Join, LeveledPoint, LevelIssue, LevelSurvey, LevelSurveyInput, SetUp } from './level-survey.ts';

/** 1/16 in. */
const READING_ERROR_M = 0.0015875;

/** Differences at shared points may range over this many reading errors before a notice. Common practice. */
const DISAGREEMENT = 4;

/**
 * Brings several set-ups to one level. Heights are `−reading` with the rod upright and `+reading` with it upside
 * down; each set-up is shifted by the mean difference at the points that it shares with those joined before it, and a
 * point read more than once gets the mean. A set-up that shares no point is an issue and left out.
 *
 * The spread of the differences is kept as the error of one height. A difference of two readings scatters √2 times
 * as much as one, so this errs to the safe side; and because a few shared points can agree by chance, the error is
 * never taken below that of one reading.
 * @throws EngineError `not-finite` or `out-of-range` for readings not from 0 to 30 m, or a datum that is no height
 */
export function joinSetUps(input: LevelSurveyInput): LevelSurvey {
  const readingErrorM = requireRange(
    'error of one reading (m)',
    input.readingErrorM ?? READING_ERROR_M,
    0,
    1,
  );
  const tally = { squares: 0, freedom: 0 };
  const planes = input.setUps.map((setUp, i) => planeOf(setUp, i, tally));
  const joined: Plane = new Map();
  const joins: Join[] = [];
  const notices: Notice[] = [];
  const waiting = planes.map((_, i) => i).filter((i) => planes[i]!.size > 0);
  while (waiting.length > 0) {
    const next = joined.size === 0 ? 0 : waiting.findIndex((i) => sharedWith(joined, planes[i]!).length > 0);
    if (next < 0) break;
    const [index] = waiting.splice(next, 1);
    const join = joinPlane(joined, planes[index!]!, index!, tally);
    if (join !== null) {
      joins.push(join.join);
      if (join.rangeM > DISAGREEMENT * readingErrorM) notices.push(disagreement(join.join, join.rangeM));
    }
  }
  const issues: LevelIssue[] = waiting.map((i) => ({
    code: 'no-shared-point',
    path: `setUps[${i}]`,
    found: 'no point that another set-up read too',
    expected: 'at least one shared point, better three; its heights are left out',
  }));
  const spreadM = tally.freedom > 0 ? Math.sqrt(tally.squares / tally.freedom) : null;
  const spreadCounts = spreadM !== null && spreadM > readingErrorM;
  return {
    points: heightsOf(joined, input.datum, issues),
    sigmaM: spreadCounts ? spreadM : readingErrorM,
    sigmaFrom: spreadCounts ? 'spread' : 'reading-error',
    spreadM,
    joins,
    issues,
    notices,
  };
}

/** Heights in one plane: for each point the sum of its heights and how many there are. */
type Plane = Map<string, { sum: number; count: number }>;

interface Tally {
  squares: number;
  freedom: number;
}

function planeOf(setUp: SetUp, index: number, tally: Tally): Plane {
  const heights = new Map<string, number[]>();
  setUp.readings.forEach(({ pointId, readingM, rod }, i) => {
    const reading = requireReading(`set-up ${index + 1}, reading ${i + 1}`, readingM);
    const height = rod === 'inverted' ? reading : -reading;
    const known = heights.get(pointId);
    if (known) known.push(height);
    else heights.set(pointId, [height]);
  });
  const plane: Plane = new Map();
  for (const [pointId, list] of heights) {
    plane.set(pointId, { sum: addSpread(list, tally) * list.length, count: list.length });
  }
  return plane;
}

function sharedWith(joined: Plane, plane: Plane): string[] {
  return [...plane.keys()].filter((pointId) => joined.has(pointId));
}

function joinPlane(
  joined: Plane,
  plane: Plane,
  setUpIndex: number,
  tally: Tally,
): { join: Join; rangeM: number } | null {
  const shared = sharedWith(joined, plane);
  const differences = shared.map((pointId) => meanOf(joined.get(pointId)!) - meanOf(plane.get(pointId)!));
  const own: Tally = { squares: 0, freedom: 0 };
  const shiftM = shared.length === 0 ? 0 : addSpread(differences, own);
  tally.squares += own.squares;
  tally.freedom += own.freedom;
  for (const [pointId, { sum, count }] of plane) {
    const known = joined.get(pointId) ?? { sum: 0, count: 0 };
    joined.set(pointId, { sum: known.sum + sum + count * shiftM, count: known.count + count });
  }
  if (shared.length === 0) return null;
  return {
    join: {
      setUpIndex,
      sharedPointIds: shared,
      shiftM,
      spreadM: own.freedom > 0 ? Math.sqrt(own.squares / own.freedom) : null,
    },
    rangeM: Math.max(...differences) - Math.min(...differences),
  };
}

/** Mean of some values; their squared deviations go to the tally. */
function addSpread(values: readonly number[], tally: Tally): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  for (const value of values) tally.squares += (value - mean) ** 2;
  tally.freedom += values.length - 1;
  return mean;
}

function meanOf({ sum, count }: { sum: number; count: number }): number {
  return sum / count;
}

function heightsOf(joined: Plane, datum: LevelSurveyInput['datum'], issues: LevelIssue[]): LeveledPoint[] {
  const all = [...joined];
  if (all.length === 0) return [];
  let shift = -meanOf(all[0]![1]);
  if (datum !== undefined) {
    requireRange('datum height (m)', datum.heightM, -1e4, 1e4);
    const known = joined.get(datum.pointId);
    if (known) shift = datum.heightM - meanOf(known);
    else {
      issues.push({
        code: 'datum-not-read',
        path: 'datum.pointId',
        found: datum.pointId,
        expected: 'a point that was read; heights are from the first point instead',
      });
    }
  }
  return all.map(([pointId, cell]) => ({ pointId, heightM: meanOf(cell) + shift, readingCount: cell.count }));
}

function disagreement(join: Join, rangeM: number): Notice {
  return {
    code: 'set-ups-disagree',
    message: `Set-up ${join.setUpIndex + 1} differs from those before it by ${(rangeM * 1000).toFixed(1)} mm more at one shared point than at another (${join.sharedPointIds.join(', ')}); one of these readings is likely wrong.`,
  };
}
