import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const path = (relative: string): string => fileURLToPath(new URL(relative, import.meta.url));

/** Where `vite apps/web` finds a running api while someone works on the page. */
const apiAddress = process.env['API_ADDRESS'] ?? 'http://127.0.0.1:4600';

export default defineConfig({
  root: path('.'),
  cacheDir: path('../../node_modules/.cache/vite-page'),
  plugins: [react()],
  build: { outDir: path('../../dist/web'), emptyOutDir: true },
  server: { proxy: { '/api': apiAddress } },
});
