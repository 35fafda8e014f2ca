import type { CampusSummaryReply } from '#contracts/http/campuses.js';
import type { ProblemReply } from '#contracts/http/common.js';
import type { PlanSummaryReply } from '#contracts/http/plans.js';
import type { SolveReply, SolveWish } from '#contracts/http/solves.js';
import type { PlanOverview } from '#explain/overview/plan-overview.js';

/** The only file that knows the addresses of the api. The shapes are those of its contracts. */
export type CampusSummary = CampusSummaryReply;
export type PlanSummary = PlanSummaryReply;
export type Solve = SolveReply;
export type SolveProgress = NonNullable<SolveReply['progress']>;

/** The event of a solve's stream; its data is a `Solve`. */
export const SOLVE_EVENT = 'solve';

/** The api could not be reached at all. */
export class OfflineError extends Error {}

/** The api answered, and refused. */
export class RefusedError extends Error {
  constructor(readonly problem: Refusal) {
    super(problem.title);
  }
}

/** What of an RFC 9457 reply a reader can use. */
export interface Refusal {
  readonly status: number;
  readonly title: string;
  readonly detail: string;
  /** What to do about the first of the problems, if the reply says. */
  readonly remedy: string | null;
}

/** What the page asks of the api. Every method may throw `OfflineError` or `RefusedError`. */
export const api = {
  async campuses(): Promise<readonly CampusSummary[]> {
    return (await get<{ campuses: CampusSummary[] }>('/api/campuses')).campuses;
  },

  /** Newest first. */
  async plans(campusId: string): Promise<readonly PlanSummary[]> {
    return (await get<{ plans: PlanSummary[] }>(`${campusPath(campusId)}/plans`)).plans;
  },

  overview: (planId: string): Promise<PlanOverview> => get(`${planPath(planId)}/overview`),

  /** Newest first. */
  async solves(campusId: string): Promise<readonly Solve[]> {
    return (await get<{ solves: Solve[] }>(`${campusPath(campusId)}/solves`)).solves;
  },

  startSolve: (campusId: string, wish: Partial<SolveWish>): Promise<Solve> =>
    send('POST', `${campusPath(campusId)}/solves`, wish),

  solve: (solveId: string): Promise<Solve> => get(solvePath(solveId)),

  cancelSolve: (solveId: string): Promise<Solve> => send('POST', `${solvePath(solveId)}/cancel`),

  solveEventsPath: (solveId: string): string => `${solvePath(solveId)}/events`,

  administrationBriefPath: (planId: string): string =>
    `${planPath(planId)}/documents/administration-brief.pdf`,
};

const campusPath = (id: string): string => `/api/campuses/${encodeURIComponent(id)}`;
const planPath = (id: string): string => `/api/plans/${encodeURIComponent(id)}`;
const solvePath = (id: string): string => `/api/solves/${encodeURIComponent(id)}`;

function get<Reply>(path: string): Promise<Reply> {
  return send<Reply>('GET', path);
}

async function send<Reply>(method: string, path: string, body?: unknown): Promise<Reply> {
  const content =
    body === undefined
      ? {}
      : { headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) };
  const response = await reach(path, { method, ...content });
  if (!response.ok) throw new RefusedError(await refusalOf(response));
  return (await response.json()) as Reply;
}

async function reach(path: string, request: RequestInit): Promise<Response> {
  try {
    return await fetch(path, request);
  } catch {
    throw new OfflineError(path);
  }
}

async function refusalOf(response: Response): Promise<Refusal> {
  const reply = (await response.json().catch(() => ({}))) as Partial<ProblemReply>;
  return {
    status: response.status,
    title: reply.title ?? `${response.status} ${response.statusText}`.trim(),
    detail: reply.detail ?? '',
    remedy: reply.problems?.[0]?.remedy ?? null,
  };
}
