import { isSurveyed, type JobInput, readJob, type SurveyedJob } from '@undercroft/record';
import { Assumptions } from '../../src/assumptions.ts';
import { coverageOf } from '../../src/coverage/coverage.ts';
import { geometryOf } from '../../src/geometry.ts';

type PhotoInput = NonNullable<NonNullable<JobInput['media']>['photos']>[number];
type PlanInput = Partial<NonNullable<JobInput['plan']>>;

/** A photo from a place, taken in the given minute. */
export function photo(
  id: string,
  at: readonly [x: number, y: number] | undefined,
  bearingDeg: number | undefined,
  more: Partial<PhotoInput> = {},
): PhotoInput {
  return {
    id,
    sha256: '0'.repeat(64),
    bytes: 1200,
    mediaType: 'image/jpeg',
    takenAt: '2031-05-14T09:20:00-04:00',
    who: 'Linnea Aalbrecht',
    place: at === undefined ? {} : { at: { xM: at[0], yM: at[1] } },
    ...(bearingDeg === undefined ? {} : { bearingDeg }),
    ...more,
  };
}

/** A photo all round, sharp as far as the walls. */
export const allRound = (id: string, x: number, y: number): PhotoInput =>
  photo(id, [x, y], 0, { fieldOfViewDeg: 360, rangeM: 20 });

/** A room of 6 by 4 m over a liner with one pier in its middle, a vent in the left wall and a door in the right one. */
export function roomJob(more: Partial<JobInput> = {}, plan: PlanInput = {}): SurveyedJob {
  const read = readJob({
    format: 'undercroft-job',
    version: 2,
    id: 'room',
    header: { title: 'One room' },
    ...more,
    plan: {
      northDeg: 10,
      outline: {
        kind: 'corners',
        corners: [
          { id: 'south', at: { xM: 0, yM: 0 } },
          { id: 'east', at: { xM: 6, yM: 0 } },
          { id: 'north', at: { xM: 6, yM: 4 } },
          { id: 'west', at: { xM: 0, yM: 4 } },
        ],
      },
      ground: { cover: 'liner' },
      piers: [{ id: 'p1', at: { xM: 3, yM: 2 } }],
      vents: [{ id: 'v1', wallId: 'west', offsetM: 1.8, widthM: 0.4, heightM: 0.2, sillHeightM: 0.5 }],
      doors: [{ id: 'door', wallId: 'east', offsetM: 1, widthM: 0.8, heightM: 0.6 }],
      ...plan,
    },
  });
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 1));
  if (!isSurveyed(read.job)) throw new Error('a job without walls');
  return read.job;
}

/** What the pictures of a job show, with what was assumed for it: no more of an assessment than that, to be quick. */
export function shownBy(job: SurveyedJob) {
  const assumptions = new Assumptions();
  const geometry = geometryOf(job, new Assumptions()).result;
  return { geometry, ...coverageOf(job, geometry, assumptions), assumptions: assumptions.list() };
}
