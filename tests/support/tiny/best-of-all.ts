import { expect } from 'vitest';
import type { Campus } from '#domain/campus.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import type { SolveResult } from '#optimizer/solve/solve-campus.js';
import { benefitPlace, tiersOf } from '#optimizer/tiers/tier-list.js';
import { compareTiers, tierValues } from '#optimizer/tiers/tier-values.js';
import { checkPlan } from '#rules/check-plan.js';
import { everyDecision } from './every-decision.js';

/** Tier values of the best of all decisions; `undefined` where none passes every check. */
export function bestOfAll(campus: Campus): number[] | undefined {
  const charges = campusCharges(campus);
  let best: number[] | undefined;
  for (const decisions of everyDecision(campus)) {
    const { plan, shortages } = completePlan(campus, decisions, charges);
    if (shortages.length > 0 || checkPlan(campus, plan).length > 0) continue;
    const values = tierValues(campus, plan, charges);
    if (!best || compareTiers(campus, values, best) < 0) best = values;
  }
  return best;
}

/**
 * Fails where a solve that ran to its end is not what trying every decision finds: the ending, the
 * verified plan, each tier within its tolerance, and bounds on the right side of the best.
 */
export function expectBest(
  campus: Campus,
  { report, plan }: SolveResult,
  best: readonly number[] | undefined,
): void {
  expect(report.ending).toBe(best ? 'proven' : 'no-plan');
  if (!best || !plan) return;
  expect(checkPlan(campus, plan)).toEqual([]);
  const upTo = benefitPlace(tiersOf(campus)) + 1;
  let equal = true;
  for (const [i, tier] of report.tiers.slice(0, upTo).entries()) {
    const wanted = best[i] ?? NaN;
    const worse = tier.sense === 'min' ? tier.value - wanted : wanted - tier.value;
    const told = `${tier.name} ${tier.value}, bound ${tier.bound}, best of all ${wanted}`;
    // An earlier tier within its tolerance may be what a later one is better for.
    expect(worse, told).toBeLessThanOrEqual(tier.tolerance + 1e-6);
    if (!equal) continue;
    expect(worse, told).toBeGreaterThanOrEqual(-1e-6);
    const bound = tier.bound ?? NaN;
    const short = tier.sense === 'min' ? bound - wanted : wanted - bound;
    expect(short, told).toBeLessThanOrEqual(tier.tolerance + 1e-6);
    equal = Math.abs(worse) < 1e-9;
  }
}
