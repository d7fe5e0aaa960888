import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: { conditions: ['undercroft-source'] },
  ssr: { resolve: { conditions: ['undercroft-source'] } },
  test: {
    setupFiles: ['tests/setup/fixed-seed.ts'],
    include: ['packages/*/test/**/*.test.ts', 'tests/**/*.test.ts'],
    exclude: ['**/*.long.test.ts', '**/*.browser.test.ts', '**/node_modules/**'],
    testTimeout: 90_000,
    // Our modules keep no state, so test files share them; loading the engine anew for each file cost most of the time.
    isolate: false,
    // One worker for each core: vitest leaves one core idle by itself.
    maxWorkers: '100%',
  },
});
