import { DEMO_JOBS, type Entry, entriesOfJob, readJob } from '../../src/index.ts';
import { authorOn, START_MS } from '../small-job.ts';

/** Runs of each kind of damage: ten thousand in all, cheap enough for every test run. */
export const RUNS = { text: 2500, values: 3000, entries: 2500, zip: 2000 } as const;

/** The demo jobs with one item in each list: small enough to be damaged thousands of times. */
export const DEMO_PARTS: readonly unknown[] = DEMO_JOBS.map(({ job }) =>
  shortened(JSON.parse(JSON.stringify(job))),
);

function shortened(value: unknown, name = ''): unknown {
  if (Array.isArray(value)) {
    const ofItems = typeof value[0]?.id === 'string' && name !== 'legs' && name !== 'corners';
    return (ofItems ? value.slice(0, 1) : value).map((part) => shortened(part));
  }
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, shortened(part, key)]));
}

/** The logs that the shortened demo jobs begin with. */
export const DEMO_LOGS: readonly (readonly Entry[])[] = DEMO_PARTS.map((parts) => {
  const read = readJob(parts);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return entriesOfJob(read.job, authorOn('office', START_MS));
});
