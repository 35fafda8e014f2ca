import type { Campus } from '#domain/campus.js';
import type { Decisions, Plan } from '#domain/plan.js';

/**
 * What taking up a life costs a relaxation of benefit, by placement key, and the bound of that
 * relaxation: it leads the search of re-solves. Plain data, made once for many.
 */
export interface GuidePrices {
  readonly costs: ReadonlyMap<string, number>;
  /** Of benefit, for plans that are as good as `held` in the tiers before it. */
  readonly bound: number;
  readonly held: readonly number[];
}

/** How hard a re-solve tries. Equal effort and seeds make two re-solves comparable. */
export type Effort =
  /** Rounds of search from the plan it begins with: repeatable, and bounded only where asked. */
  | { readonly kind: 'rounds'; readonly rounds: number; readonly prices?: GuidePrices }
  /** Until every tier is proven: for small campuses. */
  | { readonly kind: 'proven' };

/** Decisions that keep every binding rule, and what they reach in every tier. */
export interface RunPlan {
  readonly decisions: Decisions;
  readonly values: readonly number[];
}

/** One search among several of the same campus. */
export interface SearchRun {
  readonly seed: number;
  /** A plan of this campus to go on from, where it is better than the mended start. */
  readonly from?: RunPlan;
}

/** A campus, changed in one way, to be planned again. Plain data: it crosses threads. */
export interface ResolveOrder {
  readonly campus: Campus;
  /** Decisions to begin from; what the campus no longer admits is mended. */
  readonly start?: Decisions;
  readonly seed: number;
  readonly effort: Effort;
  /**
   * Several searches on one set-up, each with all the rounds, in place of one by `seed`; for `best` with
   * rounds only. The answer is the best of them. Left out: one.
   */
  readonly runs?: readonly SearchRun[];
  /** Seconds after which the search stops although rounds are left. Left out: none. */
  readonly seconds?: number;
  /**
   * `best`: a plan as good as the effort finds. `exists`: any plan that keeps the binding rules, or a
   * proof that there is none. `bound`: only how good a plan could be at best. `prices`: only what leads
   * other searches.
   */
  readonly wish: 'best' | 'exists' | 'bound' | 'prices';
  /**
   * Bounds, tier by tier, that are known to hold for plans which are as good as the start in the tiers
   * before; those before benefit are not sought again. Left out: none.
   */
  readonly known?: readonly (number | null)[];
}

/** What a re-solve came to. */
export interface ResolveAnswer {
  /** `impossible`: proven. `not-found`: neither a plan nor a proof within the effort. */
  readonly ending: 'found' | 'impossible' | 'not-found';
  /** Verified. */
  readonly plan?: Plan;
  /** What the plan reaches in every tier, in the order of `tiersOf`. Empty without a plan. */
  readonly values: readonly number[];
  /** No plan does better than this in each tier, the tiers before it held. `null`: no bound sought. */
  readonly bounds: readonly (number | null)[];
  /** Only where they were wished. */
  readonly prices?: GuidePrices;
  /** What each of several searches came to, in the order of the runs; those not begun are left out. */
  readonly runs?: readonly RunPlan[];
  /** Rounds of search done, of all runs together: fewer than ordered where the seconds were over. */
  readonly rounds: number;
  readonly seconds: number;
}

/** Answers orders. Two or more may be under way at a time; they are answered in the order given. */
export interface Resolver {
  resolve(
    orders: readonly ResolveOrder[],
    onAnswer?: (place: number, answer: ResolveAnswer) => void,
  ): Promise<ResolveAnswer[]>;
  /** Orders that run side by side. */
  readonly parallel: number;
  /** Seconds until the question has to be answered; `Infinity` where nobody waits. */
  secondsLeft(): number;
}
