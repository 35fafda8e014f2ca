import { BANDS, type Band } from './strip-years.js';

/** Heights of the rows of the year strip in pixels, from top to bottom. */
export interface StripLayout {
  readonly siteStep: number;
  /** Baseline on which the site marks stand. */
  readonly baseline: number;
  readonly yearLabel: number;
  readonly blockedTop: number;
  readonly bandTop: Readonly<Record<Band, number>>;
  readonly hiresTop: number;
  readonly total: number;
}

export const MARK = 14;
export const BAND_HEIGHT = 22;
const TOP = 20;
const SITE_STEP = MARK + 4;
const AXIS = 22;
const ROW = 28;
const BAND_STEP = 38;

/** Room for `mostSites` marks above the baseline, then years, works, bands and hires. */
export function stripLayout(mostSites: number): StripLayout {
  const baseline = TOP + Math.max(1, mostSites) * SITE_STEP + 4;
  const blockedTop = baseline + AXIS + 6;
  const bandsTop = blockedTop + ROW + 6;
  const tops = BANDS.map((band, index) => [band, bandsTop + index * BAND_STEP] as const);
  const hiresTop = bandsTop + BANDS.length * BAND_STEP;
  return {
    siteStep: SITE_STEP,
    baseline,
    yearLabel: baseline + 16,
    blockedTop,
    bandTop: Object.fromEntries(tops) as Record<Band, number>,
    hiresTop,
    total: hiresTop + ROW,
  };
}
