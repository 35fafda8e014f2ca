/** A whole number of hundredths of an hour: the grain in which labor is planned and checked. */
export type CentiHours = number & { readonly unit: 'centihours' };

/** Marks a whole number as hundredths of an hour; `centiHours(150)` is 1.5 h. Throws on a fraction. */
export function centiHours(value: number): CentiHours {
  if (!Number.isSafeInteger(value)) {
    throw new RangeError(`hundredths of an hour must be a whole number, got ${value}`);
  }
  return value as CentiHours;
}

/** Nearest hundredth of an hour. */
export function hoursToCenti(hours: number): CentiHours {
  return centiHours(Math.round(hours * 100) + 0);
}

/** Hours as a plain number, for display only. */
export function centiToHours(value: CentiHours): number {
  return value / 100;
}
