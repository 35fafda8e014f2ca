const whole = new Intl.NumberFormat('en-US', { maximumFractionDigits: 0 });
const tenth = new Intl.NumberFormat('en-US', { maximumFractionDigits: 1 });
const conjunction = new Intl.ListFormat('en-US', { style: 'long', type: 'conjunction' });
const ordinals = new Intl.PluralRules('en-US', { type: 'ordinal' });
const plurals = new Intl.PluralRules('en-US');

/** A whole number with its thousands set apart; -0 is 0. */
export function wholeInWords(value: number): string {
  return whole.format(Math.round(value) + 0);
}

/** `1 site`, `3 sites`, `1,200 sites`; a count that is not whole is rounded first. */
export function counted(count: number, one: string, many = `${one}s`): string {
  const rounded = Math.round(count) + 0;
  return `${whole.format(rounded)} ${plurals.select(rounded) === 'one' ? one : many}`;
}

/** Hours to 1 h; hours that are there but round to none are not called none. */
export function hoursInWords(hours: number): string {
  if (hours > 0 && hours < 0.5) return 'less than 1 hour';
  return counted(hours, 'hour');
}

/**
 * Dollars as far as they can be trusted in a sentence: to $100, and to $1,000 from $10,000 on. What
 * is there but rounds to nothing is not called nothing.
 */
export function dollarsInWords(dollars: number): string {
  const size = Math.abs(dollars);
  if (size > 0 && size < 50) return 'less than $100';
  const step = size < 10_000 ? 100 : 1000;
  const text = `$${wholeInWords(Math.round(size / step) * step)}`;
  return dollars < 0 ? `minus ${text}` : text;
}

/** Square feet to 100, as a boundary on a plan is known; below 1,000 to 10. */
export function squareFeetInWords(area: number): string {
  const step = area < 1000 ? 10 : 100;
  return `${wholeInWords(Math.round(area / step) * step)} sq ft`;
}

/** A share as a percentage: whole above 10%, to a tenth below; one that is not zero never reads as 0%. */
export function percentInWords(share: number): string {
  const percent = share * 100;
  if (percent > 0 && percent < 0.1) return 'less than 0.1%';
  return `${percent < 10 ? tenth.format(percent) : wholeInWords(percent)}%`;
}

/** `a`, `a and b`, `a, b, and c`. */
export function listInWords(parts: readonly string[]): string {
  return conjunction.format(parts);
}

/** The same, with no more than so many named: `a, b, and 12 more sites`. */
export function firstInWords(parts: readonly string[], most: number, one: string): string {
  const rest = parts.length - most;
  if (rest <= 0) return listInWords(parts);
  return listInWords([...parts.slice(0, most), counted(rest, `more ${one}`)]);
}

/** `1st`, `2nd`, `3rd`, `11th`. */
export function ordinal(place: number): string {
  const endings: Record<string, string> = { one: 'st', two: 'nd', few: 'rd' };
  return `${wholeInWords(place)}${endings[ordinals.select(place)] ?? 'th'}`;
}

/** A name within a sentence: its first letter small, unless it opens an abbreviation; names in it stay. */
export function uncapitalized(text: string): string {
  if (/^\p{Lu}{2}/u.test(text)) return text;
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** The text with its first letter as a capital. */
export function capitalized(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
