import { lastBuildYear } from '#domain/calendar.js';
import { standsThrough } from '../counting.js';
import type { Measure } from '../shortfall.js';

/** Sites missing for every zone to have the least number, existing sites counted, by the horizon. */
export const zoneShortfall: Measure<'zone-balance'> = (campus, plan, test) => {
  const last = lastBuildYear(campus.calendar);
  const built = new Set(
    plan.decisions.placements
      .filter((p) => test.returnedCounts || standsThrough(campus, p, last))
      .map((p) => p.site),
  );
  const short = campus.zones.map((zone) => {
    const existing = campus.existing.filter((s) => s.zone === zone.id).length;
    const placed = campus.candidates.filter((s) => s.zone === zone.id && built.has(s.id)).length;
    return {
      name: zone.name,
      missing: Math.max(0, test.leastPerZone - existing - placed),
      whole: Math.max(0, test.leastPerZone - existing),
    };
  });
  return {
    amount: short.reduce((sum, z) => sum + z.missing, 0),
    unit: 'sites',
    whole: short.reduce((sum, z) => sum + z.whole, 0),
    where: short.filter((z) => z.missing > 0).map((z) => z.name),
  };
};
