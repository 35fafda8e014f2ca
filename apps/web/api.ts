import type { PlanOverview } from '#explain/overview/plan-overview.js';

/** The only file that knows the addresses and shapes of the api. */

export interface CampusSummary {
  readonly id: string;
  readonly name: string;
  readonly program: string;
}

export interface PlanSummary {
  readonly id: string;
  /** ISO moment at which the solve ended. */
  readonly solvedAt: string;
}

export interface ConflictMember {
  readonly id: string;
  readonly name: string;
}

export type SolveState = 'queued' | 'solving' | 'done' | 'failed' | 'cancelled';

export interface SolveProgress {
  readonly elapsedSeconds: number;
  readonly tier: string | null;
  /** Value of the tier being improved, in that tier's unit. */
  readonly objective: number | null;
  readonly bound: number | null;
  /** Share: 0.03 is three percent. */
  readonly gap: number | null;
  readonly message: string;
}

export interface SolveView {
  readonly id: string;
  readonly state: SolveState;
  readonly secondsAllowed: number | null;
  readonly progress: SolveProgress | null;
  readonly planId: string | null;
  readonly ending: string | null;
  readonly conflict: readonly ConflictMember[];
  readonly problem: Problem | null;
}

/** What went wrong and what to do, from an RFC 9457 reply or a failed solve. */
export interface Problem {
  readonly title: string;
  readonly detail: string;
  readonly remedy: string | null;
}

/** The api could not be reached at all. */
export class OfflineError extends Error {}

/** The api answered, and refused. */
export class RefusedError extends Error {
  constructor(
    readonly status: number,
    readonly problem: Problem,
  ) {
    super(problem.title);
  }
}

/** What the page asks of the api. Every method may throw `OfflineError` or `RefusedError`. */
export const api = {
  campuses: (): Promise<readonly CampusSummary[]> => get('/api/campuses'),

  plans: (campusId: string): Promise<readonly PlanSummary[]> =>
    get(`/api/campuses/${encodeURIComponent(campusId)}/plans`),

  overview: (planId: string): Promise<PlanOverview> => get(`${planPath(planId)}/overview`),

  /** Newest first. */
  async solves(campusId: string): Promise<readonly SolveView[]> {
    const path = `/api/campuses/${encodeURIComponent(campusId)}/solves`;
    return (await get<readonly WireSolve[]>(path)).map(solveView);
  },

  async startSolve(campusId: string, seconds: number): Promise<SolveView> {
    const path = `/api/campuses/${encodeURIComponent(campusId)}/solves`;
    return solveView(await send<WireSolve>('POST', path, { seconds }));
  },

  solve: async (solveId: string): Promise<SolveView> => solveView(await get(solvePath(solveId))),

  cancelSolve: (solveId: string): Promise<unknown> =>
    send('POST', `${solvePath(solveId)}/cancel`, undefined),

  solveEventsPath: (solveId: string): string => `${solvePath(solveId)}/events`,

  administrationBriefPath: (planId: string): string =>
    `${planPath(planId)}/documents/administration-brief.pdf`,
};

const planPath = (planId: string): string => `/api/plans/${encodeURIComponent(planId)}`;
const solvePath = (solveId: string): string => `/api/solves/${encodeURIComponent(solveId)}`;

/** A solve request as the api sends it. */
interface WireSolve {
  readonly id: string;
  readonly state: SolveState;
  readonly limits?: { readonly seconds?: number };
  readonly progress: SolveProgress | null;
  readonly planId: string | null;
  readonly ending: string | null;
  readonly conflict: readonly ConflictMember[] | null;
  readonly problem: { readonly problem: string; readonly remedy: string } | null;
}

/** Reads the data of one event, or of a reply. */
export function solveView(wire: WireSolve): SolveView {
  return {
    id: wire.id,
    state: wire.state,
    secondsAllowed: wire.limits?.seconds ?? null,
    progress: wire.progress,
    planId: wire.planId,
    ending: wire.ending,
    conflict: wire.conflict ?? [],
    problem: wire.problem && { title: wire.problem.problem, detail: '', remedy: wire.problem.remedy },
  };
}

function get<Reply>(path: string): Promise<Reply> {
  return send<Reply>('GET', path, undefined);
}

async function send<Reply>(method: string, path: string, body: unknown): Promise<Reply> {
  const response = await reach(path, {
    method,
    headers: body === undefined ? {} : { 'content-type': 'application/json' },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  });
  if (!response.ok) throw new RefusedError(response.status, await problemOf(response));
  return response.status === 204 ? (undefined as Reply) : ((await response.json()) as Reply);
}

async function reach(path: string, request: RequestInit): Promise<Response> {
  try {
    return await fetch(path, request);
  } catch {
    throw new OfflineError(path);
  }
}

async function problemOf(response: Response): Promise<Problem> {
  const body = (await response.json().catch(() => ({}))) as Partial<Record<string, unknown>>;
  const text = (field: string): string | null =>
    typeof body[field] === 'string' ? body[field] : null;
  return {
    title: text('title') ?? `${response.status} ${response.statusText}`.trim(),
    detail: text('detail') ?? '',
    remedy: text('remedy'),
  };
}
