import { expect, test } from 'vitest';
import { measure, SMOKE } from './measure.js';
import { BENCHES } from './registry.js';

test('each bench has a name of its own and sizes from small to large', () => {
  const names = BENCHES.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  for (const { sizes } of BENCHES) expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
});

test.each(BENCHES)('the bench $name still runs at its smallest size', async (bench) => {
  const timings = await measure(bench, bench.sizes[0]!, SMOKE);
  expect(timings.length).toBeGreaterThan(0);
  for (const { medianMs } of timings) expect(medianMs).toBeGreaterThan(0);
});

test('an unsteady bench is told by its median, against the first contender', async () => {
  const waits = [1, 30, 1];
  const bench = {
    name: 'waits',
    about: '',
    sizeUnit: '',
    sizes: [1],
    contenders: () => [
      { name: 'steady', run: () => new Promise((done) => setTimeout(done, 10)) },
      { name: 'unsteady', run: () => new Promise((done) => setTimeout(done, waits.pop() ?? 1)) },
    ],
  };
  const [steady, unsteady] = await measure(bench, 1, { rounds: 3, milliseconds: 0 });
  expect(steady!.ratio).toBe(1);
  expect(unsteady!.ratio).toBeLessThan(1);
});
