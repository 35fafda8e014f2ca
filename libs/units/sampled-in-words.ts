import { wholeInWords } from './in-words.js';

/** A share of sampled futures with what sampling leaves open. Shares from 0 to 1. */
export interface SampledShare {
  readonly share: number;
  /** Wilson interval, 95 %. */
  readonly low: number;
  readonly high: number;
}

/** A quantile of a sample with what sampling leaves open. */
export interface SampledQuantile {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Steps of percent that a share is told in: the smallest that is no finer than half of its error. */
const PERCENT_STEPS = [1, 2, 5, 10, 20];

/**
 * A share as a reader is told it: `62%`, `none`, `all`, and no more digits than sampling allows. Where
 * futures all agree it still says how many they were, since a rarer case may not have been met.
 */
export function shareInWords({ share, low, high }: SampledShare): string {
  if (share === 0) return 'none';
  if (share === 1) return 'all';
  const error = ((high - low) / 2) * 100;
  const step = PERCENT_STEPS.find((s) => s >= error / 3) ?? 20;
  const rounded = Math.round((share * 100) / step) * step;
  if (rounded <= 0) return `under ${step}%`;
  return rounded >= 100 ? `over ${100 - step}%` : `${rounded}%`;
}

/** `in about 62%`, `in all 1,000`: a share before the words "of futures". */
export function aboutShare(share: SampledShare, of: number): string {
  if (share.share === 0) return `in none of ${wholeInWords(of)}`;
  if (share.share === 1) return `in all ${wholeInWords(of)}`;
  return `in about ${shareInWords(share)}`;
}

/** `62% of futures`, `none of the futures`. */
export function ofFutures(share: SampledShare): string {
  const words = shareInWords(share);
  return words === 'none' || words === 'all' ? `${words} of the futures` : `${words} of futures`;
}

/** A quantile of a difference: `1 more`, `200 fewer`, `as many`. */
export function moreInWords(quantile: SampledQuantile): string {
  const words = quantileInWords(quantile);
  if (words === '0' || words === '-0') return 'as many';
  return words.startsWith('-') ? `${words.slice(1)} fewer` : `${words} more`;
}

/**
 * Quantiles of one sample from low to high, each as far as it can be trusted. Where a coarse step would
 * round one past its neighbor nearer the middle, it is told as that neighbor.
 */
export function quantilesInWords(
  quantiles: readonly [low: SampledQuantile, middle: SampledQuantile, high: SampledQuantile],
): string[] {
  const [low, middle, high] = quantiles.map(rounded) as [number, number, number];
  return [Math.min(low, middle), middle, Math.max(middle, high)].map(wholeInWords);
}

/** A quantile in steps of 1, 2, or 5 times a power of ten, no finer than a third of its error. */
export function quantileInWords(quantile: SampledQuantile): string {
  return wholeInWords(rounded(quantile));
}

function rounded({ value, low, high }: SampledQuantile): number {
  const error = Math.max((high - low) / 2, 0.5);
  const power = 10 ** Math.floor(Math.log10(error));
  const step = Math.max(1, ([1, 2, 5].find((m) => m * power >= error / 3) ?? 5) * power);
  return Math.round(value / step) * step;
}
