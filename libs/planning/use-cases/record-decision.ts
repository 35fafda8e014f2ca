import type { Decision, DecisionStore, NewDecision } from '../ports/decision-store.js';
import type { PlanStore } from '../ports/plan-store.js';

interface Ports {
  readonly plans: PlanStore;
  readonly decisions: DecisionStore;
}

/** Records what was decided on a plan. Null: there is no such plan. */
export async function recordDecision(
  ports: Ports,
  decision: Omit<NewDecision, 'campusId'>,
): Promise<Decision | null> {
  const plan = await ports.plans.load(decision.planId);
  return plan && ports.decisions.record({ ...decision, campusId: plan.campusId });
}
