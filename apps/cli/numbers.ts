const six = new Intl.NumberFormat('en-US', { maximumSignificantDigits: 6 });

/** A value to six digits with its unit; what is not known is told as such. */
export function valueText(value: number | null, unit: string): string {
  return `${value === null ? 'unknown' : numberText(value)} ${unit}`;
}

export function numberText(value: number): string {
  return six.format(value);
}
