import { geometry as shapes } from '@undercroft/engine';
import type { Job, Point } from '@undercroft/record';
import type { Assessment } from '../assessment.ts';
import type { FromWall } from '../coverage/coverage-assessment.ts';
import { fromWalls } from '../coverage/from-walls.ts';
import { namesOf } from '../coverage/names.ts';
import { requireSurveyed } from '../surveyed.ts';

/** Finds places and directions of a plan for people. */
export interface PlaceFinder {
  /** The two nearest walls that do not run alike, with the way from them by tape. */
  readonly fromWalls: (at: Point) => readonly FromWall[];
  /** A direction of the plan as a compass shows it [degrees clockwise from true north]. */
  readonly compassDeg: (bearingDeg: number) => number;
}

/**
 * Places and directions of a job's plan as people find them: by tape from walls and by compass.
 * @throws JobError when the walls or the ground are missing
 */
export function placeFinder(record: Job, { geometry }: Pick<Assessment, 'geometry'>): PlaceFinder {
  const job = requireSurveyed(record);
  const nameOf = namesOf(job, geometry);
  return {
    fromWalls: (at) => fromWalls(at, geometry, nameOf),
    compassDeg: (bearingDeg) => shapes.wrapDeg(bearingDeg + job.plan.northDeg),
  };
}
