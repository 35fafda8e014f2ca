/** Square feet that one cubic yard covers an inch deep: 27 cu ft x 12, exact. */
export const SQUARE_FOOT_INCHES_PER_CUBIC_YARD = 324;

export interface Layer {
  readonly areaSqFt: number;
  /** Loose depth, as placed. */
  readonly depthInches: number;
  /** Extra share ordered for losses, 0 or more. */
  readonly waste: number;
}

/** Cubic yards to order: area x depth / 12 / 27 x (1 + waste). */
export function layerCuYd({ areaSqFt, depthInches, waste }: Layer): number {
  return ((areaSqFt * depthInches) / SQUARE_FOOT_INCHES_PER_CUBIC_YARD) * (1 + waste);
}

/** Pounds of a volume at a density in lb per cubic yard. */
export function poundsOf(cubicYards: number, poundsPerCuYd: number): number {
  return cubicYards * poundsPerCuYd;
}

/** Depth after the winter rest: loose depth x settled share. */
export function settledInches(looseInches: number, settledShare: number): number {
  return looseInches * settledShare;
}
