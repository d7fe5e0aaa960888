import { cosDeg, sinDeg } from '../geometry/bearing.ts';
import type { Point } from '../geometry/point.ts';
import { polygonAreaM2 } from '../geometry/polygon-area.ts';
import type { Notice } from '../numerics/notice.ts';
import { type AdjustmentRule, adjustCourses, squareAxisDeg } from './adjust-courses.ts';
import { type BlunderHint, blunderHints } from './blunder-hints.ts';
import {
  CLOSURE_LIMITS,
  type Closure,
  type ClosureLimits,
  type ClosureVerdict,
  closureVerdict,
  traverseClosure,
} from './closure.ts';
import { courseOf, type TraverseLeg } from './courses.ts';
import { type PlanIssue, wallName } from './issue.ts';

/** Walls taped one after the other round a space, back to the first corner. */
export interface TraverseInput {
  readonly legs: readonly TraverseLeg[];
  /** First corner; the origin by default. */
  readonly start?: Point;
  /** How to spread the closing error; `transit` by default, because most foundations are square. */
  readonly adjustment?: AdjustmentRule;
  /** `turned` (default) when azimuths were added up from turns at the corners, `compass` when each was read. */
  readonly directions?: 'turned' | 'compass';
  readonly limits?: ClosureLimits;
}

/** A closed traverse, its closing error and what is doubtful about it. */
export interface TraverseResult {
  /** Adjusted corners, the first one the start; empty when there are fewer than three usable legs. */
  readonly corners: readonly Point[];
  readonly areaM2: number;
  /** Closing error as measured. */
  readonly closure: Closure;
  readonly verdict: ClosureVerdict;
  /** Axes in which the transit rule worked, degrees clockwise from +y; null for the compass rule. */
  readonly axisDeg: number | null;
  readonly hints: readonly BlunderHint[];
  readonly issues: readonly PlanIssue[];
  readonly notices: readonly Notice[];
}

/**
 * Corners of a space from its taped walls, the closing error spread by the rule asked for.
 *
 * A traverse that closes badly is still returned, with the issue `does-not-close` (below the warning limit), notices,
 * and hints at the single mistakes that would explain it. Fewer than three legs, or a leg without length, give issues,
 * no corners, and the verdict `poor`. The transit rule works in the axes of the walls (`squareAxisDeg`), so that a square house drawn at
 * an angle stays square.
 * @throws EngineError `not-finite` for a length, azimuth or start that is no finite number
 */
export function solveTraverse(input: TraverseInput): TraverseResult {
  const { legs, adjustment = 'transit', limits = CLOSURE_LIMITS, directions = 'turned' } = input;
  const start = input.start ?? { xM: 0, yM: 0 };
  const closure = traverseClosure(legs.map(courseOf));
  const verdict = closureVerdict(closure, limits);
  const axisDeg = adjustment === 'transit' ? squareAxisDeg(legs) : null;
  const faults = legIssues(legs);
  if (faults.length > 0) {
    return {
      corners: [],
      areaM2: 0,
      closure,
      verdict: 'poor',
      axisDeg,
      hints: [],
      issues: faults,
      notices: [],
    };
  }
  const corners = cornersOf(legs, start, adjustment, axisDeg ?? 0);
  const hints = verdict === 'good' ? [] : blunderHints(legs, directions, limits);
  const off = `${closure.linearM.toFixed(3)} m in ${closure.perimeterM.toFixed(2)} m (1:${Math.floor(closure.precisionDenominator ?? 0)})`;
  const issues: PlanIssue[] = [];
  const notices: Notice[] = [];
  if (verdict === 'poor') {
    issues.push({
      code: 'does-not-close',
      path: 'legs',
      found: `a closing error of ${off}`,
      expected: `at most 1:${limits.warnDenominator}, better 1:${limits.acceptDenominator}; tape the doubtful walls again`,
    });
  }
  if (verdict === 'doubtful') {
    notices.push({
      code: 'closing-error',
      message: `The taped walls miss their start by ${off}; 1:${limits.acceptDenominator} or better is wanted.`,
    });
  }
  for (const hint of hints) notices.push({ code: 'possible-blunder', message: hintText(hint, legs) });
  return { corners, areaM2: polygonAreaM2(corners), closure, verdict, axisDeg, hints, issues, notices };
}

/** Adds up the adjusted courses, worked in axes turned by `axisDeg` and turned back. */
function cornersOf(
  legs: readonly TraverseLeg[],
  start: Point,
  rule: AdjustmentRule,
  axisDeg: number,
): Point[] {
  const courses = legs.map((leg) => courseOf({ ...leg, azimuthDeg: leg.azimuthDeg - axisDeg }));
  const [sine, cosine] = [sinDeg(axisDeg), cosDeg(axisDeg)];
  let east = 0;
  let north = 0;
  return adjustCourses(courses, rule).map((course) => {
    const corner = {
      xM: start.xM + east * cosine + north * sine,
      yM: start.yM - east * sine + north * cosine,
    };
    east += course.departureM;
    north += course.latitudeM;
    return corner;
  });
}

function legIssues(legs: readonly TraverseLeg[]): PlanIssue[] {
  const issues: PlanIssue[] = [];
  if (legs.length < 3) {
    issues.push({
      code: 'too-few-corners',
      path: 'legs',
      found: `${legs.length}`,
      expected: 'at least 3 walls',
    });
  }
  for (let i = 0; i < legs.length; i += 1) {
    const { lengthM } = legs[i]!;
    if (lengthM > 0) continue;
    issues.push({
      code: 'bad-length',
      path: `legs[${i}].lengthM`,
      found: `${lengthM}`,
      expected: 'a length above 0 m',
    });
  }
  return issues;
}

function hintText(hint: BlunderHint, legs: readonly TraverseLeg[]): string {
  const wall = wallName(hint.legIndex, legs[hint.legIndex]!.id);
  const rest = `would leave a closing error of ${hint.remainingM.toFixed(3)} m`;
  if (hint.kind === 'length') {
    const changeM = hint.changeM ?? 0;
    const way = changeM > 0 ? 'longer' : 'shorter';
    return `Look at ${wall} first: ${Math.abs(changeM).toFixed(3)} m ${way} it ${rest}. A hint, not a finding.`;
  }
  const changeDeg = hint.changeDeg ?? 0;
  const way = `${Math.abs(changeDeg).toFixed(1)} degrees to the ${changeDeg > 0 ? 'right' : 'left'}`;
  return hint.kind === 'turn'
    ? `Look at the corner before ${wall}: turned ${way} it ${rest}. A hint, not a finding.`
    : `Look at the direction of ${wall}: ${way} it ${rest}. A hint, not a finding.`;
}
