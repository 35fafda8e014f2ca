import type { Decisions } from '#domain/plan.js';
import type { Solver } from '#mip/solver.js';
import type { Random } from '#units/random.js';
import type { Ground } from '../columns/add-columns.js';
import type { HeldTiers } from '../model/plan-model.js';
import { solveTier } from '../solve/solve-tier.js';
import { neighbourhood, type Freedom } from './neighbourhood.js';

/** Smallest and largest neighbourhoods, and what one re-solve may take. */
const LEAST_SITES = 5;
const MOST_SITES = 16;
const RESOLVE_SECONDS = 3;
const RESOLVE_NODES = 60;

/** Re-solves in a row without a better plan after which the neighbourhood grows. */
const PATIENCE = 4;

export interface Improvement {
  readonly ground: Ground;
  readonly solver: Solver;
  readonly tier: string;
  readonly held: HeldTiers;
  readonly random: Random;
  readonly seed: number;
  /** The best plan so far: it changes as better ones are taken. */
  readonly best: () => Decisions;
  /** Takes a plan; true where it is better than the best. */
  readonly take: (decisions: Decisions) => boolean;
  /** Why to stop now; `undefined`: go on. */
  readonly done: () => boolean;
  readonly shouldStop: () => boolean;
  readonly secondsLeft: () => number;
  /** Re-solves at the most, for repeatable runs. Left out: as many as the time allows. */
  readonly rounds?: number;
  /** Re-solves in a row without a better plan after which it is enough. Left out: no such end. */
  readonly enough?: number;
}

/**
 * Improves a plan in one tier by re-solving it in part again and again: a few sites are set free, the
 * rest stays. Where nothing is gained for a while, more sites are set free; after a gain, fewer.
 */
export function improve(of: Improvement): void {
  let sites = LEAST_SITES;
  let misses = 0;
  for (let round = 0; round < (of.rounds ?? Infinity); round++) {
    if (of.done() || of.shouldStop() || of.secondsLeft() <= 0) return;
    const gained = resolveAround(of, { sites, windowYears: Math.ceil(sites / 2) });
    misses = gained ? 0 : misses + 1;
    if (misses >= (of.enough ?? Infinity)) return;
    if (gained) sites = Math.max(LEAST_SITES, sites - 1);
    if (misses > 0 && misses % PATIENCE === 0)
      sites = sites >= MOST_SITES ? LEAST_SITES : sites + 1;
  }
}

function resolveAround(of: Improvement, freedom: Freedom): boolean {
  const start = of.best();
  const outcome = solveTier({
    ground: neighbourhood(of.ground, start, { random: of.random, freedom }),
    solver: of.solver,
    tier: of.tier,
    held: of.held,
    limits:
      of.rounds === undefined
        ? { seconds: Math.min(RESOLVE_SECONDS, of.secondsLeft()), relativeGap: 1e-4 }
        : { nodes: RESOLVE_NODES, relativeGap: 1e-4 },
    seed: of.seed,
    start,
    shouldStop: of.shouldStop,
    onBound: () => undefined,
    onDecisions: () => undefined,
  });
  return outcome.decisions !== undefined && of.take(outcome.decisions);
}
