/** Loaded when the demo jobs are put on the list. */
export { DEMO_JOBS } from '@undercroft/record';
