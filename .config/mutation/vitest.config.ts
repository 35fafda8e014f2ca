import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Only the estimating tests, with one seed: a mutant must meet the same cases each time. */
export default defineConfig({
  root,
  resolve: {
    alias: [{ find: /^#(.+)\.js$/, replacement: `${root}libs/$1` }],
    extensions: ['.ts', '.js'],
  },
  cacheDir: 'node_modules/.cache/vite-mutation',
  test: {
    include: ['tests/estimating/**/*.test.ts'],
    exclude: ['tests/estimating/outside-checks-table.test.ts'],
    setupFiles: ['.config/mutation/fixed-seed.ts'],
    testTimeout: 60_000,
  },
});
