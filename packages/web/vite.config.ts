import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

/**
 * The page is built from the packages' sources, as the tests are. By their paths and not by the `source` condition of
 * `exports`: other people's packages name a `source` there too, without shipping it.
 */
export default defineConfig({
  base: './',
  plugins: [
    react(),
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      manifest: {
        name: 'Sagwright',
        short_name: 'Sagwright',
        description: 'Suspension set-up plans for loaded motorcycles',
        display: 'standalone',
        start_url: './',
        background_color: '#fbfcfa',
        theme_color: '#e9ede8',
        icons: [
          { src: 'sign-192.png', sizes: '192x192', type: 'image/png', purpose: 'any maskable' },
          { src: 'sign-512.png', sizes: '512x512', type: 'image/png', purpose: 'any maskable' },
        ],
      },
      workbox: { globPatterns: ['**/*.{html,js,css,woff2,svg,png}'], cleanupOutdatedCaches: true },
    }),
  ],
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
