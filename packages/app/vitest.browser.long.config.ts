import { mergeConfig } from 'vitest/config';
import browser from './vitest.browser.config.ts';

/** Walks over every screen, which take minutes: npm run test:long at the root runs them after the rest. */
export default mergeConfig(
  { ...browser, test: { ...browser.test, include: [], exclude: [] } },
  { test: { include: ['test/browser/**/*.long.browser.test.ts'] } },
);
