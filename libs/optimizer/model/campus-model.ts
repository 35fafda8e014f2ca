import type { Campus } from '#domain/campus.js';
import { groundOf } from '../columns/ground-of.js';
import { planModel, type HeldTiers, type PlanModel } from './plan-model.js';

/** The plain model of one tier of a campus, with no search around it: for exports and comparisons. */
export function campusModel(campus: Campus, tier: string, held: HeldTiers): PlanModel {
  return planModel(groundOf(campus), tier, held);
}
