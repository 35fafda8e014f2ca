import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { leftOut } from '../tests/support/needs.js';

const root = fileURLToPath(new URL('..', import.meta.url));

export default defineConfig({
  root,
  resolve: {
    alias: [
      { find: /^#(apps\/.+)\.js$/, replacement: `${root}$1` },
      { find: /^#(.+)\.js$/, replacement: `${root}libs/$1` },
    ],
    extensions: ['.ts', '.tsx', '.js'],
  },
  cacheDir: 'node_modules/.cache/vite',
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: leftOut().map(({ pattern }) => pattern),
    setupFiles: ['tests/support/fixed-seed.ts'],
    globalSetup: ['tests/support/announce.ts', 'tests/support/database-servers.ts'],
    // One more than there are cores: tests wait for browsers and other processes a quarter of the time. Left
    // alone, the runner keeps one of two cores free for watching.
    maxWorkers: availableParallelism() + 1,
    // Importing the sources anew for each of 200 files took a third of the computing. So a file must put
    // back what it stubs, and stop what it starts.
    isolate: false,
    // Generous: a busy machine makes a slow test, not a failed one.
    testTimeout: 60_000,
    hookTimeout: 180_000,
    allowOnly: false,
    unstubEnvs: true,
    restoreMocks: true,
  },
});
