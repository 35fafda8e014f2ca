/** A whole number of hundredths of a cubic yard: the grain in which compost is planned and checked. */
export type CentiYards = number & { readonly unit: 'centiyards' };

/** Marks a whole number as hundredths of a cubic yard. Throws on a fraction. */
export function centiYards(value: number): CentiYards {
  if (!Number.isSafeInteger(value)) {
    throw new RangeError(`hundredths of a cubic yard must be a whole number, got ${value}`);
  }
  return value as CentiYards;
}

/** Nearest hundredth of a cubic yard. */
export function yardsToCenti(cubicYards: number): CentiYards {
  return centiYards(Math.round(cubicYards * 100) + 0);
}

/** Cubic yards as a plain number, for display only. */
export function centiToYards(value: CentiYards): number {
  return value / 100;
}
