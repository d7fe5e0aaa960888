import { type Author, DEMO_JOBS, eachDemoPicture, entriesOfJob, JobLog, JobSchema } from '@undercroft/record';
import type { DemoJobs } from './demos.ts';
import { cardOf } from './job-card.ts';

const drawing = new Map<string, ReturnType<typeof eachDemoPicture>>();

/** The demo jobs, made where this module is loaded: checked, written as entries, their pictures drawn. */
export const demoJobs: DemoJobs = {
  async written(author: Author) {
    return DEMO_JOBS.map((demo) => {
      const job = JobSchema.parse(demo.job);
      const entries = entriesOfJob(job, author);
      return { card: cardOf(new JobLog(job.id, entries), author.deviceTime, true), entries };
    });
  },
  async lastPictures() {
    return DEMO_JOBS.flatMap(({ job }) => {
      const last = (job.media?.photos ?? []).at(-1);
      return last === undefined ? [] : [{ jobId: job.id, sha256: last.sha256 }];
    });
  },
  async nextPicture(jobId) {
    const demo = DEMO_JOBS.find(({ job }) => job.id === jobId);
    if (demo === undefined) return null;
    const pictures = drawing.get(jobId) ?? eachDemoPicture(demo);
    drawing.set(jobId, pictures);
    const { value, done } = pictures.next();
    if (done === true) drawing.delete(jobId);
    return done === true ? null : (value[1] as Uint8Array<ArrayBuffer>);
  },
};
