import type { Campus } from '#domain/campus.js';
import { tiersOf } from '#optimizer/tiers/tier-list.js';

/** What one plan reaches, and how good a plan of its kind could be at best; tier by tier. */
export interface Reached {
  readonly values: readonly number[];
  readonly bounds: readonly (number | null)[];
}

/** By how much one course is worse than another, in the first tier that tells them apart. */
export interface WorseBy {
  readonly tier: string;
  readonly unit: string;
  /** Between the plans found; 0 or above, in the tier's unit. */
  readonly found: number;
  /** Proven: by at least this much. */
  readonly least: number;
  /** Proven: by at most this much. `null` where no bound is known. */
  readonly most: number | null;
  /** `found`, `least` and `most` as shares of what the better one reaches, for benefit only. */
  readonly shares: {
    readonly found: number;
    readonly least: number;
    readonly most: number | null;
  } | null;
  /** Tiers before this one that are equal in the plans found and not proven. */
  readonly given: readonly string[];
}

/**
 * Compares two courses tier by tier. With L the plan found and U the bound of a tier that is to be
 * large, the second is worse by something in [max(0, L1 - U2), U1 - L2]; turned round for a tier that
 * is to be small.
 */
export function worseBy(campus: Campus, better: Reached, worse: Reached): WorseBy {
  const tiers = tiersOf(campus);
  const upTo = tiers.findIndex((t) => t.name === 'benefit');
  const told = tiers.findIndex((tier, i) => {
    const apart = Math.abs((better.values[i] ?? 0) - (worse.values[i] ?? 0));
    return i <= upTo && apart > tier.tolerance + 1e-9;
  });
  const place = told < 0 ? upTo : told;
  const tier = tiers[place];
  if (!tier) throw new RangeError('a campus has no tier');
  const sign = tier.sense === 'max' ? 1 : -1;
  const [a, b] = [better.values[place] ?? 0, worse.values[place] ?? 0];
  const [boundA, boundB] = [better.bounds[place] ?? null, worse.bounds[place] ?? null];
  const least = boundB === null ? 0 : Math.max(0, sign * (a - boundB));
  const most = boundA === null ? null : Math.max(least, sign * (boundA - b));
  const found = Math.max(0, sign * (a - b));
  const whole = Math.max(1, Math.abs(a));
  const shares =
    tier.name === 'benefit'
      ? { found: found / whole, least: least / whole, most: most === null ? null : most / whole }
      : null;
  const given = tiers
    .slice(0, place)
    .filter((t, i) => !isProven(better, i, t.tolerance + t.rounding))
    .map((t) => t.name);
  return { tier: tier.name, unit: tier.unit, found, least, most, shares, given };
}

function isProven({ values, bounds }: Reached, place: number, slack: number): boolean {
  const bound = bounds[place] ?? null;
  return bound !== null && Math.abs((values[place] ?? 0) - bound) <= slack + 1e-9;
}
