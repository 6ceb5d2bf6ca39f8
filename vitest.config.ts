import { defineConfig } from 'vitest/config';

/** Tests run straight from the sources: the `source` condition of each package's `exports`. */
export default defineConfig({
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'] } },
  test: {
    include: ['packages/*/src/**/*.test.ts', 'checks/**/*.test.ts', 'scripts/**/*.test.ts'],
    testTimeout: 60_000,
    // A plan that is not there yet fails; `npm run examples:accept` writes it.
    update: 'none',
  },
});
