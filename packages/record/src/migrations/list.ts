import type { Migration } from './migration.ts';

/** All migrations in order. Version 1 is the first, so there is none yet. */
export const MIGRATIONS: readonly Migration[] = [];
