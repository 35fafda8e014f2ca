import type { Problem } from '#domain/problem.js';
import type { ConflictMember, Ending } from '#domain/tier.js';
import type { SolveLimits } from './solve-limits.js';

/**
 * `queued` waits for a worker, `solving` has one that holds the lease. The other three are final:
 * `done` ran to one of its endings, `failed` carries a problem, `cancelled` was called off (and still
 * may carry the best plan found until then).
 */
export type SolveState = 'queued' | 'solving' | 'done' | 'failed' | 'cancelled';

/** A running solve as seen from outside. Null: not known yet. */
export interface SolveProgress {
  readonly elapsedSeconds: number;
  /** Value of the tier being improved, in that tier's unit, for the best plan so far. */
  readonly bestObjective: number | null;
  readonly bound: number | null;
  /** Share: 0.03 is three percent. */
  readonly gap: number | null;
  readonly tier: string | null;
  readonly message: string;
}

export interface SolveRequest {
  readonly id: string;
  readonly campusId: string;
  readonly campusVersion: number;
  readonly seed: number;
  readonly limits: SolveLimits;
  /** The earlier plan that it begins from. */
  readonly startFromPlan: string | null;
  /** Name of a plan that came in by a bundle: it is checked and kept. Null: the campus is solved. */
  readonly broughtPlan: string | null;
  readonly state: SolveState;
  readonly progress: SolveProgress | null;
  /** Times a worker took the request, without those that gave it back on an orderly stop. */
  readonly attempts: number;
  readonly cancelWanted: boolean;
  readonly planId: string | null;
  readonly ending: Ending | null;
  /** What cannot all hold when the ending is `no-plan`; else empty. */
  readonly conflict: readonly ConflictMember[];
  readonly problem: Problem | null;
  readonly requestedAt: Date;
  readonly startedAt: Date | null;
  readonly finishedAt: Date | null;
}

/** True when nothing will change any more. */
export function isFinal(state: SolveState): boolean {
  return state === 'done' || state === 'failed' || state === 'cancelled';
}
