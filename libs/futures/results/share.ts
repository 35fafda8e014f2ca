import type { SampledQuantile, SampledShare } from '#units/sampled-in-words.js';

export type { SampledQuantile, SampledShare } from '#units/sampled-in-words.js';

/** Standard normal quantile of a two-sided 95 % interval. */
const Z = 1.959964;

/**
 * Share of `of` futures with its 95 % interval (Wilson 1927): it stays within 0 and 1, and says something
 * also where all or none of the futures agree.
 */
export function sampledShare(count: number, of: number): SampledShare {
  if (of === 0) return { share: NaN, low: 0, high: 1 };
  const share = count / of;
  const z2 = (Z * Z) / of;
  const center = (share + z2 / 2) / (1 + z2);
  const half = (Z / (1 + z2)) * Math.sqrt((share * (1 - share)) / of + z2 / (4 * of));
  return {
    share,
    low: count === 0 ? 0 : Math.max(0, center - half),
    high: count === of ? 1 : Math.min(1, center + half),
  };
}

/**
 * The value that a share `p` of a sample does not exceed, in steps between neighbors (type 7), and a 95 %
 * interval from the ranks that a binomial number of values below it leaves open.
 */
export function sampledQuantile(sorted: ArrayLike<number>, p: number): SampledQuantile {
  const last = sorted.length - 1;
  const at = (rank: number) => sorted[Math.max(0, Math.min(last, rank))] ?? NaN;
  const place = last * p;
  const below = Math.floor(place);
  const value = at(below) + (place - below) * (at(below + 1) - at(below));
  const half = Z * Math.sqrt(sorted.length * p * (1 - p));
  return { value, low: at(Math.floor(place - half)), high: at(Math.ceil(place + half)) };
}

/** P10, P50, and P90 of a sample, which is left as it is. */
export interface Spread {
  readonly p10: SampledQuantile;
  readonly p50: SampledQuantile;
  readonly p90: SampledQuantile;
}

export function spreadOf(sample: ArrayLike<number>): Spread {
  const sorted = Float64Array.from(sample).sort();
  return {
    p10: sampledQuantile(sorted, 0.1),
    p50: sampledQuantile(sorted, 0.5),
    p90: sampledQuantile(sorted, 0.9),
  };
}
