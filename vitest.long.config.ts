import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: { conditions: ['undercroft-source'] },
  ssr: { resolve: { conditions: ['undercroft-source'] } },
  test: {
    setupFiles: ['tests/setup/fixed-seed.ts'],
    include: ['packages/*/test/**/*.long.test.ts', 'tests/**/*.long.test.ts'],
    testTimeout: 600_000,
  },
});
