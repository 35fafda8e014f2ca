import type { JsonDocument } from '../json-document.js';
import type { ConflictMember, Ending } from '#domain/tier.js';
import type { SolveLimits } from '../solve-limits.js';
import type { SolveProgress } from '../solve-request.js';

export interface SolveJob {
  readonly requestId: string;
  readonly campus: JsonDocument;
  readonly seed: number;
  readonly limits: SolveLimits;
  /** An earlier plan document to begin from, mended to what the campus now admits. */
  readonly start: JsonDocument | null;
}

export interface SolveHooks {
  /** May be called as often as the solver likes; the caller thins it out. */
  readonly onProgress: (progress: SolveProgress) => void;
  /** Aborted: stop soon and answer with the best plan so far (ending `cancelled`). */
  readonly signal: AbortSignal;
}

export interface SolveResult {
  readonly ending: Ending;
  /** The best plan, a plan document; null for every ending without one. */
  readonly plan: JsonDocument | null;
  readonly solverVersion: string;
  /** What cannot all hold when the ending is `no-plan`; else empty. */
  readonly conflict: readonly ConflictMember[];
}

/** Solves a campus document, away from the caller's thread. Throws only on a defect. */
export interface Solving {
  solve(job: SolveJob, hooks: SolveHooks): Promise<SolveResult>;
}
