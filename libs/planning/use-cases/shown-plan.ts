import type { JsonDocument } from '../json-document.js';
import { isOfThisForm } from '../overview-document.js';
import type { CampusStore, StoredCampus } from '../ports/campus-store.js';
import type { PlanOverview } from '../ports/plan-overview.js';
import type { PlanStore, StoredPlan } from '../ports/plan-store.js';
import { planWithCampus } from './plan-with-campus.js';

interface Ports {
  readonly campuses: CampusStore;
  readonly plans: PlanStore;
  readonly overview: PlanOverview;
}

export interface ShownPlan {
  readonly plan: StoredPlan;
  readonly campus: StoredCampus;
  readonly overview: JsonDocument;
}

/**
 * A plan with its overview in the form of this program. A plan is never written again, so that one
 * which another program kept is seen through an overview worked out anew. Null: no such plan.
 */
export async function shownPlan(ports: Ports, planId: string): Promise<ShownPlan | null> {
  const found = await planWithCampus(ports, planId);
  if (found === null) return null;
  const { campus, plan } = found;
  const overview = isOfThisForm(plan.overview)
    ? plan.overview
    : await ports.overview.of(campus.document, plan.plan);
  return { plan, campus, overview };
}
