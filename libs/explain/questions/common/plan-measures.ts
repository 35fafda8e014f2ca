import { yearIndexOf } from '#domain/calendar.js';
import { candidate, type Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { recurringCost } from '#optimizer/tiers/recurring-cost.js';
import { planBenefit } from '#optimizer/tiers/plan-benefit.js';
import { sitesCounted } from '#rules/sites-each-year/check.js';
import { cents, centsToDollars } from '#units/cents.js';
import { fiscalYearLabel, type FiscalYear } from '#units/fiscal-year.js';
import { limitRows } from '../../overview/limits/limit-rows.js';
import { fundYears } from '../../overview/ledgers/fund-years.js';
import { groundOf, type Ground } from '../../overview/ground.js';
import { seasonRows } from '../../overview/labor/season-rows.js';
import { yearlyPromises, yearsOf } from '../../overview/promises/yearly.js';
import { yearRows } from '../../overview/years/year-rows.js';
import type { LimitRow } from '../../overview/plan-overview.js';

/** What a plan comes to, in the numbers that courses of action are compared by. */
export interface PlanMeasures {
  readonly sitesBuilt: number;
  readonly areaBuiltSqFt: number;
  /** Points of benefit, discounted. */
  readonly benefitPoints: number;
  /** Years in which the first yearly promise is kept; `null` where there is none. */
  readonly promiseYearsKept: number | null;
  /** Last year up to which it is kept without a break; `null` where it is missed at once. */
  readonly promiseKeptUntil: string | null;
  readonly unservedHours: number;
  /** Capital within the horizon, in dollars of each year. */
  readonly capitalDollars: number;
  /** Pay of proposed positions within the horizon, in dollars of each year. */
  readonly positionDollars: number;
  /** Most positions that are only proposed, held in one year. */
  readonly peakPositions: number;
  /** Yearly cost in the dearest year, in dollars of the price year. */
  readonly peakRecurringDollars: number;
}

export function planMeasures(campus: Campus, plan: Plan): PlanMeasures {
  const { placements } = plan.decisions;
  const sites = placements.map((p) => candidate(campus, p.site));
  return {
    sitesBuilt: sites.length,
    areaBuiltSqFt: sites.reduce((sum, { areaSqFt }) => sum + areaSqFt, 0),
    benefitPoints: planBenefit(campus, plan) / 1000,
    ...promiseYears({ campus, plan }),
    unservedHours: plan.unserved.reduce((sum, e) => sum + e.hours, 0) / 100,
    capitalDollars: spentOn(campus, plan, 'build'),
    positionDollars: spentOn(campus, plan, 'positions'),
    peakPositions: peakPositions(campus, plan),
    peakRecurringDollars:
      Math.max(0, ...recurringCost(campus, plan.decisions, campusCharges(campus))) / 100,
  };
}

type Promised = Pick<Ground, 'campus' | 'plan'>;

function promiseYears(
  ground: Promised,
): Pick<PlanMeasures, 'promiseYearsKept' | 'promiseKeptUntil'> {
  const [promise] = yearlyPromises(ground);
  if (!promise) return { promiseYearsKept: null, promiseKeptUntil: null };
  const years = yearsOf(ground, promise.test);
  const kept = (year: FiscalYear) => sitesCounted(ground, promise.test, year) >= promise.test.count;
  const firstMissed = years.findIndex((year) => !kept(year));
  const last = firstMissed < 0 ? years.at(-1) : years[firstMissed - 1];
  return {
    promiseYearsKept: years.filter(kept).length,
    promiseKeptUntil: last === undefined ? null : fiscalYearLabel(last),
  };
}

function spentOn({ calendar }: Campus, plan: Plan, line: 'build' | 'positions'): number {
  const within = plan.spending.filter(
    (s) => s.line === line && yearIndexOf(calendar, s.year) < calendar.horizonYears,
  );
  return centsToDollars(cents(within.reduce((sum, s) => sum + s.amount, 0)));
}

function peakPositions(campus: Campus, { decisions }: Plan): number {
  const recurring = new Set(
    campus.positions.filter((p) => p.term === 'recurring').map((p) => p.id),
  );
  const stay = decisions.hires.filter((h) => recurring.has(h.position));
  const once = decisions.hires.filter((h) => !recurring.has(h.position));
  const years = new Set(decisions.hires.map((h) => h.year));
  const heldIn = (year: FiscalYear) =>
    stay.filter((h) => h.year <= year).reduce((sum, h) => sum + h.count, 0) +
    once.filter((h) => h.year === year).reduce((sum, h) => sum + h.count, 0);
  return Math.max(0, ...[...years].map(heldIn));
}

/** The limits of a plan that are reached, the earliest first. */
export function limitsReached(campus: Campus, plan: Plan): LimitRow[] {
  const ground = groundOf(campus, plan);
  const rows = {
    seasons: seasonRows(ground),
    years: yearRows(ground),
    ledger: fundYears(campus, plan),
  };
  return limitRows(ground, rows).filter(({ year }) => year !== null);
}
