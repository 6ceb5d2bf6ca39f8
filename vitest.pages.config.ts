import { defineConfig } from 'vitest/config';

/** Tests of the built page in a real browser: two files at a time, since they share the machine's few cores and wait a lot. */
export default defineConfig({
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'] } },
  test: {
    include: ['packages/web/e2e/**/*.test.ts'],
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
