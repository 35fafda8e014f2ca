import type { Plan } from '#domain/plan.js';
import type { ConflictMember } from '#domain/tier.js';

/** When a solve stops. Without `seconds` and `work` it runs until every tier is proven. */
export interface SolveSettings {
  readonly seconds?: number;
  /** Branch-and-bound nodes for each tier. The same work, seed and file give the same plan. */
  readonly work?: number;
  /** Gap of the benefit tier at which to stop, as a share. Left out: 0. */
  readonly gap?: number;
  readonly seed: number;
}

/** What a solve tells while it runs. */
export interface SolveProgress {
  readonly tier: string;
  /** Of the best plan so far, in the tier's unit; `null` while there is no plan. */
  readonly objective: number | null;
  readonly bound: number | null;
  readonly gap: number | null;
}

/** The world outside, given to a solve. */
export interface SolveSurroundings {
  /** Seconds since the solve began. */
  elapsed(): number;
  shouldStop(): boolean;
  onProgress(progress: SolveProgress): void;
  /** It is proven that there is no plan; what cannot all hold, as far as it is narrowed down. */
  onNoPlan(conflict: readonly ConflictMember[]): void;
  /** A verified plan that is better than any before. */
  onPlan(plan: Plan, values: readonly number[]): void;
}
