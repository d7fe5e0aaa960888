import { wrap } from 'comlink';
import type { DemoJobs } from './demos.ts';

let made: DemoJobs | undefined;

/** The worker that makes the demo jobs; it starts when something is first asked. */
function worker(): DemoJobs {
  made ??= wrap<DemoJobs>(
    new Worker(new URL('./demo-worker.ts', import.meta.url), { type: 'module', name: 'demo' }),
  ) as unknown as DemoJobs;
  return made;
}

/** Makes the demo jobs in a worker, so that who starts the app for the first time can type meanwhile. */
export const demosAside: DemoJobs = {
  written: (author) => worker().written(author),
  lastPictures: () => worker().lastPictures(),
  nextPicture: (jobId) => worker().nextPicture(jobId),
};
