import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import type { Outcome } from './stress/outcome.js';

/** What is done about a build that was skipped: nothing, or it is tried again in each later year. */
export type Policy = 'keep' | 'mend';

/** Some futures that a plan is to meet; told apart by their numbers alone. */
export interface FuturesOrder {
  readonly campus: Campus;
  readonly plan: Plan;
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
