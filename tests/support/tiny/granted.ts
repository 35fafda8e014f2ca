import type { Campus } from '#domain/campus.js';
import { NO_DECISIONS, type Decisions, type Plan } from '#domain/plan.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { ANYTHING, tinyCampus, tinyFund, tinySite } from './tiny-campus.js';

const BUILDS = { ...ANYTHING, lines: ['build'] as const };

/**
 * $50,000 of capital in FY2028, to be spent by FY2030, and a grant that pays back one dollar for each other
 * one on site A, $24,000 at most, for spending of FY2028 and FY2029. Prices do not grow, so A costs $40,000
 * and B $24,000; care is paid from elsewhere.
 */
export function grantedCampus(lagYears: number): Campus {
  return tinyCampus({
    escalation: { construction: 0, wages: 0, supplies: 0 },
    candidates: [tinySite('A'), tinySite('B', { zone: 'south', areaSqFt: 3000 })],
    funds: [
      tinyFund('capital', 0, {
        name: 'Capital',
        inflows: [
          {
            year: fiscalYear(2028),
            amount: cents(50_000_00),
            lastYear: fiscalYear(2030),
            restriction: BUILDS,
          },
        ],
      }),
      tinyFund('grant', 0, {
        name: 'Rain grant',
        kind: 'grant',
        status: 'pledged',
        matchRatio: 1,
        reimbursement: { frontedBy: 'capital', lagYears },
        inflows: [
          {
            year: fiscalYear(2028),
            amount: cents(24_000_00),
            lastYear: fiscalYear(2029),
            restriction: { ...BUILDS, sites: ['A'] },
          },
        ],
      }),
      tinyFund('care', 20_000, { restriction: { ...ANYTHING, lines: ['care'] } }),
    ],
  });
}

/** A in FY2028 and B in a year. */
export function builtIn(year: number): Decisions {
  return {
    ...NO_DECISIONS,
    placements: [
      { site: 'A', buildType: 'beds', year: fiscalYear(2028) },
      { site: 'B', buildType: 'beds', year: fiscalYear(year) },
    ],
  };
}

export function grantedPlan(
  lagYears: number,
  year: number,
): { campus: Campus; plan: Plan; short: number } {
  const campus = grantedCampus(lagYears);
  const { plan, shortages } = completePlan(campus, builtIn(year), campusCharges(campus));
  const short = shortages
    .filter(({ resource }) => resource === 'money')
    .reduce((sum, { amount }) => sum + amount, 0);
  return { campus, plan, short };
}
