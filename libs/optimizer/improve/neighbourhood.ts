import { yearIndexOf } from '#domain/calendar.js';
import { placementKey, type Decisions } from '#domain/plan.js';
import { randomBelow, shuffled, type Random } from '#units/random.js';
import type { Lifecycle } from '#rules/columns.js';
import type { Ground } from '../columns/add-columns.js';

/** How much of a plan one re-solve may change. */
export interface Freedom {
  /** Sites whose life is chosen anew. */
  readonly sites: number;
  /** Years to each side of a window. */
  readonly windowYears: number;
}

/**
 * The ground around a plan: the sites set free keep every life they may have, the others only the
 * life that the plan gives them, or none. Freed are, in turn by chance, sites built in a window of
 * years, or any sites; sites that the plan leaves out are freed with them.
 */
export function neighbourhood(
  ground: Ground,
  decisions: Decisions,
  chance: { readonly random: Random; readonly freedom: Freedom },
): Ground {
  const free = freedSites(ground, decisions, chance);
  const kept = new Set(decisions.placements.filter((p) => !free.has(p.site)).map(placementKey));
  const isKept = (l: Lifecycle) => kept.has(placementKey(l.placement));
  const lifecycles = ground.lifecycles.filter((l) => free.has(l.site) || isKept(l));
  return { ...ground, lifecycles, fixed: new Set(lifecycles.filter((l) => !free.has(l.site))) };
}

function freedSites(
  ground: Ground,
  decisions: Decisions,
  { random, freedom }: { readonly random: Random; readonly freedom: Freedom },
): Set<string> {
  const built = decisions.placements;
  const out = new Set(ground.lifecycles.map((l) => l.site));
  for (const p of built) out.delete(p.site);
  const unbuilt = shuffled(random, [...out]).slice(0, Math.ceil(freedom.sites / 2));
  const pool =
    random() < 0.6 ? inWindow(ground, decisions, { random, freedom }) : built.map((p) => p.site);
  const chosen = shuffled(random, pool).slice(0, Math.max(2, freedom.sites - unbuilt.length));
  return new Set([...unbuilt, ...chosen]);
}

function inWindow(
  { campus }: Ground,
  decisions: Decisions,
  { random, freedom }: { readonly random: Random; readonly freedom: Freedom },
): string[] {
  const center = randomBelow(random, campus.calendar.horizonYears);
  return decisions.placements
    .filter((p) => Math.abs(yearIndexOf(campus.calendar, p.year) - center) <= freedom.windowYears)
    .map((p) => p.site);
}
