/** U.S. gallons in a cubic foot: 1,728 / 231 cubic inches, exact. */
export const GALLONS_PER_CUBIC_FOOT = 1728 / 231;

/** Gallons of a depth of water on an area: sf x in / 12 x 7.48052 (0.62338 gal per sf and inch). */
export function gallonsOf(areaSqFt: number, inches: number): number {
  return ((areaSqFt * inches) / 12) * GALLONS_PER_CUBIC_FOOT;
}

export interface Catchment {
  readonly areaSqFt: number;
  /** Part of the rain that reaches the tank, 0 to 1. */
  readonly runoffShare: number;
  /** Inches of each storm that are turned away before the tank fills. */
  readonly firstFlushInches: number;
}

/** Gallons that a day's rain brings to a tank. */
export function capturedGallons(rainInches: number, catchment: Catchment): number {
  const counted = Math.max(0, rainInches - catchment.firstFlushInches);
  return gallonsOf(catchment.areaSqFt, counted) * catchment.runoffShare;
}
