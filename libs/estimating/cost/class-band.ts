export interface CostBand {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** Expected range of an estimate class as shares of the likely cost: below (negative) and above. */
export interface ClassRange {
  readonly below: number;
  readonly above: number;
}

/**
 * Low, likely and high of an estimate. Class 5 (concept screening) runs from about -30 % to +50 %.
 * Not for awarding a contract.
 */
export function classBand(likely: number, { below, above }: ClassRange): CostBand {
  return { low: likely * (1 + below), likely, high: likely * (1 + above) };
}
