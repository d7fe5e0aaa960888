/** Loaded when the demo jobs are put on the list. */
export { DEMO_JOBS, eachDemoPicture } from '@undercroft/record';
