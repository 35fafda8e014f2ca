/** A layer as the design has it and the most of it that roots may carry. */
export interface RootedLayer {
  readonly areaSqFt: number;
  readonly designInches: number;
  /** Part of the area within root protection, 0 to 1. */
  readonly protectedShare: number;
  /** Most that may lie within root protection, in inches. */
  readonly mostInches: number;
}

/**
 * Mean depth of a layer when root protection is kept: the design depth outside, the lesser of design and limit
 * inside. A mean depth times the whole area gives the right volume.
 */
export function meanInches({ designInches, protectedShare, mostInches }: RootedLayer): number {
  const inside = Math.min(designInches, mostInches);
  return designInches * (1 - protectedShare) + inside * protectedShare;
}

/** Square feet in which nothing is dug, tilled or aerated. */
export function undisturbedSqFt({ areaSqFt, protectedShare }: RootedLayer): number {
  return areaSqFt * protectedShare;
}
