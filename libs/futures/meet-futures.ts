import type { Faced, FuturesOrder, Policy } from './order.js';
import { oddsOf } from './sampling/odds.js';
import { sampleWorld } from './sampling/world.js';
import type { Outcome } from './stress/outcome.js';
import { runFuture } from './stress/run-future.js';
import { settingOf, type Setting } from './stress/setting.js';

/** Meets spans of futures with one plan, which is worked out once for each policy. */
export type Meeter = (order: Omit<FuturesOrder, keyof Faced>) => Outcome[];

export function meeterOf({ campus, plan }: Faced): Meeter {
  const { odds } = oddsOf(campus);
  const kept = new Map<Policy, Setting>();
  return ({ seed, policy, from, to }) => {
    const setting = kept.get(policy) ?? settingOf({ campus, plan, policy }, odds);
    kept.set(policy, setting);
    return Array.from({ length: to - from }, (_, i) => {
      const future = from + i;
      return runFuture(setting, sampleWorld(campus, odds, { seed, future }), future);
    });
  };
}

/** Meets the futures of an order by its policy. */
export function meetFutures(order: FuturesOrder): Outcome[] {
  return meeterOf(order)(order);
}
