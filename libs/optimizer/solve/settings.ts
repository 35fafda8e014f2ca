import type { Decisions, Plan } from '#domain/plan.js';
import type { ConflictMember } from '#domain/tier.js';
import type { Counted } from '../counts/count-columns.js';
import type { FoundBound } from './bounds.js';

/** When a solve stops. Without `seconds` and `work` it runs until every tier is proven. */
export interface SolveSettings {
  readonly seconds?: number;
  /** Branch-and-bound nodes for each tier. The same work, seed and file give the same plan. */
  readonly work?: number;
  /** Gap of the benefit tier at which to stop, as a share. Left out: 0. */
  readonly gap?: number;
  readonly seed: number;
  /** Threads that solve side by side, 1 or 2: one searches, the other proves. Left out: 1. */
  readonly threads?: 1 | 2;
}

/** What a solve tells while it runs. */
export interface SolveProgress {
  readonly tier: string;
  /** Of the best plan so far, in the tier's unit; `null` while there is no plan. */
  readonly objective: number | null;
  readonly bound: number | null;
  readonly gap: number | null;
}

/** What one thread of a solve tells the other. */
export type News =
  | { readonly kind: 'plan'; readonly decisions: Decisions }
  | ({ readonly kind: 'bound' } & FoundBound)
  | PricesNews;

/** A relaxation of benefit; its numbers by life, in the order of the ground. */
export interface PricesNews {
  readonly kind: 'prices';
  /** What the tiers before are held at, as the board names it. */
  readonly question: string;
  readonly bound: number;
  readonly losses: Float64Array;
  readonly costs: Float64Array;
  readonly values: Float64Array;
  readonly counted?: Counted;
}

/** The other thread of a solve. */
export interface Partner {
  /** What it has told since the last call. */
  news(): readonly News[];
  tell(news: News): void;
  /** Waits a moment for news. */
  pause(): void;
}

export interface SolveRun {
  readonly settings: SolveSettings;
  readonly around: SolveSurroundings;
  /** Decisions of an earlier plan to begin from; what the campus no longer admits is mended. */
  readonly start?: Decisions;
}

/** The world outside, given to a solve. */
export interface SolveSurroundings {
  /** Seconds since the solve began. */
  elapsed(): number;
  shouldStop(): boolean;
  onProgress(progress: SolveProgress): void;
  /** It is proven that there is no plan; what cannot all hold, as far as it is narrowed down. */
  onNoPlan(conflict: readonly ConflictMember[]): void;
  /** A second thread that bounds while this one searches, or the other way round. Left out: none. */
  readonly partner?: Partner;
  /** A verified plan that is better than any before. */
  onPlan(plan: Plan, values: readonly number[]): void;
}
