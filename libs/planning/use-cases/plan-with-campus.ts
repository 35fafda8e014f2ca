import type { CampusStore, StoredCampus } from '../ports/campus-store.js';
import type { PlanStore, StoredPlan } from '../ports/plan-store.js';

/** A plan together with the campus version it was solved for. Null: no such plan. */
export async function planWithCampus(
  ports: { readonly campuses: CampusStore; readonly plans: PlanStore },
  planId: string,
): Promise<{ plan: StoredPlan; campus: StoredCampus } | null> {
  const plan = await ports.plans.load(planId);
  if (plan === null) return null;
  const campus = await ports.campuses.load(plan.campusId, plan.campusVersion);
  if (campus === null) {
    throw new Error(
      `plan ${planId} names version ${plan.campusVersion} of campus ${plan.campusId}, which is gone`,
    );
  }
  return { plan, campus };
}
