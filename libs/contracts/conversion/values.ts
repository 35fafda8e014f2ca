import { fiscalYear, type FiscalYear } from '#units/fiscal-year.js';
import { hoursToCenti, type CentiHours } from '#units/centihours.js';
import { known, UNKNOWN, type Known } from '#units/known.js';
import { UNKNOWN_TEXT } from '../campus-file/values.js';

/** `FY2028` as a fiscal year. The text has passed the schema; anything else throws. */
export function toFiscalYear(text: string): FiscalYear {
  return fiscalYear(/^FY\d{4}$/.test(text) ? Number(text.slice(2)) : NaN);
}

export function toOptionalYear(text: string | undefined): FiscalYear | undefined {
  return text === undefined ? undefined : toFiscalYear(text);
}

/** A fiscal year as files write it: `FY2028`. */
export function fromFiscalYear(year: FiscalYear): string {
  return `FY${year}`;
}

export function toKnown<T extends string | number | boolean>(
  fact: T | typeof UNKNOWN_TEXT,
): Known<T> {
  return fact === UNKNOWN_TEXT ? UNKNOWN : known(fact);
}

export function toSeasonHours(hours: Readonly<Record<string, number>>): Record<string, CentiHours> {
  return mapValues(hours, hoursToCenti);
}

export function mapValues<A, B>(
  record: Readonly<Record<string, A>>,
  change: (value: A) => B,
): Record<string, B> {
  return Object.fromEntries(Object.entries(record).map(([key, value]) => [key, change(value)]));
}

/** Percent as a share, without the stray digits of a division: 4.1 is 0.041. */
export function toShare(percent: number): number {
  return Number((percent / 100).toPrecision(12));
}

/** `{ key: value }`, or nothing where the value was left out. */
export function optional<K extends string, V>(key: K, value: V | undefined): { [P in K]?: V } {
  return value === undefined ? {} : ({ [key]: value } as { [P in K]?: V });
}
