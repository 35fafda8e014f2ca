import type { PlanOverview } from '#explain/overview/plan-overview.js';
import {
  api,
  OfflineError,
  RefusedError,
  type CampusSummary,
  type PlanSummary,
  type Problem,
  type SolveView,
} from '../api.js';
import type { Address } from './address.js';

/** A campus with what belongs to it. */
export interface CampusOnDesk {
  readonly campuses: readonly CampusSummary[];
  readonly campus: CampusSummary;
  /** Newest first. */
  readonly plans: readonly PlanSummary[];
  /** The solve asked for last, finished or not. */
  readonly lastSolve: SolveView | null;
}

/** Everything the page can have before it. */
export type DeskContent =
  | { readonly kind: 'loading' }
  | { readonly kind: 'offline' }
  | { readonly kind: 'failed'; readonly problem: Problem | undefined }
  | { readonly kind: 'no-campus' }
  | { readonly kind: 'missing-plan' }
  | (CampusOnDesk & { readonly kind: 'no-plan-yet' })
  | (CampusOnDesk & {
      readonly kind: 'plan';
      readonly plan: PlanSummary;
      readonly overview: PlanOverview;
    });

/** Loads what an address names; never throws. */
export async function loadDesk(address: Address): Promise<DeskContent> {
  try {
    return await findPlan(address);
  } catch (error) {
    if (error instanceof OfflineError) return { kind: 'offline' };
    if (error instanceof RefusedError) return { kind: 'failed', problem: error.problem };
    return { kind: 'failed', problem: undefined };
  }
}

async function findPlan(address: Address): Promise<DeskContent> {
  const campuses = await api.campuses();
  const campus = campuses.find(({ id }) => id === address.campusId) ?? campuses[0];
  if (campus === undefined) return { kind: 'no-campus' };
  const [plans, solves] = await Promise.all([api.plans(campus.id), api.solves(campus.id)]);
  const onDesk = { campuses, campus, plans, lastSolve: solves[0] ?? null };
  if (address.planId !== null && plans.every(({ id }) => id !== address.planId)) {
    return { kind: 'missing-plan' };
  }
  const plan = plans.find(({ id }) => id === address.planId) ?? plans[0];
  if (plan === undefined) return { kind: 'no-plan-yet', ...onDesk };
  return { kind: 'plan', ...onDesk, plan, overview: await api.overview(plan.id) };
}
