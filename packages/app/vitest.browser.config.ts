import { defineConfig } from 'vitest/config';

/** Tests in a real browser: npm run test:browser. They need Chromium on this machine. */
export default defineConfig({
  test: {
    include: ['test/browser/**/*.browser.test.ts'],
    exclude: ['test/browser/**/*.long.browser.test.ts'],
    globalSetup: ['test/browser/build.ts'],
    testTimeout: 90_000,
    hookTimeout: 180_000,
    // Under load a page takes longer than the usual second to draw what was asked for.
    expect: { poll: { timeout: 15_000 } },
    // One browser at a time; each test file brings its own.
    fileParallelism: false,
  },
});
