import type { CampusStore, CampusSummary } from '#planning/ports/campus-store.js';
import type { PlanStore } from '#planning/ports/plan-store.js';
import type { SolveQueue } from '#planning/ports/solve-queue.js';
import type { SolveRequestStore } from '#planning/ports/solve-request-store.js';
import type { SolveLimits } from '#planning/solve-limits.js';
import { isFinal } from '#planning/solve-request.js';
import { requestSolve } from '#planning/use-cases/request-solve.js';

interface Ports {
  readonly campuses: CampusStore;
  readonly plans: PlanStore;
  readonly requests: SolveRequestStore;
  readonly queue: SolveQueue;
}

export type SolveToShow =
  | { readonly kind: 'plan'; readonly planId: string }
  | { readonly kind: 'request'; readonly requestId: string };

/** Enough for a good plan of the demo campus on two cores. */
const firstLimits: SolveLimits = { seconds: 45, work: null, gap: null };

/**
 * What there is to show of a campus version: its newest plan, else its solve under way or proven to
 * have no plan, else a solve queued now.
 */
export async function solveToShow(ports: Ports, campus: CampusSummary): Promise<SolveToShow> {
  const [plan] = await ports.plans.listOf(campus.id, campus.version);
  if (plan) return { kind: 'plan', planId: plan.id };
  const requests = await ports.requests.listOf(campus.id);
  const known = requests.find(
    ({ campusVersion, ending, state }) =>
      campusVersion === campus.version && (!isFinal(state) || ending === 'no-plan'),
  );
  if (known) return { kind: 'request', requestId: known.id };
  const wish = { campusId: campus.id, campusVersion: campus.version, seed: 1, limits: firstLimits };
  const outcome = await requestSolve(ports, wish);
  if (outcome.kind !== 'queued') throw new Error(`campus ${campus.id} is gone`);
  return { kind: 'request', requestId: outcome.request.id };
}
