import type { Provenance } from './component.js';

/** What a benefit criterion measures on a site as it would be built. */
export type BenefitMeasure =
  | 'walkers-per-day'
  | 'food-area'
  | 'habitat-area'
  | 'rain-garden-area'
  | 'converted-area'
  | 'slope-mowing-removed'
  | 'teaching';

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

export interface BenefitSpec {
  readonly criteria: readonly BenefitCriterion[];
  /** Yearly discount of benefit as a share, 0 or more. */
  readonly discount: number;
  /** Points lost for each $1,000 of stranded cost in the price year, 0 or more. Left out: 0. */
  readonly pointsPer1000Stranded?: number;
}
