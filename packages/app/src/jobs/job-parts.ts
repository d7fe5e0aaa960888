// What making, copying and taking in jobs needs of the record. Loaded when it is first used, so that the list stands sooner.
export { entriesOfJob, JobLog, JobSchema, RECORD_VERSION } from '@undercroft/record';
export { cardOf } from './job-card.ts';
