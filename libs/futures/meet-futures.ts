import type { FuturesOrder } from './order.js';
import { oddsOf } from './sampling/odds.js';
import { sampleWorld } from './sampling/world.js';
import type { Outcome } from './stress/outcome.js';
import { runFuture } from './stress/run-future.js';
import { settingOf } from './stress/setting.js';

/** Meets the futures of an order by its policy. */
export function meetFutures({ campus, plan, seed, policy, from, to }: FuturesOrder): Outcome[] {
  const { odds } = oddsOf(campus);
  const setting = settingOf({ campus, plan, policy }, odds);
  return Array.from({ length: to - from }, (_, i) => {
    const future = from + i;
    return runFuture(setting, sampleWorld(campus, odds, { seed, future }), future);
  });
}
