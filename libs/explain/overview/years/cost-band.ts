import type { Placement } from '#domain/plan.js';
import { classBand } from '#estimating/cost/class-band.js';
import { buildCostOf } from '#estimating/plan-needs/money-needs.js';
import { centsToDollars } from '#units/cents.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Ground } from '../ground.js';
import type { CostBand } from '../plan-overview.js';

/**
 * Expected range of a concept estimate (AACE class 5) about the likely cost: -30 % to +50 %, within
 * the ranges of recommended practice 18R-97 as remembered (-20 to -50 %, +30 to +100 %), not looked up.
 */
export const CLASS_5 = { below: -0.3, above: 0.5 };

/** Capital of a placement as a class 5 estimate, in dollars of the year in which it is prepared. */
export function costBandOf({ campus, charges }: Ground, placement: Placement): CostBand {
  const likely = centsToDollars(buildCostOf(campus, placement, charges).amount);
  return { ...classBand(likely, CLASS_5), dollarsOf: fiscalYearLabel(placement.year) };
}
