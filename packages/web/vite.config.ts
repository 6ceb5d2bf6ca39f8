import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/**
 * The page is built from the packages' sources, as the tests are. By their paths and not by the `source` condition of
 * `exports`: other people's packages name a `source` there too, without shipping it.
 */
export default defineConfig({
  base: './',
  plugins: [react()],
  resolve: {
    alias: [
      {
        find: /^@sagwright\/([a-z]+)\/(.+)$/,
        replacement: fileURLToPath(new URL('../$1/src/$2.ts', import.meta.url)),
      },
    ],
  },
  worker: { format: 'es' },
  build: { target: 'es2022', outDir: 'dist', emptyOutDir: true },
});
