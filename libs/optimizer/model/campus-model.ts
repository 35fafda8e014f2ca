import type { Campus } from '#domain/campus.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { possibleLifecycles } from '../columns/lifecycles.js';
import { planModel, type HeldTiers, type PlanModel } from './plan-model.js';

/** The plain model of one tier of a campus, with no search around it: for exports and comparisons. */
export function campusModel(campus: Campus, tier: string, held: HeldTiers): PlanModel {
  const charges = campusCharges(campus);
  return planModel(
    { campus, charges, lifecycles: possibleLifecycles(campus, charges) },
    tier,
    held,
  );
}
