import type { TierResult } from '#domain/tier.js';
import type { Tier } from '../tiers/tier-list.js';

/**
 * A tier's line of the report. A bound of a tier counted in whole units is rounded to what a plan can
 * reach, and no bound is better than a value that was found.
 */
export function tierResult(tier: Tier, value: number, rawBound: number | null): TierResult {
  const bound = rawBound === null ? null : towardsReachable(tier, value, rawBound);
  const gap = bound === null ? null : Math.abs(value - bound) / Math.max(Math.abs(value), 1);
  return {
    name: tier.name,
    unit: tier.unit,
    sense: tier.sense,
    value,
    bound,
    gap,
    tolerance: tier.tolerance + tier.rounding,
    proven: bound !== null && Math.abs(value - bound) <= tier.tolerance + tier.rounding + 1e-9,
  };
}

function towardsReachable(tier: Tier, value: number, bound: number): number {
  const grain = grainOf(tier);
  const slack = 1e-6 * Math.max(1, Math.abs(bound));
  if (tier.sense === 'min') return Math.min(value, Math.ceil((bound - slack) / grain) * grain + 0);
  return Math.max(value, bound);
}

/** Smallest step between two values of a tier. */
function grainOf(tier: Tier): number {
  return tier.commitment ? 1 : 0.01;
}

/** The better of two bounds; `null`: not known. */
export function tighterBound(tier: Tier, a: number | null, b: number | null): number | null {
  if (a === null || b === null) return a ?? b;
  return tier.sense === 'min' ? Math.max(a, b) : Math.min(a, b);
}
