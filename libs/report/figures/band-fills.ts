import type { LegendEntry } from './legend.js';
import type { Value } from './values.js';

type BandStep = 'half' | 'most' | 'near' | 'full' | 'over' | 'unknown';

/** The steps of a band, from light to dark; `over` and `unknown` differ by pattern. */
export const BAND_FILLS: Readonly<Record<BandStep, LegendEntry>> = {
  half: { text: 'up to 50 % of a limit', fill: 'none' },
  most: { text: 'to 75 %', fill: 'light' },
  near: { text: 'to 90 %', fill: 'medium' },
  full: { text: 'to 100 %', fill: 'dark' },
  over: { text: 'over the limit', fill: 'cross' },
  unknown: { text: 'unknown', fill: 'dots' },
};

/** The step of a share; the upper end of each step is included. */
export function bandStep(share: Value | undefined): LegendEntry {
  if (share === null || share === undefined) return BAND_FILLS.unknown;
  if (share > 1) return BAND_FILLS.over;
  if (share > 0.9) return BAND_FILLS.full;
  if (share > 0.75) return BAND_FILLS.near;
  return share > 0.5 ? BAND_FILLS.most : BAND_FILLS.half;
}

/**
 * A share as a whole percentage, or `unknown`. Just over the limit rounds up, so that no
 * overrun is printed as 100.
 */
export function shareText(share: Value | undefined): string {
  if (share === null || share === undefined) return 'unknown';
  return String(share > 1 ? Math.max(101, Math.round(share * 100)) : Math.round(share * 100));
}
