/** A number of a figure; `null` is unknown, which is never drawn or counted as zero. */
export type Value = number | null;

/** A value with thousands separators and at most one decimal, or the word `unknown`. */
export function valueText(value: Value | undefined): string {
  if (value === null || value === undefined) return 'unknown';
  return value.toLocaleString('en-US', { maximumFractionDigits: Math.abs(value) < 10 ? 1 : 0 });
}

/** Sum of the known values, and whether all were known. */
export function knownSum(values: readonly Value[]): { sum: number; complete: boolean } {
  return {
    sum: values.reduce<number>((total, value) => total + (value ?? 0), 0),
    complete: values.every((value) => value !== null),
  };
}
