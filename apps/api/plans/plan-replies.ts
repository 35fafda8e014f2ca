import type { PlanReply, PlanSummaryReply } from '#contracts/http/plans.js';
import type { PlanSummary, StoredPlan } from '#planning/ports/plan-store.js';
import { ProblemError } from '../problems/problem-error.js';

export function planSummaryReplyOf(plan: PlanSummary): PlanSummaryReply {
  const { id, campusId, campusVersion, seed, solverVersion, limits, ending, origin, solvedAt } =
    plan;
  return {
    ...{ id, campusId, campusVersion, seed, solverVersion, ending, origin },
    limits: { ...limits },
    solvedAt: solvedAt.toISOString(),
  };
}

export function planReplyOf(plan: StoredPlan): PlanReply {
  return { ...planSummaryReplyOf(plan), file: { ...plan.plan } };
}

export function unknownPlan(): ProblemError {
  return new ProblemError('unknown-plan', 'GET /api/campuses/ID/plans lists those of a campus.');
}
