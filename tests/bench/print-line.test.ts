/** What a process of the bench says arrives whole, however busy the bench is meanwhile. */
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, test } from 'vitest';
import { runChild } from './peers/child.js';

const built = pathToFileURL(resolve('dist/tests/bench/print-line.js')).href;

test('lines that a bench does not read for a while arrive later, all and in order', async () => {
  const script = `
    import { printLine } from '${built}';
    // Once it is open, writes to it no longer wait: threads open it.
    void process.stdout;
    for (let place = 0; place < 20_000; place++) printLine({ place });
  `;
  const args = ['--input-type=module', '--eval', script];
  const run = runChild(process.execPath, args, { atMostSeconds: 60 });
  const busy = new Int32Array(new SharedArrayBuffer(4));
  Atomics.wait(busy, 0, 0, 500);
  const { code, lines } = await run;
  expect(code).toBe(0);
  expect(lines.map(({ text }) => text)).toEqual(
    Array.from({ length: 20_000 }, (_, place) => JSON.stringify({ place })),
  );
});
