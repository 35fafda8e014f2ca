import type { SampledShare } from '#futures/results/share.js';
import { strings } from '../strings.data.js';
import { wholeNumber, wholePercent } from './numbers.js';

/** A share of sampled futures with what sampling leaves open: `62% (59% to 65%)`, `all`, `none`. */
export function shareWithError({ share, low, high }: SampledShare): string {
  if (share === 0 || share === 1) return strings.futures.sure[share];
  return `${wholePercent(share)} (${wholePercent(low)} to ${wholePercent(high)})`;
}

/** Hours to the nearest ten: a sample tells them no finer. */
export function hoursToTen(hours: number): string {
  return wholeNumber(Math.round(hours / 10) * 10);
}
