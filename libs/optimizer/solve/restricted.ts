import type { Decisions } from '#domain/plan.js';
import { placementKey } from '#domain/plan.js';
import type { Lifecycle } from '#rules/columns.js';
import type { Ground } from '../columns/add-columns.js';
import type { Tier } from '../tiers/tier-list.js';
import type { Relaxation } from './solve-tier.js';

/** A ground with fewer lives, and whether every better plan is still among those left. */
export interface Restricted {
  readonly ground: Ground;
  readonly exact: boolean;
}

export interface Restriction {
  readonly tier: Tier;
  readonly relaxation: Relaxation;
  /** The best plan so far, and what it reaches in the tier: its lives are always kept. */
  readonly best: { readonly decisions: Decisions; readonly value: number };
  /** Lives to keep at the most, those that cost the relaxation least first. */
  readonly most: number;
  /** Lives to choose from, beside those of the best plan. Left out: all. */
  readonly among?: ReadonlySet<Lifecycle>;
}

/** Share of a bound by which numbers of a relaxation are not to be trusted. */
const DOUBT = 1e-6;

/**
 * Leaves out lives that no better plan has, by their reduced cost: taking up such a life alone would
 * make the relaxation worse than the best plan (reduced-cost fixing, Dantzig, Fulkerson and Johnson
 * 1954). Of the rest, the `most` cheapest are kept; where that cuts, it is a guess and not exact.
 */
export function restricted(ground: Ground, of: Restriction): Restricted {
  const { tier, relaxation, best } = of;
  const own = new Set(best.decisions.placements.map(placementKey));
  const step = tier.commitment ? 1 - DOUBT : 0;
  const spare =
    (tier.sense === 'min' ? best.value - step - relaxation.bound : relaxation.bound - best.value) +
    DOUBT * Math.max(1, Math.abs(relaxation.bound));
  const cost = (l: Lifecycle) => relaxation.costOf.get(l) ?? 0;
  const isOwn = (l: Lifecycle) => own.has(placementKey(l.placement));
  const loses = (l: Lifecycle) => relaxation.losesAtLeast.get(l) ?? 0;
  const useful = ground.lifecycles.filter((l) => isOwn(l) || loses(l) <= spare);
  const { among } = of;
  const open = among ? useful.filter((l) => isOwn(l) || among.has(l)) : useful;
  const exact = open.length === useful.length;
  if (open.length <= of.most) return { ground: { ...ground, lifecycles: open }, exact };
  const limit = open.map(cost).sort((a, b) => a - b)[of.most] ?? Infinity;
  const core = open.filter(
    (l) => isOwn(l) || cost(l) < limit || (relaxation.valueOf.get(l) ?? 0) > 0,
  );
  return { ground: { ...ground, lifecycles: core }, exact: false };
}
