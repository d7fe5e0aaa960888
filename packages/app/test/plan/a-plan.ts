import { type Job, type JobInput, JobSchema } from '@undercroft/record';
import { wallsOf } from '../../src/plan/walls.ts';

/** A room of 10 by 6 m with this on its floor. */
export function planned(plan: Partial<JobInput['plan']>) {
  const corner = (id: string, xM: number, yM: number) => ({ id, at: { xM, yM } });
  const job: Job = JobSchema.parse({
    format: 'undercroft-job',
    version: 2,
    id: 'room',
    header: { title: 'Room' },
    plan: {
      outline: {
        kind: 'corners',
        corners: [corner('south', 0, 0), corner('east', 10, 0), corner('north', 10, 6), corner('west', 0, 6)],
      },
      ground: { cover: 'bare-earth' },
      ...plan,
    },
  });
  const walls = wallsOf(job);
  if (walls === null) throw new Error('a room has walls');
  return { job, walls };
}
