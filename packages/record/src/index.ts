export type { Header, House } from './schema/house.ts';
export type { Job } from './schema/job.ts';
export { Job as JobSchema, RECORD_VERSION } from './schema/job.ts';
export type { Finding, Media } from './schema/media.ts';
export type { Ground, Outline, Plan } from './schema/plan.ts';
export type { Observation, Readings } from './schema/readings.ts';
export type { Place, Point } from './schema/scalars.ts';
export type { Design } from './schema/works.ts';
