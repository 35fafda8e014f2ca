import type { Breach } from '#domain/breach.js';
import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import type { SolveReport, TierResult } from '#domain/tier.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { tierResult } from '#optimizer/solve/tier-report.js';
import { tierValues } from '#optimizer/tiers/tier-values.js';
import { benefitPlace, tiersOf, type Tier } from '#optimizer/tiers/tier-list.js';
import { checkPlan } from '#rules/check-plan.js';

/** What a plan file says of itself. */
export type PlanClaims = Pick<SolveReport, 'ending' | 'tiers'>;

/**
 * Every rule that a plan breaks, and everything that its file claims and that does not follow from it:
 * the value of each tier, and whether the bound given proves it. The bounds themselves are the
 * solver's word; they cannot be recomputed from the plan.
 */
export function checkPlanFile(campus: Campus, plan: Plan, claims: PlanClaims): Breach[] {
  const breaches = checkPlan(campus, plan);
  return breaches.length > 0 ? breaches : claimBreaches(campus, plan, claims);
}

function claimBreaches(
  campus: Campus,
  plan: Plan,
  { ending, tiers: stated }: PlanClaims,
): Breach[] {
  const tiers = tiersOf(campus);
  const values = tierValues(campus, plan, campusCharges(campus));
  const found = tiers.flatMap((tier, i) => tierBreach(tier, values[i] ?? 0, stated[i]));
  const extra = stated
    .slice(tiers.length)
    .map((t) => breach(t.name, 'the campus has no such tier'));
  const proven = stated.slice(0, benefitPlace(tiers) + 1).every((t) => t.proven);
  const endings =
    proven === (ending === 'proven')
      ? []
      : [breach('ending', `the plan file ends as ${ending}, which its tiers do not bear out`)];
  return [...found, ...extra, ...endings];
}

function breach(record: string, message: string): Breach {
  return { rule: 'tiers', record, message };
}

function tierBreach(tier: Tier, value: number, claim: TierResult | undefined): Breach[] {
  if (claim?.name !== tier.name || claim.unit !== tier.unit || claim.sense !== tier.sense) {
    const said = claim ? `${claim.name} in ${claim.unit}` : 'nothing';
    return [
      breach(tier.name, `the plan file states ${said} where ${tier.name} in ${tier.unit} is due`),
    ];
  }
  if (differs(claim.value, value)) {
    const found = `recomputed it is ${value} ${tier.unit}`;
    return [breach(tier.name, `the plan file states ${claim.value} for ${tier.name}; ${found}`)];
  }
  const due = tierResult(tier, value, claim.bound);
  if (claim.proven === due.proven && !differs(claim.gap ?? -1, due.gap ?? -1)) return [];
  const bound = claim.bound === null ? 'no bound' : `the bound ${claim.bound}`;
  return [
    breach(
      tier.name,
      `the plan file claims more or less proof for ${tier.name} than ${bound} gives`,
    ),
  ];
}

function differs(a: number, b: number): boolean {
  return Math.abs(a - b) > 1e-6 * Math.max(1, Math.abs(b));
}
