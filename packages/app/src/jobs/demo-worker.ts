import { expose } from 'comlink';
import { demoJobs } from './demo-jobs.ts';

expose(demoJobs);
