import { createContext, useContext, useEffect, useState, useSyncExternalStore } from 'react';
import { StorageError, type StorageFault } from '../storage/storage.ts';
import type { JobListView } from './job-list.ts';
import type { Jobs } from './jobs.ts';
import type { JobView, OpenJob } from './open-job.ts';

export const JobsContext = createContext<Jobs | null>(null);

/** The jobs of this device. */
export function useJobs(): Jobs {
  const jobs = useContext(JobsContext);
  if (jobs === null) throw new Error('useJobs needs a JobsContext above it');
  return jobs;
}

/** The list of jobs, as it stands. */
export function useJobList(): JobListView {
  const { list } = useJobs();
  return useSyncExternalStore(
    (changed) => list.subscribe(changed),
    () => list.view,
  );
}

export type JobOpening =
  | { readonly is: 'opening' }
  | { readonly is: 'missing' }
  | { readonly is: 'failed'; readonly fault: StorageFault }
  | { readonly is: 'open'; readonly openJob: OpenJob };

/** Opens a job; screens below an open one use `useJobView`. */
export function useJob(id: string): JobOpening {
  const jobs = useJobs();
  const [opening, setOpening] = useState<JobOpening & { readonly id: string }>({ is: 'opening', id });
  useEffect(() => {
    let wanted = true;
    jobs.open(id).then(
      (openJob) =>
        wanted && setOpening(openJob === null ? { is: 'missing', id } : { is: 'open', openJob, id }),
      (error) =>
        wanted &&
        setOpening({ is: 'failed', fault: error instanceof StorageError ? error.fault : 'failed', id }),
    );
    return () => {
      wanted = false;
    };
  }, [jobs, id]);
  return opening.id === id ? opening : { is: 'opening' };
}

/** An open job, as it stands. */
export function useJobView(openJob: OpenJob): JobView {
  return useSyncExternalStore(
    (changed) => openJob.subscribe(changed),
    () => openJob.view,
  );
}
