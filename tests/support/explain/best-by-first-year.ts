import type { Campus } from '#domain/campus.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import { compareTiers, tierValues } from '#optimizer/tiers/tier-values.js';
import { checkPlan } from '#rules/check-plan.js';
import { everyDecision } from '../tiny/every-decision.js';

/** By the sites of the first year, joined by plus signs: tier values of the best of all plans that build them in it. */
export function bestByFirstYear(campus: Campus): ReadonlyMap<string, readonly number[]> {
  const charges = campusCharges(campus);
  const best = new Map<string, readonly number[]>();
  for (const decisions of everyDecision(campus)) {
    const { plan, shortages } = completePlan(campus, decisions, charges);
    if (shortages.length > 0 || checkPlan(campus, plan).length > 0) continue;
    const values = tierValues(campus, plan, charges);
    const key = firstSites(campus, decisions.placements);
    const before = best.get(key);
    if (!before || compareTiers(campus, values, before) < 0) best.set(key, values);
  }
  return best;
}

function firstSites(
  { calendar }: Campus,
  placements: readonly { readonly site: string; readonly year: number }[],
): string {
  const first = placements.filter(({ year }) => year === calendar.firstYear);
  return first
    .map(({ site }) => site)
    .sort()
    .join('+');
}
