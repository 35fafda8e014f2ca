import { digestOf } from '#contracts/canonical.js';
import type { JsonDocument } from '#planning/json-document.js';
import type { PlanOverview } from '#planning/ports/plan-overview.js';

/** Overviews that are held at once: a few plans are looked at beside each other. */
const MOST = 4;

/**
 * Keeps the overviews that were asked for last: each takes about a second for a usual campus. A plan
 * names the digest of its campus, so that its own digest tells them apart.
 */
export function rememberedOverview(overview: PlanOverview): PlanOverview {
  const held = new Map<string, Promise<JsonDocument>>();
  return {
    of(campus, plan) {
      const key = digestOf(plan);
      const found = held.get(key) ?? overview.of(campus, plan);
      held.delete(key);
      held.set(key, found);
      found.catch(() => held.delete(key));
      for (const oldest of [...held.keys()].slice(0, -MOST)) held.delete(oldest);
      return found;
    },
  };
}
