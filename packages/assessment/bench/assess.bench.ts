import { assess } from '@undercroft/assessment';
import { madeJob } from './made-job.ts';

const job = madeJob();
const run = () => assess(job, undefined, { season: 'none' });

/** The catalogue over 300 m² with 100 readings: criteria, defects, what mending each does; no pictures, no year. */
const audit = () => assess(job, undefined, { season: 'none', coverage: false });

/** One record without an hourly year: what a person waits for after each change. Goals of the project. */
export const benches = [
  { id: 'assess.record', goal: 50, rounds: 31, warm: 5, run },
  { id: 'audit.full', goal: 50, rounds: 31, warm: 60, run: audit },
  { id: 'assess.record.memory', unit: 'MB', goal: 200, run },
];
