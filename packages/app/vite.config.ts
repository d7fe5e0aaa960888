import react from '@vitejs/plugin-react';
import { defaultClientConditions, defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

export default defineConfig({
  base: './',
  // The sources of our own packages are bundled, so that the app needs no build of them.
  resolve: { conditions: ['undercroft-source', ...defaultClientConditions] },
  build: { target: 'es2023', sourcemap: false },
  worker: { format: 'es' },
  plugins: [
    react(),
    VitePWA({
      // A new version waits until a person asks for it: never in the middle of a survey.
      registerType: 'prompt',
      injectRegister: false,
      manifest: {
        id: './',
        name: 'Undercroft',
        short_name: 'Undercroft',
        description: 'Survey, explain, repair and keep dry a crawl space',
        start_url: './',
        scope: './',
        display: 'standalone',
        background_color: '#14161a',
        theme_color: '#14161a',
        icons: [
          { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' },
          { src: 'icon-192.png', sizes: '192x192', type: 'image/png', purpose: 'any' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'any maskable' },
        ],
      },
      workbox: {
        globPatterns: ['**/*.{js,css,html,wasm,woff2,ttf,json,svg,png,webmanifest}'],
        maximumFileSizeToCacheInBytes: 6_000_000,
        cleanupOutdatedCaches: true,
      },
    }),
  ],
});
