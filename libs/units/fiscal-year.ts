/** A fiscal year, named by the calendar year in which it ends: FY28 ends in 2028. */
export type FiscalYear = number & { readonly unit: 'fiscal-year' };

/** Marks a four-digit year as a fiscal year. Throws outside 1900-2200. */
export function fiscalYear(endsIn: number): FiscalYear {
  if (!Number.isInteger(endsIn) || endsIn < 1900 || endsIn > 2200) {
    throw new RangeError(`a fiscal year is a whole year from 1900 to 2200, got ${endsIn}`);
  }
  return endsIn as FiscalYear;
}

/** `FY28` for the fiscal year that ends in 2028. */
export function fiscalYearLabel(year: FiscalYear): string {
  return `FY${String(year % 100).padStart(2, '0')}`;
}

/** The fiscal year `count` years later (or earlier, where `count` is negative). */
export function yearsLater(year: FiscalYear, count: number): FiscalYear {
  return fiscalYear(year + count);
}
