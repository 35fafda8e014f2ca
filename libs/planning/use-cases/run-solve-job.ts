import type { Breach } from '#domain/breach.js';
import { anError, type Problem } from '#domain/problem.js';
import type { CampusStore } from '../ports/campus-store.js';
import type { PlanChecker } from '../ports/plan-checker.js';
import type { PlanOverview } from '../ports/plan-overview.js';
import type { NewPlan, PlanStore } from '../ports/plan-store.js';
import type { SolveClosing, SolveQueue, TakenSolve } from '../ports/solve-queue.js';
import type { Solving, SolveResult } from '../ports/solving.js';
import type { JsonDocument } from '../json-document.js';
import type { SolveRequest } from '../solve-request.js';
import { keepBroughtPlan } from './keep-brought-plan.js';
import type { LeaseKeeper } from './keep-lease.js';

export interface RunSolvePorts {
  readonly campuses: CampusStore;
  readonly plans: PlanStore;
  readonly queue: SolveQueue;
  readonly solving: Solving;
  readonly checker: PlanChecker;
  readonly overview: PlanOverview;
  readonly newPlanId: () => string;
}

/** What became of the job in this worker's hands. */
export type RunOutcome = 'stored' | 'failed' | 'given-back' | 'lease-lost';

/**
 * Solves one taken request, or takes the plan that it carries: verify, compute the overview, store. The keeper renews the lease
 * meanwhile; once it is lost nothing is stored, since another worker may have taken the request.
 * Rejects only when the store cannot be reached; the lease then lapses and the request is retried.
 */
export async function runSolveJob(
  ports: RunSolvePorts,
  taken: TakenSolve,
  keeper: LeaseKeeper,
): Promise<RunOutcome> {
  const campus = await loadCampus(ports.campuses, taken.request);
  const closing = await closingOf(ports, { taken, campus, keeper });
  const reason = await keeper.stop();
  if (reason === 'lease-lost') return 'lease-lost';
  if (reason === 'worker-stopping' && wasCutShort(closing)) {
    return (await ports.queue.giveBack(taken.lease)) ? 'given-back' : 'lease-lost';
  }
  if (!(await ports.queue.finish(taken.lease, closing))) return 'lease-lost';
  return closing.kind === 'failed' ? 'failed' : 'stored';
}

const cancelledUnsolved: SolveClosing = {
  kind: 'without-plan',
  ending: 'cancelled-without-plan',
  conflict: [],
};

/** True when an orderly stop of the worker, not the solve itself, made this ending. */
function wasCutShort(closing: SolveClosing): boolean {
  if (closing.kind === 'brought-in') return false;
  return closing.kind === 'failed' || closing.ending.startsWith('cancelled');
}

/** Never throws: a defect in the solver closes the request with a problem instead of a retry. */
async function closingOf(
  ports: RunSolvePorts,
  job: { taken: TakenSolve; campus: JsonDocument; keeper: LeaseKeeper },
): Promise<SolveClosing> {
  const { campus, keeper } = job;
  const { brought, request } = job.taken;
  if (keeper.signal.aborted) return cancelledUnsolved;
  if (brought !== null) return keepBroughtPlan(ports, { request, campus, document: brought });
  try {
    const start = await earlierPlan(ports.plans, request.startFromPlan);
    const result = await ports.solving.solve(
      { requestId: request.id, campus, seed: request.seed, limits: request.limits, start },
      { onProgress: keeper.report, signal: keeper.signal },
    );
    return result.plan === null
      ? { kind: 'without-plan', ending: result.ending, conflict: result.conflict }
      : await closingWithPlan(ports, { request, campus, result, plan: result.plan });
  } catch (error) {
    return { kind: 'failed', problem: defect(error) };
  }
}

async function earlierPlan(plans: PlanStore, id: string | null): Promise<JsonDocument | null> {
  return id === null ? null : ((await plans.load(id))?.plan ?? null);
}

async function loadCampus(campuses: CampusStore, request: SolveRequest): Promise<JsonDocument> {
  const campus = await campuses.load(request.campusId, request.campusVersion);
  if (campus === null) {
    throw new Error(`campus ${request.campusId} version ${request.campusVersion} is gone`);
  }
  return campus.document;
}

interface Solved {
  readonly request: SolveRequest;
  readonly campus: JsonDocument;
  readonly result: SolveResult;
  readonly plan: JsonDocument;
}

/** A plan that the solver calls feasible and the checks do not is a defect: it is not stored. */
async function closingWithPlan(ports: RunSolvePorts, solved: Solved): Promise<SolveClosing> {
  const verdict = await ports.checker.check(solved.campus, solved.plan);
  if (!verdict.verified) return { kind: 'failed', problem: notVerified(verdict.breaches) };
  const overview = await ports.overview.of(solved.campus, solved.plan);
  const plan = newPlan(solved, { id: ports.newPlanId(), overview });
  return { kind: 'solved', ending: solved.result.ending, plan };
}

function newPlan(
  { request, result, plan }: Solved,
  made: { id: string; overview: JsonDocument },
): NewPlan {
  return {
    ...made,
    plan,
    campusId: request.campusId,
    campusVersion: request.campusVersion,
    seed: request.seed,
    limits: request.limits,
    solverVersion: result.solverVersion,
    ending: result.ending,
    origin: 'solved',
  };
}

function notVerified(breaches: readonly Breach[]): Problem {
  const first = breaches[0]?.message ?? 'no breach was named';
  return anError({ code: 'plan-not-verified', record: 'plan', field: '', value: breaches }, [
    `The solver's plan failed the checks (${breaches.length}), first: ${first}`,
    'This is a defect of the program, not of the campus file: please report it with the file.',
  ]);
}

function defect(error: unknown): Problem {
  const message = error instanceof Error ? error.message : String(error);
  return anError({ code: 'solver-defect', record: 'solve', field: '' }, [
    `The solver stopped with an error: ${message}`,
    'Please report it with the campus file, the seed and the limits.',
  ]);
}
