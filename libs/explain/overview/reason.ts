/** A number that a sentence tells. */
export interface Figure {
  readonly what: string;
  /** In the unit `date` an ISO date, in `label` a year or a season in words. */
  readonly value: number | string;
  /** `share`: 0 to 1. */
  readonly unit: string;
}

/** One sentence with the number it rests on and where that comes from. */
export interface Reason {
  readonly sentence: string;
  readonly value: number | null;
  readonly unit: string;
  /** The other numbers of the sentence. */
  readonly figures: readonly Figure[];
  readonly source: string;
}
