import type { SolveLimits } from '#mip/solver.js';
import type { SolveSettings } from './settings.js';

/**
 * The search before the first relaxation: share of the time, and seconds at the most for each thousand
 * lives, since the more there are the longer a relaxation takes.
 */
const FIRST_SEARCH_SHARE = 0.1;
const FIRST_SEARCH_SECONDS = 0.15;

/** Rounds of a search, and re-solves in part, where no time is set. */
const ROUNDS = 200;
const RESOLVES = 10;

/** Re-solves in part, and nodes of a solve among few lives, for each round of search in repeatable runs. */
const RESOLVES_PER_ROUND = 0.02;
const NODES_PER_ROUND = 1;

/** Share of all the time that is left for the tiers after benefit. */
const LAST_SHARE = 0.05;

/** Shares of the time for a tier of its ways to a better plan; the rest is for the whole. */
export const TIER_SHARES = {
  dive: 0.15,
  search: 0.25,
  nearPeople: 0.1,
  core: 0.2,
  parts: 0.1,
} as const;

/** Seconds up to which a solve is a quick one. */
const QUICK_SECONDS = 8;

export function isQuick({ seconds, work }: SolveSettings): boolean {
  return work === undefined && seconds !== undefined && seconds <= QUICK_SECONDS;
}

/** What one step may take. Left out: no limit. */
export interface Budget {
  readonly seconds?: number;
  readonly rounds?: number;
  /** Whether there is nothing left to search for. Left out: there always is. */
  readonly enough?: () => boolean;
}

/** What the search before the first relaxation may take. */
export function firstSearch({ seconds, work }: SolveSettings, lives: number): Budget {
  if (work !== undefined) return { rounds: work };
  if (seconds === undefined) return { rounds: ROUNDS };
  return { seconds: Math.min((FIRST_SEARCH_SECONDS * lives) / 1000, seconds * FIRST_SEARCH_SHARE) };
}

/** What re-solving small parts of a plan may take; `seconds` where time is limited. */
export function smallParts({ work }: SolveSettings, seconds: number): Budget {
  if (work !== undefined) return { rounds: Math.max(1, Math.ceil(work * RESOLVES_PER_ROUND)) };
  return Number.isFinite(seconds) ? { seconds } : { rounds: RESOLVES };
}

/** Limits of a solve among few lives; `seconds` where time is limited. */
export function coreLimits({ work, gap }: SolveSettings, seconds: number): SolveLimits {
  const common = { relativeGap: gap ?? 0 };
  if (work !== undefined) return { ...common, nodes: Math.max(1, work * NODES_PER_ROUND) };
  return Number.isFinite(seconds)
    ? { ...common, ...secondsLimit(seconds) }
    : { ...common, nodes: ROUNDS };
}

/** Seconds of the whole that are kept for the tiers after benefit. */
export function lastSeconds({ seconds }: SolveSettings): number {
  return (seconds ?? 0) * LAST_SHARE;
}

/** A limit in seconds, where time is limited. */
export function secondsLimit(seconds: number): { seconds?: number } {
  return Number.isFinite(seconds) ? { seconds: Math.max(0.1, seconds) } : {};
}
