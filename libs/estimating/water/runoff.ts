/** Part of the storage that rain must fill before anything runs off. TR-55 equation 2-2. */
export const INITIAL_ABSTRACTION = 0.2;

/** Potential storage in inches: S = 1000 / CN - 10. TR-55 equation 2-4. Throws outside 0 < CN <= 100. */
export function storageInches(curveNumber: number): number {
  if (!(curveNumber > 0 && curveNumber <= 100)) {
    throw new RangeError(`a curve number lies above 0 and up to 100, got ${curveNumber}`);
  }
  return 1000 / curveNumber - 10;
}

/**
 * Runoff depth in inches from a storm of `rainInches`.
 *
 *     Q = (P - 0.2 S)^2 / (P + 0.8 S), and 0 where P <= 0.2 S
 *
 * Source: USDA NRCS, Urban Hydrology for Small Watersheds, TR-55, 2nd ed. 1986, equation 2-3. A planning
 * indication: no treatment credit follows from it, and an engineer designs what must hold water.
 */
export function runoffInches(rainInches: number, curveNumber: number): number {
  const storage = storageInches(curveNumber);
  const first = INITIAL_ABSTRACTION * storage;
  if (rainInches <= first) return 0;
  return (rainInches - first) ** 2 / (rainInches - first + storage);
}

/** Cubic feet of a depth on an area. */
export function cubicFeetOf(areaSqFt: number, inches: number): number {
  return (areaSqFt * inches) / 12;
}

export interface CoverChange {
  readonly areaSqFt: number;
  readonly rainInches: number;
  readonly curveNumberBefore: number;
  readonly curveNumberAfter: number;
}

/** Cubic feet less (or more, where negative) that run off after the cover has changed. */
export function runoffSavedCuFt({
  areaSqFt,
  rainInches,
  curveNumberBefore,
  curveNumberAfter,
}: CoverChange): number {
  const before = runoffInches(rainInches, curveNumberBefore);
  const after = runoffInches(rainInches, curveNumberAfter);
  return cubicFeetOf(areaSqFt, before - after);
}
