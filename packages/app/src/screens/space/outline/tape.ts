import { geometry, plan } from '@undercroft/engine';
import type { Outline, Point } from '@undercroft/record';

/** One wall as taped: exact length, what was typed, and the turn into it [degrees, right positive]. */
export interface Leg {
  readonly id: string;
  readonly nm: number;
  /** Absent for a length that follows from others. */
  readonly typed?: string;
  readonly turnDeg: number;
}

/** The first wall is drawn to the right. */
export const FIRST_AZIMUTH_DEG = 90;

const M_PER_NM = 1e-9;
const START: Point = { xM: 0, yM: 0 };

function azimuthsOf(legs: readonly Leg[]): number[] {
  return plan.azimuthsFromTurns(
    FIRST_AZIMUTH_DEG,
    legs.slice(1).map((leg) => leg.turnDeg),
  );
}

const walkOf = (legs: readonly Leg[]): plan.TraverseLeg[] => {
  if (legs.length === 0) return [];
  const azimuths = azimuthsOf(legs);
  return legs.map(({ id, nm }, i) => ({ id, lengthM: nm * M_PER_NM, azimuthDeg: azimuths[i] }));
};

/** Corners as walked so far, the start first and where one stands last; nothing is spread. */
export function cornersWalked(legs: readonly Leg[]): Point[] {
  const corners = [START];
  for (const leg of walkOf(legs)) {
    const { latitudeM, departureM } = plan.courseOf(leg);
    const { xM, yM } = corners[corners.length - 1];
    corners.push({ xM: xM + departureM, yM: yM + latitudeM });
  }
  return corners;
}

/** The way one faces after a turn at the end of the walls taped so far [degrees clockwise from up]. */
export function azimuthAfter(legs: readonly Leg[], turnDeg: number): number {
  return legs.length === 0
    ? FIRST_AZIMUTH_DEG
    : geometry.wrapDeg((azimuthsOf(legs).at(-1) as number) + turnDeg);
}

/** The walls taped, brought back to their start: corners, closing error and hints; null of fewer than three. */
export function closingOf(legs: readonly Leg[], adjustment: plan.AdjustmentRule): plan.TraverseResult | null {
  return legs.length < 3 ? null : plan.solveTraverse({ legs: walkOf(legs), adjustment });
}

/** The wall that leads from where one stands back to the start, worked out instead of taped; null where they meet. */
export function lastWall(legs: readonly Leg[], id: string): Leg | null {
  const end = cornersWalked(legs).at(-1) as Point;
  const nm = Math.round(geometry.distanceM(end, START) / M_PER_NM);
  const azimuthDeg = geometry.directionDeg(START.xM - end.xM, START.yM - end.yM);
  if (nm < 1 || azimuthDeg === null || legs.length === 0) return null;
  const turn = geometry.wrapDeg(azimuthDeg - (azimuthsOf(legs).at(-1) as number));
  // Sums of right angles leave dust behind; a turn is known to a hundredth of a degree at best.
  const turnDeg = Math.round((turn > 180 ? turn - 360 : turn) * 1e4) / 1e4;
  return { id, nm, turnDeg };
}

/** The outline as the record keeps it. */
export function outlineOfLegs(legs: readonly Leg[], adjustment: plan.AdjustmentRule): Outline {
  return {
    kind: 'traverse',
    start: START,
    firstAzimuthDeg: FIRST_AZIMUTH_DEG,
    adjustment,
    legs: legs.map(({ id, nm, typed, turnDeg }, i) => ({
      id,
      length: typed === undefined ? { nm } : { nm, typed },
      turnDeg: i === 0 ? 0 : turnDeg,
    })),
  };
}

/** Walls of a record for taping on. */
export function legsOf(outline: Extract<Outline, { kind: 'traverse' }>): Leg[] {
  return outline.legs.map(({ id, length: { nm, typed }, turnDeg }) => ({
    id,
    nm,
    turnDeg,
    ...(typed === undefined ? {} : { typed }),
  }));
}
