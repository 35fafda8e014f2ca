import type { Campus } from '#domain/campus.js';
import type { Decisions, Plan } from '#domain/plan.js';
import type { CampusCharges } from '#estimating/site-charges/campus-charges.js';
import { checkPlan } from '#rules/check-plan.js';
import { completePlan } from '../allocate/complete-plan.js';
import { tierValues } from '../tiers/tier-values.js';

/** A verified plan with what it reaches in every tier. */
export interface Incumbent {
  readonly plan: Plan;
  /** In the order of `tiersOf`. */
  readonly values: readonly number[];
}

/** A plan of decisions, and what stands against it; nothing does where `objections` is empty. */
export interface JudgedPlan {
  readonly incumbent: Incumbent;
  readonly objections: readonly string[];
}

/** Completes decisions in whole units and judges them by every rule. */
export function judgeDecisions(
  campus: Campus,
  decisions: Decisions,
  charges: CampusCharges,
): JudgedPlan {
  const { plan, shortages } = completePlan(campus, decisions, charges);
  const objections = [
    ...shortages.map((s) => `${s.amount} of ${s.resource} short at ${s.at}`),
    ...checkPlan(campus, plan).map((b) => b.message),
  ];
  return { incumbent: { plan, values: tierValues(campus, plan, charges) }, objections };
}

/** Decisions as a verified plan; `undefined` where they do not pass every check. */
export function soundIncumbent(
  campus: Campus,
  decisions: Decisions,
  charges: CampusCharges,
): Incumbent | undefined {
  const { incumbent, objections } = judgeDecisions(campus, decisions, charges);
  return objections.length === 0 ? incumbent : undefined;
}

/**
 * Decisions that the solver calls feasible, judged. Not passing is a defect of this program: it stops
 * and says so, unless the rounding of care to hundredths explains it; such decisions are let go.
 */
export function verifiedIncumbent(
  campus: Campus,
  decisions: Decisions,
  charges: CampusCharges,
): Incumbent | undefined {
  const { incumbent, objections } = judgeDecisions(campus, decisions, charges);
  if (objections.length === 0) return incumbent;
  if (explainedByRounding(incumbent.plan)) return undefined;
  throw new Error(
    `a plan that the solver calls feasible does not pass its checks: ${objections.slice(0, 4).join('; ')}`,
  );
}

/** Whether no season lacks more than a hundredth of an hour for each class of care, and some do. */
function explainedByRounding({ unserved }: Plan): boolean {
  return unserved.length > 0 && unserved.every((entry) => entry.hours <= 1);
}
