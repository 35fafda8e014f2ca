import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import type { CampusCharges } from '#estimating/site-charges/campus-charges.js';
import { commitmentShortfall } from '#rules/commitment-shortfall.js';
import { changeOf } from '#rules/stability/change.js';
import { planBenefit } from './plan-benefit.js';
import { recurringCost } from './recurring-cost.js';
import { tiersOf, type Tier } from './tier-list.js';

/** What a plan reaches in every tier, in the tier's unit, from its whole-unit accounts. */
export function tierValues(campus: Campus, plan: Plan, charges: CampusCharges): number[] {
  return tiersOf(campus).map((tier) => tierValue(tier, campus, { plan, charges }));
}

function tierValue(tier: Tier, campus: Campus, of: { plan: Plan; charges: CampusCharges }): number {
  const { plan, charges } = of;
  if (tier.commitment) return commitmentShortfall(campus, plan, tier.commitment).amount;
  switch (tier.name) {
    case 'unserved-peak':
      return Math.max(0, ...bySeason(plan).values()) / 100;
    case 'unserved-total':
      return plan.unserved.reduce((sum, e) => sum + e.hours, 0) / 100;
    case 'benefit':
      return planBenefit(campus, plan) / 1000;
    case 'recurring-cost':
      return Math.max(0, ...recurringCost(campus, plan.decisions, charges)) / 100;
    case 'change':
      return changeOf(campus, plan);
    default:
      throw new RangeError(`no tier called ${tier.name}`);
  }
}

function bySeason(plan: Plan): Map<number, number> {
  const seasons = new Map<number, number>();
  for (const { season, hours } of plan.unserved) {
    seasons.set(season, (seasons.get(season) ?? 0) + hours);
  }
  return seasons;
}

/** Below 0 where `a` is the better plan, above 0 where `b` is, 0 where no tier tells them apart. */
export function compareTiers(campus: Campus, a: readonly number[], b: readonly number[]): number {
  for (const [i, tier] of tiersOf(campus).entries()) {
    const difference = (a[i] ?? 0) - (b[i] ?? 0);
    if (Math.abs(difference) < 1e-9) continue;
    return tier.sense === 'min' ? difference : -difference;
  }
  return 0;
}
