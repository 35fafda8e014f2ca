import type { Provenance } from './component.js';

/** What a benefit criterion measures on a site as it would be built. */
export type BenefitMeasure =
  | 'walkers-per-day'
  | 'food-area'
  | 'habitat-area'
  | 'rain-garden-area'
  | 'converted-area'
  | 'slope-mowing-removed'
  | 'teaching'
  | 'care-avoided';

/** One criterion of benefit. Points a year = weight x measure / reference. */
export interface BenefitCriterion {
  readonly id: string;
  readonly name: string;
  readonly measure: BenefitMeasure;
  /** Weight in points; the weights of a campus add up to 100. */
  readonly weight: number;
  /** The measure that earns the whole weight, fixed by the campus and never by the best candidate. */
  readonly reference: number;
  /** What a site counts with while the fact is unknown; shown wherever it is used. */
  readonly whenUnknown: number;
  readonly provenance: Provenance;
}

/** A position on what benefit is, as points for each criterion; they add up to 100. */
export interface BenefitPosition {
  readonly id: string;
  readonly name: string;
  /** Points by criterion id; a criterion left out has none. */
  readonly weights: Readonly<Record<string, number>>;
}

export interface BenefitSpec {
  readonly criteria: readonly BenefitCriterion[];
  /** Yearly discount of benefit as a share, 0 or more. */
  readonly discount: number;
  /** Positions of the campus's own. Left out: none. */
  readonly positions?: readonly BenefitPosition[];
  /** Id of the position that the weights are of. Left out: the file's own weights. */
  readonly position?: string;
  /** The criteria with the file's own weights, where a position was taken. */
  readonly stated?: readonly BenefitCriterion[];
  /** Points lost for each $1,000 of stranded cost in the price year, 0 or more. Left out: 0. */
  readonly pointsPer1000Stranded?: number;
}
