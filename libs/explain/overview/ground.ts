import { yearAt } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Placement, Plan } from '#domain/plan.js';
import type { CampusCharges } from '#estimating/site-charges/campus-charges.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { possibleLifecycles } from '#optimizer/columns/lifecycles.js';
import type { Lifecycle } from '#rules/columns.js';
import type { FiscalYear } from '#units/fiscal-year.js';
import { busySeason, type BusySeason } from './labor/busy-season.js';

/** What every part of an overview is worked out from. */
export interface Ground {
  readonly campus: Campus;
  readonly plan: Plan;
  readonly charges: CampusCharges;
  /** Every life that some candidate may have by its gates, windows, works and hand placements. */
  readonly lifecycles: readonly Lifecycle[];
  /** The years in which sites may be prepared. */
  readonly years: readonly FiscalYear[];
  readonly placed: ReadonlyMap<string, Placement>;
  readonly busy: BusySeason;
}

export function groundOf(campus: Campus, plan: Plan): Ground {
  const charges = campusCharges(campus);
  const { calendar } = campus;
  return {
    campus,
    plan,
    charges,
    lifecycles: possibleLifecycles(campus, charges),
    years: Array.from({ length: calendar.horizonYears }, (_, index) => yearAt(calendar, index)),
    placed: new Map(plan.decisions.placements.map((p) => [p.site, p])),
    busy: busySeason(campus, plan.decisions, charges),
  };
}
