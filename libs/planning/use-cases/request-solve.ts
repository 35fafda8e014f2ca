import type { CampusStore } from '../ports/campus-store.js';
import type { PlanStore } from '../ports/plan-store.js';
import type { SolveQueue } from '../ports/solve-queue.js';
import { longestSolveSeconds, type SolveLimits } from '../solve-limits.js';
import type { SolveRequest } from '../solve-request.js';

interface Ports {
  readonly campuses: CampusStore;
  readonly plans: PlanStore;
  readonly queue: SolveQueue;
}

export interface SolveWish {
  readonly campusId: string;
  /** Left out: the newest version. */
  readonly campusVersion?: number | undefined;
  readonly seed: number;
  readonly limits: SolveLimits;
  /** An earlier plan of the same campus to begin from. */
  readonly startFromPlan?: string | undefined;
}

export type RequestOutcome =
  | { readonly kind: 'queued'; readonly request: SolveRequest }
  | { readonly kind: 'unknown-campus' | 'unknown-plan' };

/** Queues a solve of one saved version of a campus. */
export async function requestSolve(ports: Ports, wish: SolveWish): Promise<RequestOutcome> {
  assertLimits(wish.limits);
  const campus = await ports.campuses.load(wish.campusId, wish.campusVersion);
  if (campus === null) return { kind: 'unknown-campus' };
  const { startFromPlan } = wish;
  if (startFromPlan !== undefined && !(await isPlanOf(ports.plans, campus.id, startFromPlan))) {
    return { kind: 'unknown-plan' };
  }
  const request = await ports.queue.enqueue({
    campusId: campus.id,
    campusVersion: campus.version,
    seed: wish.seed,
    limits: wish.limits,
    startFromPlan,
  });
  return { kind: 'queued', request };
}

async function isPlanOf(plans: PlanStore, campusId: string, planId: string): Promise<boolean> {
  return (await plans.load(planId))?.campusId === campusId;
}

/** The edge (HTTP, command line) has refused such limits already; here they are a defect. */
function assertLimits({ seconds }: SolveLimits): void {
  if (seconds === null || !(seconds > 0 && seconds <= longestSolveSeconds)) {
    throw new RangeError(
      `a solve may take more than 0 and at most ${longestSolveSeconds} seconds, got ${seconds}`,
    );
  }
}
