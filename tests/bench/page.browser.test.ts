import { expect, test } from 'vitest';
import { ACTS } from './page/acts.js';
import { pageTimes } from './page/page-times.js';

test('the page is measured in every act, on one campus after the other', async () => {
  const times = await pageTimes([{ sites: 4, years: 2 }], { rounds: 1 });
  expect(times.map(({ name }) => name)).toEqual(ACTS.map(({ name }) => name));
  for (const { name, medianMs } of times) {
    expect(medianMs, name).toHaveLength(1);
    expect(medianMs[0], name).toBeGreaterThan(0);
  }
});
