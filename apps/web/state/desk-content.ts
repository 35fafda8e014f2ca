import type { PlanOverview } from '#explain/overview/plan-overview.js';
import {
  api,
  OfflineError,
  RefusedError,
  type CampusSummary,
  type PlanSummary,
  type Refusal,
  type Solve,
} from '../api.js';
import type { Address } from './address.js';

/** The only refusal of an overview with this status: `plan-outdated`. */
const OUTDATED = 409;

type PlanAddress = Pick<Address, 'campusId' | 'planId'>;

/** A campus with what belongs to it. */
export interface CampusOnDesk {
  readonly campuses: readonly CampusSummary[];
  readonly campus: CampusSummary;
  /** Newest first. */
  readonly plans: readonly PlanSummary[];
  /** The solve asked for last, finished or not; a plan that was brought in is none. */
  readonly lastSolve: Solve | null;
}

/** Everything the page can have before it. */
export type DeskContent =
  | { readonly kind: 'loading' }
  | { readonly kind: 'offline' }
  | { readonly kind: 'failed'; readonly refusal: Refusal | undefined }
  | { readonly kind: 'no-campus' }
  | { readonly kind: 'missing-plan' }
  | (CampusOnDesk & {
      readonly kind: 'no-plan-yet';
      /** `unreadable`: there is one, but an earlier program kept it in a form that is no longer read. */
      readonly plan: 'none' | 'unreadable';
    })
  | (CampusOnDesk & {
      readonly kind: 'plan';
      readonly plan: PlanSummary;
      readonly overview: PlanOverview;
    });

/** Loads what an address names; never throws. */
export async function loadDesk(address: PlanAddress): Promise<DeskContent> {
  try {
    return await findPlan(address);
  } catch (error) {
    if (error instanceof OfflineError) return { kind: 'offline' };
    if (error instanceof RefusedError) return { kind: 'failed', refusal: error.problem };
    return { kind: 'failed', refusal: undefined };
  }
}

async function findPlan(address: PlanAddress): Promise<DeskContent> {
  const campuses = await api.campuses();
  const campus =
    campuses.find(({ id }) => id === address.campusId) ?? (await firstWithPlan(campuses));
  if (campus === undefined) return { kind: 'no-campus' };
  const [plans, solves] = await Promise.all([api.plans(campus.id), api.solves(campus.id)]);
  const lastSolve = solves.find(({ broughtPlan }) => broughtPlan === null);
  const onDesk = { campuses, campus, plans, lastSolve: lastSolve ?? null };
  if (address.planId !== null && plans.every(({ id }) => id !== address.planId)) {
    return { kind: 'missing-plan' };
  }
  const plan = plans.find(({ id }) => id === address.planId) ?? plans[0];
  if (plan === undefined) return { kind: 'no-plan-yet', ...onDesk, plan: 'none' };
  const overview = await readableOverview(plan.id);
  if (overview === null) {
    return { kind: 'no-plan-yet', ...onDesk, lastSolve: null, plan: 'unreadable' };
  }
  return { kind: 'plan', ...onDesk, plan, overview };
}

/** Null where an earlier program kept the plan in a form that is no longer read. */
async function readableOverview(planId: string): Promise<PlanOverview | null> {
  try {
    return await api.overview(planId);
  } catch (error) {
    if (error instanceof RefusedError && error.problem.status === OUTDATED) return null;
    throw error;
  }
}

/** With no campus named, one that has something to show; else the first. */
async function firstWithPlan(
  campuses: readonly CampusSummary[],
): Promise<CampusSummary | undefined> {
  for (const campus of campuses) {
    if ((await api.plans(campus.id)).length > 0) return campus;
  }
  return campuses[0];
}
