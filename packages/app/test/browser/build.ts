import { buildApp } from './harness.ts';

/** Builds the app once for all files of a run. */
export default function setup(): void {
  buildApp();
  process.env.UNDERCROFT_APP_BUILT = '1';
}
