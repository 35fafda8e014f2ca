/**
 * Numbers as a reader may trust them: hours to 1, dollars to $100 (to $1,000 from $10,000 on), gaps
 * to a tenth of a percent. Nothing is shown finer than it was estimated.
 */
const locale = readersLocale();

const whole = new Intl.NumberFormat(locale, { maximumFractionDigits: 0 });
const tenth = new Intl.NumberFormat(locale, { maximumFractionDigits: 1 });
const threeFigures = new Intl.NumberFormat(locale, { maximumSignificantDigits: 3 });
const money = new Intl.NumberFormat(locale, {
  style: 'currency',
  currency: 'USD',
  maximumFractionDigits: 0,
});
const percent = new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 0 });
const percentToTenth = new Intl.NumberFormat(locale, {
  style: 'percent',
  minimumFractionDigits: 1,
  maximumFractionDigits: 1,
});
const day = new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' });
const moment = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' });
const month = new Intl.DateTimeFormat(locale, { month: 'long', year: 'numeric' });
const conjunction = new Intl.ListFormat(locale, { style: 'long', type: 'conjunction' });
const pluralRules = new Intl.PluralRules(locale);

/** English as the reader's browser is set to write it; the words of the page are English. */
function readersLocale(): string {
  const wished = typeof navigator === 'undefined' ? undefined : navigator.language;
  return wished?.startsWith('en') ? wished : 'en-US';
}

/** Rounded to a whole number, thousands set apart: hours, square feet, cubic yards. */
export function wholeNumber(value: number): string {
  return whole.format(noMinusZero(Math.round(value)));
}

/** Dollars to the nearest $100 below $10,000 and to the nearest $1,000 from there on. */
export function dollars(value: number): string {
  const step = Math.abs(value) < 10_000 ? 100 : 1_000;
  return money.format(noMinusZero(Math.round(value / step) * step));
}

/** A share as a whole percentage: 0.826 is 83%. */
export function wholePercent(share: number): string {
  return percent.format(share);
}

/** A solver's gap (a share) to a tenth of a percent; one that is not zero never reads as zero. */
export function gapPercent(share: number): string {
  if (share > 0 && share < 0.0005) return `under ${percentToTenth.format(0.001)}`;
  return percentToTenth.format(share);
}

/** An amount of any unit, to one decimal below 10 and whole above. */
export function amount(value: number): string {
  return Math.abs(value) < 10 ? tenth.format(noMinusZero(value)) : wholeNumber(value);
}

/**
 * A number of an estimate to three figures, with its unit: 0.0362 h, 1,480 cu yd, $54,300 of FY28,
 * 59% for a share.
 */
export function withUnit(value: number, unit: string): string {
  if (unit === 'share') return percent.format(value);
  const figures = threeFigures.format(Math.abs(noMinusZero(value)));
  const sign = value < 0 ? '−' : '';
  if (unit.startsWith('$')) return `${sign}$${figures}${unit.slice(1)}`;
  return `${sign}${figures} ${unit}`.trim();
}

/** A difference with its sign: +3, −$12,000; one too small to be shown is `same`. */
export function signed(value: number, format: (value: number) => string): string {
  const text = format(Math.abs(value));
  if (text === format(0)) return 'same';
  return value > 0 ? `+${text}` : `−${text}`;
}

/** A calendar date (`2027-09-01`) in words; what is no date comes back as it is. */
export function dateInWords(isoDate: string): string {
  return /^\d{4}-\d{2}-\d{2}$/.test(isoDate) ? day.format(Date.parse(isoDate)) : isoDate;
}

/** A moment in the reader's own time zone. */
export function momentInWords(isoMoment: string): string {
  const time = Date.parse(isoMoment);
  return Number.isNaN(time) ? isoMoment : moment.format(time);
}

/** The month of a date with its year, in the reader's own time zone: November 2026. */
export function monthInWords(date: Date): string {
  return month.format(date);
}

/** `a, b, and c`. */
export function listInWords(parts: readonly string[]): string {
  return conjunction.format(parts);
}

/** `1 site`, `3 sites`. */
export function counted(count: number, one: string, many: string): string {
  return `${wholeNumber(count)} ${pluralRules.select(count) === 'one' ? one : many}`;
}

/** Text with its first letter as a capital. */
export function capitalized(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function noMinusZero(value: number): number {
  return value === 0 ? 0 : value;
}
