import type { Placement } from '#domain/plan.js';
import { classBand } from '#estimating/cost/class-band.js';
import { typical } from '#estimating/defaults/coefficients.js';
import { buildCostOf } from '#estimating/plan-needs/money-needs.js';
import { centsToDollars } from '#units/cents.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Ground } from '../ground.js';
import type { CostBand } from '../plan-overview.js';

/** Capital of a placement as a class 5 estimate, in dollars of the year in which it is prepared. */
export function costBandOf({ campus, charges }: Ground, placement: Placement): CostBand {
  const class5 = { below: typical('cost.class-5-low'), above: typical('cost.class-5-high') };
  const likely = centsToDollars(buildCostOf(campus, placement, charges).amount);
  return { ...classBand(likely, class5), dollarsOf: fiscalYearLabel(placement.year) };
}
