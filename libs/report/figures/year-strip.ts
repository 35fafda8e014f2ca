import type { Value } from './values.js';

/** A year as it is printed: `2028` or `FY28`. */
export type YearName = number | string;

/** One site in the year it is planned for. */
export interface SiteMark {
  readonly year: YearName;
  /** Short name, printed in the mark. */
  readonly label: string;
  /** `needs-position`: depends on a position not yet granted. */
  readonly state: MarkState;
}

export type MarkState = 'planned' | 'needs-position' | 'blocked';

/** How much of one limit each year uses: 1 is all of it. */
export interface Band {
  readonly label: string;
  /** One share per year. */
  readonly shares: readonly Value[];
}

export interface YearStrip {
  readonly title: string;
  /** Consecutive years. */
  readonly years: readonly YearName[];
  readonly marks: readonly SiteMark[];
  readonly bands: readonly Band[];
}

/** The first year whose share is above 1, or `undefined`. */
export function firstLimit(band: Band, years: readonly YearName[]): YearName | undefined {
  return years.find((_, index) => (band.shares[index] ?? 0) > 1);
}
