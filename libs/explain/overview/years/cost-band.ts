import { yearIndexOf } from '#domain/calendar.js';
import type { Placement } from '#domain/plan.js';
import { classBand } from '#estimating/cost/class-band.js';
import { typical } from '#estimating/defaults/coefficients.js';
import { buildCostOf, buildCosts } from '#estimating/plan-needs/money-needs.js';
import { cents, centsToDollars } from '#units/cents.js';
import { fiscalYearLabel, type FiscalYear } from '#units/fiscal-year.js';
import type { Ground } from '../ground.js';
import type { CostBand } from '../plan-overview.js';

/** Capital of a placement as a class 5 estimate, in dollars of the year in which it is prepared. */
export function costBandOf({ campus, charges }: Ground, placement: Placement): CostBand {
  return bandOf(buildCostOf(campus, placement, charges).amount, placement.year);
}

/** Capital of what a placement prepares in one year: all of it, or one half. */
export function costBandIn(ground: Ground, placement: Placement, year: FiscalYear): CostBand {
  const bills = buildCosts(ground, placement).filter(
    ({ yearIndex }) => yearIndex === yearIndexOf(ground.campus.calendar, year),
  );
  return bandOf(
    bills.reduce((sum, { amount }) => sum + amount, 0),
    year,
  );
}

function bandOf(amount: number, year: FiscalYear): CostBand {
  const class5 = { below: typical('cost.class-5-low'), above: typical('cost.class-5-high') };
  return { ...classBand(centsToDollars(cents(amount)), class5), dollarsOf: fiscalYearLabel(year) };
}
