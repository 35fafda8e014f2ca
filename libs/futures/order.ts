import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import type { Outcome } from './stress/outcome.js';

/** What is done when a plan does not hold: it is kept all the same, or planned anew each year. */
export type Policy = 'keep' | 'replan';

/** A plan on its campus. */
export interface Faced {
  readonly campus: Campus;
  readonly plan: Plan;
}

/** Some futures that a plan is to meet; told apart by their numbers alone. */
export interface FuturesOrder extends Faced {
  readonly seed: number;
  readonly policy: Policy;
  /** First future, and the one after the last. */
  readonly from: number;
  readonly to: number;
}

/** Meets futures, in this thread or in others. */
export interface FutureRunner {
  /** Orders that are worked on side by side. */
  readonly parallel: number;
  /** `undefined`: time was over before the order was begun. */
  run(order: FuturesOrder): Promise<readonly Outcome[] | undefined>;
}
