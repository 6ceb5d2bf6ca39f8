import { defineConfig } from 'vitest/config';

/** Tests of the built page in a real browser: one file after another, since they share the machine's few cores. */
export default defineConfig({
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'] } },
  test: {
    include: ['packages/web/e2e/**/*.test.ts'],
    fileParallelism: false,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
