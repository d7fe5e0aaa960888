import type { Migration } from './migration.ts';

/**
 * From version 2 on a job may stand without an outline and a ground, so that what was read, photographed or found before
 * the walls were drawn can be exported. What version 1 wrote means the same as ever.
 */
export const planMayWait: Migration = { from: 1, job: (job) => job, entry: (entry) => entry };
