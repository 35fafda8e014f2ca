const six = new Intl.NumberFormat('en-US', { maximumSignificantDigits: 6 });

/** A value to six digits with its unit; what is not known is told as such: `$8.5/sf`. */
export function valueText(value: number | null, unit: string): string {
  if (value === null) return `unknown ${unit}`;
  if (!unit.startsWith('$')) return `${numberText(value)} ${unit}`;
  return `${value < 0 ? '-' : ''}$${numberText(Math.abs(value))}${unit.slice(1)}`;
}

export function numberText(value: number): string {
  return six.format(value);
}
