/** A whole number of thousandths of a benefit point: the grain in which benefit is planned and checked. */
export type MilliPoints = number & { readonly unit: 'millipoints' };

/** Marks a whole number as thousandths of a benefit point. Throws on a fraction. */
export function milliPoints(value: number): MilliPoints {
  if (!Number.isSafeInteger(value)) {
    throw new RangeError(`thousandths of a point must be a whole number, got ${value}`);
  }
  return value as MilliPoints;
}
