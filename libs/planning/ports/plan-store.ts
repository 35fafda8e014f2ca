import type { JsonDocument } from '../json-document.js';
import type { Ending } from '#domain/tier.js';
import type { SolveLimits } from '../solve-limits.js';

/** Whether a plan was solved from what is stored here, or came in by a bundle. */
export type PlanOrigin = 'solved' | 'bundle';

/** What a plan was solved from, and how the solve ended. */
export interface PlanSummary {
  readonly id: string;
  readonly campusId: string;
  readonly campusVersion: number;
  readonly seed: number;
  readonly solverVersion: string;
  readonly limits: SolveLimits;
  readonly ending: Ending;
  readonly origin: PlanOrigin;
  /** When it was stored: at the end of the solve, or when it came in. */
  readonly solvedAt: Date;
}

/** A verified plan with its documents. */
export interface StoredPlan extends PlanSummary {
  readonly plan: JsonDocument;
  /** Headline and tables computed from the plan when it was stored, in the form of that day. */
  readonly overview: JsonDocument;
}

/** A plan that has passed the checks and is about to be stored. */
export type NewPlan = Omit<StoredPlan, 'solvedAt'>;

/** Reads plans. They are written only by `SolveQueue.finish`, and never change afterwards. */
export interface PlanStore {
  load(id: string): Promise<StoredPlan | null>;

  /** Newest first. Left out `campusVersion`: of every version. */
  listOf(campusId: string, campusVersion?: number): Promise<readonly PlanSummary[]>;
}
