import type { CampusStore } from '../ports/campus-store.js';
import type { PlanChecker, PlanVerdict } from '../ports/plan-checker.js';
import type { PlanStore } from '../ports/plan-store.js';
import { planWithCampus } from './plan-with-campus.js';

interface Ports {
  readonly campuses: CampusStore;
  readonly plans: PlanStore;
  readonly checker: PlanChecker;
}

/** Recomputes a stored plan from the campus version it was solved for. Null: no such plan. */
export async function verifyPlan(ports: Ports, planId: string): Promise<PlanVerdict | null> {
  const found = await planWithCampus(ports, planId);
  return found && ports.checker.check(found.campus.document, found.plan.plan);
}
