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

test('an unsteady contender is told by its median, against the first one', async () => {
  let now = 0;
  const taking = (...times: number[]) => ({
    run: () => {
      now += times.shift() ?? 0;
    },
  });
  const bench = {
    name: 'turns',
    about: '',
    sizeUnit: '',
    sizes: [1],
    contenders: () => [
      { name: 'steady', ...taking(99, 10, 10, 10) },
      { name: 'unsteady', ...taking(99, 5, 300, 4) },
    ],
  };
  const effort = { rounds: 3, milliseconds: 0, clock: () => now };
  expect(await measure(bench, 1, effort)).toEqual([
    { contender: 'steady', medianMs: 10, ratio: 1 },
    { contender: 'unsteady', medianMs: 5, ratio: 0.5 },
  ]);
});
