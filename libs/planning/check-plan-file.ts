import type { Breach } from '#domain/breach.js';
import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import type { TierResult } from '#domain/tier.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { tierValues } from '#optimizer/tiers/tier-values.js';
import { tiersOf } from '#optimizer/tiers/tier-list.js';
import { checkPlan } from '#rules/check-plan.js';

/** Every rule that a plan breaks, and every tier whose stated value it does not reach. */
export function checkPlanFile(campus: Campus, plan: Plan, stated: readonly TierResult[]): Breach[] {
  const breaches = checkPlan(campus, plan);
  return breaches.length > 0 ? breaches : tierBreaches(campus, plan, stated);
}

function tierBreaches(campus: Campus, plan: Plan, stated: readonly TierResult[]): Breach[] {
  const values = tierValues(campus, plan, campusCharges(campus));
  return tiersOf(campus).flatMap((tier, i) => {
    const value = values[i] ?? 0;
    const claim = stated.find((t) => t.name === tier.name);
    if (claim && Math.abs(claim.value - value) <= 1e-6 * Math.max(1, Math.abs(value))) return [];
    const said = claim ? `${claim.value} ${claim.unit}` : 'nothing';
    return [
      {
        rule: 'tiers',
        record: tier.name,
        message: `the plan file states ${said} for ${tier.name}; recomputed it is ${value} ${tier.unit}`,
      },
    ];
  });
}
