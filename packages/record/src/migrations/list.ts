import type { Migration } from './migration.ts';
import { planMayWait } from './v1-plan-may-wait.ts';

/** All migrations in order: the first one starts from version 1. */
export const MIGRATIONS: readonly Migration[] = [planMayWait];
