import { placementKey } from '#domain/plan.js';
import type { Solver } from '#mip/solver.js';
import type { Lifecycle } from '#rules/columns.js';
import type { Ground } from '../columns/add-columns.js';
import { pricesOf, type Prices } from '../improve/prices.js';
import { relaxTier } from '../solve/solve-tier.js';
import { benefitPlace, tiersOf } from '../tiers/tier-list.js';
import type { GuidePrices } from './order.js';

/** Prices of a relaxation of benefit with the tiers before it held at a plan's values. */
export function guidePrices(
  ground: Ground,
  values: readonly number[],
  of: { readonly solver: Solver; readonly shouldStop: () => boolean },
): GuidePrices | undefined {
  const tiers = tiersOf(ground.campus);
  const before = values.slice(0, benefitPlace(tiers));
  const held = new Map(before.map((value, i) => [tiers[i]?.name ?? '', value]));
  const question = { ...of, ground, tier: 'benefit', held, seed: 1, limits: {} };
  const relaxed = relaxTier(question);
  if (relaxed === null || relaxed === 'infeasible') return undefined;
  const costs = [...relaxed.costOf].map(([l, cost]) => [placementKey(l.placement), cost] as const);
  return { costs: new Map(costs), bound: relaxed.bound, held: before };
}

/**
 * Prices for a changed campus. A site that is fixed by hand has to be taken up in any case, so only what
 * one of its lives costs beyond the cheapest counts. Lives that the prices do not know are taken for free.
 */
export function pricesFor({ campus, lifecycles }: Ground, guide: GuidePrices): Prices {
  const cost = (l: Lifecycle) => guide.costs.get(placementKey(l.placement)) ?? 0;
  const costOf = new Map(lifecycles.map((l) => [l, cost(l)]));
  for (const { site, kind } of campus.handPlacements) {
    if (kind !== 'fixed') continue;
    const lives = lifecycles.filter((l) => l.site === site);
    const least = Math.min(...lives.map(cost));
    for (const l of lives) costOf.set(l, cost(l) - least);
  }
  return pricesOf({ costOf, bound: guide.bound });
}
