import type { DemoJobs } from './demos.ts';

/** Makes the demo jobs in the thread that asks. */
export const demosHere: DemoJobs = {
  written: async (author) => (await import('./demo-jobs.ts')).demoJobs.written(author),
  lastPictures: async () => (await import('./demo-jobs.ts')).demoJobs.lastPictures(),
  nextPicture: async (jobId) => (await import('./demo-jobs.ts')).demoJobs.nextPicture(jobId),
};
