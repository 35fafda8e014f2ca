import type { SolveLimits } from '#mip/solver.js';
import { benefitPlace, type Tier } from '../tiers/tier-list.js';
import type { SolveSettings } from './settings.js';

/** Share of the whole time for the search by ruin and recreation, which serves all tiers at once. */
const SEARCH_SHARE = 0.3;

/** Share of the time left that the re-solves in part of one tier may take. */
const EARLY_SHARE = 0.3;
const BENEFIT_SHARE = 0.5;
const LAST_SHARE = 0.8;

/** Share of the time left after them that the solve of the whole model may take. */
const WHOLE_SHARE = 0.85;

/** Re-solves in part for each round of search, in repeatable runs. */
const RESOLVES_PER_ROUND = 0.02;

export interface TierPlace {
  readonly place: number;
  readonly tiers: readonly Tier[];
  readonly settings: SolveSettings;
  /** Seconds since the solve began. */
  readonly elapsed: number;
}

/** Seconds and rounds of the search; without any limit it runs a fixed number of rounds. */
export function searchBudget({ seconds, work }: SolveSettings): {
  seconds: number;
  rounds: number;
} {
  if (work !== undefined) return { seconds: Infinity, rounds: work };
  return seconds === undefined
    ? { seconds: Infinity, rounds: UNLIMITED_ROUNDS }
    : { seconds: seconds * SEARCH_SHARE, rounds: Infinity };
}

/** Rounds after which a search without limits leaves the rest to proof. */
const UNLIMITED_ROUNDS = 200;

/** What re-solving in part may use for one tier: seconds, and rounds where they are counted. */
export function improvementBudget(of: TierPlace): { seconds: number; rounds?: number } {
  const { place, tiers, settings, elapsed } = of;
  const { seconds, work } = settings;
  if (work !== undefined)
    return { seconds: Infinity, rounds: Math.max(1, Math.ceil(work * RESOLVES_PER_ROUND)) };
  if (seconds === undefined) return { seconds: Infinity, rounds: UNLIMITED_ROUNDS / 20 };
  const benefit = benefitPlace(tiers);
  const share = place < benefit ? EARLY_SHARE : place === benefit ? BENEFIT_SHARE : LAST_SHARE;
  return { seconds: Math.max(0, seconds - elapsed) * share };
}

/** What the solve of the whole model of one tier may use of what is left. */
export function wholeLimits({ place, tiers, settings, elapsed }: TierPlace): SolveLimits {
  const { seconds, work, gap } = settings;
  return {
    ...(seconds === undefined ? {} : { seconds: Math.max(0.1, (seconds - elapsed) * WHOLE_SHARE) }),
    ...(work === undefined ? {} : { nodes: Math.max(1, work) }),
    ...(gap === undefined || place !== benefitPlace(tiers) ? {} : { relativeGap: gap }),
    absoluteGap: absoluteGap(tiers[place]),
  };
}

function absoluteGap(tier: Tier | undefined): number {
  if (tier?.commitment) return 0.999;
  return Math.max(1e-6, (tier?.tolerance ?? 0) / 2);
}
