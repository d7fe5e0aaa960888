import { distanceM, type Point } from '../geometry/point.ts';
import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import type { FieldPlan } from './field-plan.ts';

/** A stretch of a barrier and what it leaves open where the space is `heightM` high. */
export interface BarrierPiece {
  readonly startM: number;
  readonly endM: number;
  /** Open share of the height, 0..1. */
  readonly openShare: (heightM: number) => number;
  /** Whether air of two temperatures trades places through it, as through a doorway: also where it is open in full. */
  readonly trades: 'always' | 'narrow' | 'never';
}

/** A line across the plan that leaves air only part of the height, or none. */
export interface Barrier {
  readonly from: Point;
  readonly to: Point;
  /** How long the narrow passage is in the direction of the air [m]. */
  readonly depthM: number;
  readonly pieces: readonly BarrierPiece[];
}

/**
 * Length of a narrow passage when the thing that makes it has no thickness of its own [m]. Common practice, no source:
 * about the reach over which air squeezes through.
 */
export const THIN_BARRIER_DEPTH_M = 0.25;

/**
 * Everything that air has to squeeze past: interior walls between and in their openings, ducts and girders by what they
 * leave open above and below. A duct runs as a line along its middle, so both its ends can be passed round.
 * @throws EngineError `not-finite` or `out-of-range` for sizes that are no sizes
 */
export function barriersOf(plan: FieldPlan): { barriers: Barrier[]; notices: Notice[] } {
  const barriers: Barrier[] = [];
  const notices: Notice[] = [];
  for (const wall of plan.interiorWalls ?? []) {
    barriers.push({
      from: wall.from,
      to: wall.to,
      depthM: depthOf(wall.thicknessM ?? 0, `wall ${wall.id}`),
      pieces: wallAndOpenings(wall),
    });
  }
  const unknown: string[] = [];
  for (const duct of plan.ducts ?? []) {
    if (duct.clearanceM === undefined && duct.heightM === undefined) unknown.push(`duct ${duct.id}`);
    const below = requireRange(`clearance of duct ${duct.id} (m)`, duct.clearanceM ?? 0, 0, 10);
    const high =
      duct.heightM === undefined
        ? undefined
        : requireRange(`height of duct ${duct.id} (m)`, duct.heightM, 0, 10);
    const openShare = (heightM: number): number => {
      const above = high === undefined ? 0 : Math.max(0, heightM - below - high);
      return Math.min(1, (Math.min(below, heightM) + above) / heightM);
    };
    for (let leg = 0; leg + 1 < duct.path.length; leg += 1) {
      addWhole(
        barriers,
        duct.path[leg]!,
        duct.path[leg + 1]!,
        depthOf(duct.widthM, `duct ${duct.id}`),
        openShare,
      );
    }
  }
  for (const girder of plan.girders ?? []) {
    const { clearanceM } = girder;
    if (clearanceM === undefined) {
      unknown.push(`girder ${girder.id}`);
      continue;
    }
    requireRange(`clearance of girder ${girder.id} (m)`, clearanceM, 0, 10);
    addWhole(barriers, girder.from, girder.to, depthOf(girder.widthM, `girder ${girder.id}`), (heightM) =>
      Math.min(1, clearanceM / heightM),
    );
  }
  if (unknown.length > 0) {
    notices.push({
      code: 'opening-unknown',
      message: `Nobody measured what is open at ${unknown.join(', ')}: a duct of unknown height and clearance is taken as closed, a girder as no barrier.`,
    });
  }
  return { barriers, notices };
}

function depthOf(widthM: number, name: string): number {
  const width = requireRange(`width of ${name} (m)`, widthM, 0, 10);
  return width === 0 ? THIN_BARRIER_DEPTH_M : width;
}

function addWhole(
  barriers: Barrier[],
  from: Point,
  to: Point,
  depthM: number,
  openShare: (heightM: number) => number,
): void {
  const endM = distanceM(from, to);
  if (endM === 0) return;
  barriers.push({ from, to, depthM, pieces: [{ startM: 0, endM, openShare, trades: 'narrow' }] });
}

/** The openings of a wall and the closed stretches between them, in order. */
function wallAndOpenings(wall: NonNullable<FieldPlan['interiorWalls']>[number]): BarrierPiece[] {
  const lengthM = distanceM(wall.from, wall.to);
  const openings = (wall.openings ?? [])
    .map(({ offsetM, widthM, heightM }) => ({
      startM: requireRange(`opening offset in wall ${wall.id} (m)`, offsetM, -1000, 1000),
      endM: offsetM + requireRange(`opening width in wall ${wall.id} (m)`, widthM, 0, 1000),
      heightM:
        heightM === undefined
          ? Number.POSITIVE_INFINITY
          : requireRange(`opening height in wall ${wall.id} (m)`, heightM, 0, 10),
    }))
    .sort((a, b) => a.startM - b.startM);
  const pieces: BarrierPiece[] = [];
  let at = 0;
  const closeUpTo = (endM: number): void => {
    if (endM > at) pieces.push({ startM: at, endM, openShare: () => 0, trades: 'never' });
  };
  for (const { startM, endM, heightM } of openings) {
    closeUpTo(Math.min(startM, lengthM));
    const from = Math.max(at, startM);
    const to = Math.min(endM, lengthM);
    if (to > from) {
      pieces.push({
        startM: from,
        endM: to,
        openShare: (spaceM) => Math.min(1, heightM / spaceM),
        trades: 'always',
      });
    }
    at = Math.max(at, endM);
  }
  closeUpTo(lengthM);
  return pieces;
}
