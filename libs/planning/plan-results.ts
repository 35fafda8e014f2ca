import type { Campus } from '#domain/campus.js';
import { leadingTier, type SolveReport, type TierResult } from '#domain/tier.js';
import { solveSentence } from '#explain/overview/solve-sentence.js';

/** One sentence on how near to proven a plan is. */
export function provenSentence(campus: Campus, report: SolveReport): string {
  return solveSentence(campus, report);
}

/** The tier that a solve is measured by: the first not proven, else benefit. */
export function measuredTier({ tiers }: SolveReport): TierResult | undefined {
  return leadingTier(tiers);
}
