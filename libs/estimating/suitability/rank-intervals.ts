import type { Known } from '#units/known.js';
import { dirichletDraw, randomStream } from './random.js';

/** A site with the worth, 0 to 1, of each criterion, in the order of the weights. An unknown one may be any. */
export interface RankedSite {
  readonly site: string;
  readonly worths: readonly Known<number>[];
}

export interface WeightUncertainty {
  readonly weights: readonly number[];
  /** How firmly the weights are held: 100 keeps a weight of 0.2 within about 0.04. */
  readonly concentration: number;
  readonly draws: number;
  readonly seed: number;
}

/** Where a site stands when the weights are uncertain. Ranks count from 1; equal scores share the better one. */
export interface RankInterval {
  readonly site: string;
  readonly statedRank: number;
  /** Rank that 5 % and 95 % of the draws do not fall below. */
  readonly low: number;
  readonly high: number;
  /** Share of draws in which the site is among the best three. */
  readonly topThree: number;
}

/**
 * Ranks under the stated weights and under seeded Dirichlet draws about them. An unknown worth counts
 * half in the stated rank, and is drawn evenly from 0 to 1 in each draw. Same seed, same answer.
 */
export function rankIntervals(
  sites: readonly RankedSite[],
  uncertainty: WeightUncertainty,
): RankInterval[] {
  const random = randomStream(uncertainty.seed);
  const { weights, concentration, draws } = uncertainty;
  const drawn = Array.from({ length: draws }, () =>
    ranksUnder(sites, dirichletDraw(weights, concentration, random), random),
  );
  const stated = ranksUnder(sites, weights, () => HALF);
  return sites.map(({ site }, index) => {
    const ranks = drawn.map((each) => each[index] ?? 0).sort((a, b) => a - b);
    return {
      site,
      statedRank: stated[index] ?? 0,
      low: quantile(ranks, 0.05),
      high: quantile(ranks, 0.95),
      topThree: ranks.filter((rank) => rank <= 3).length / draws,
    };
  });
}

/** Middle of what an unknown worth may be. */
const HALF = 0.5;

/** Rank of each site: one more than the number of sites with a higher score. `unknown` gives unknown worths. */
export function ranksUnder(
  sites: readonly RankedSite[],
  weights: readonly number[],
  unknown: () => number,
): number[] {
  const scores = sites.map(({ worths }) =>
    worths.reduce(
      (sum, worth, index) => sum + (worth.known ? worth.value : unknown()) * (weights[index] ?? 0),
      0,
    ),
  );
  return scores.map((score) => 1 + scores.filter((other) => other > score + 1e-12).length);
}

/** Smallest sorted value that at least the share of values does not exceed. */
function quantile(sorted: readonly number[], share: number): number {
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? 0;
}
