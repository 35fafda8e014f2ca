import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import type { TierResult } from '#domain/tier.js';
import type { Effort, Resolver } from '#optimizer/resolve/order.js';

/** What every question is asked of: a verified plan, and someone who plans changed campuses again. */
export interface Asked {
  readonly campus: Campus;
  readonly plan: Plan;
  /** What the plan reaches in every tier, with what is known of how good a plan could be. */
  readonly tiers: readonly TierResult[];
  readonly resolver: Resolver;
  readonly seed: number;
  /** `timed`: as many rounds each as the time left allows, the same for all that are compared. */
  readonly effort: Effort | 'timed';
  /** Told in a few words what is worked on, with the share that is done (0 to 1). */
  readonly onStep?: (step: string, share: number) => void;
}

/** What is asked of a campus without a plan, since there may be none. */
export type AskedOfCampus = Pick<Asked, 'campus' | 'resolver' | 'seed' | 'onStep'>;

/** How an answer came about, and what it lacks. Every answer carries it. */
export interface Made {
  /** Rounds of search of each re-solve; `null` where all were solved until proven. */
  readonly rounds: number | null;
  /** Rounds that each got at least, where not all got the same. */
  readonly leastRounds?: number;
  readonly seeds: readonly number[];
  /** What was left out because time ran out; empty where all was done. */
  readonly skipped: readonly string[];
  /** One sentence on how the numbers were found. */
  readonly sentence: string;
}
