import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: { conditions: ['undercroft-source'] },
  ssr: { resolve: { conditions: ['undercroft-source'] } },
  test: {
    include: ['packages/*/test/**/*.test.ts', 'tests/**/*.test.ts'],
    exclude: ['**/*.long.test.ts', '**/node_modules/**'],
    testTimeout: 30_000,
  },
});
