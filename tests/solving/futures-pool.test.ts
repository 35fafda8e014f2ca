/** Futures that threads of the build meet while the time lasts. */
import { afterEach, expect, test } from 'vitest';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { futures } from '#futures/futures.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import { openFuturesPool, type FuturesPool } from '#solving/futures-pool.js';
import { tinyCampus } from '../support/tiny/tiny-campus.js';

let runner: FuturesPool;
afterEach(() => runner.close());

const campus = tinyCampus();
const nothing = { placements: [], hires: [], workDays: [], purchases: [] };
const { plan } = completePlan(campus, nothing, campusCharges(campus));
const asked = { campus, plan, seed: 1, onStep: () => undefined };

test('with its time over, an answer is still of some futures, and says how many are missing', async () => {
  runner = openFuturesPool({ seconds: 0 });
  const answer = await futures({ ...asked, futures: 5000, mended: 10, runner });
  expect(answer.fixed.futures).toBeGreaterThan(0);
  expect(answer.fixed.futures).toBeLessThan(5000);
  expect(answer.fixed.builtSites.p50.value).toBe(0);
  expect(answer.leftOut.join(' ')).toContain('for want of time');
});

test('called off, none is begun', async () => {
  runner = openFuturesPool({ signal: AbortSignal.abort() });
  const order = { campus, plan, seed: 1, policy: 'keep' as const, from: 0, to: 5 };
  expect(await runner.run(order)).toBeUndefined();
});
