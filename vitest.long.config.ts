import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: { conditions: ['undercroft-source'] },
  ssr: { resolve: { conditions: ['undercroft-source'] } },
  test: {
    include: ['packages/*/test/**/*.long.test.ts', 'tests/**/*.long.test.ts'],
    testTimeout: 600_000,
  },
});
