import type { Migration } from './migration.ts';

/** All migrations in order: the first one starts from version 1. Version 1 is the first, so there is none yet. */
export const MIGRATIONS: readonly Migration[] = [];
