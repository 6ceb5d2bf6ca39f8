import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** The page is built from the packages' sources, as the tests are. */
export default defineConfig({
  base: './',
  plugins: [react()],
  resolve: { conditions: ['source', 'module', 'browser', 'import', 'default'] },
  worker: { format: 'es' },
  build: { target: 'es2022', outDir: 'dist', emptyOutDir: true },
});
