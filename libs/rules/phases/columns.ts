import { lastBuildYear } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { CandidateSite } from '#domain/site.js';
import { yearsLater, type FiscalYear } from '#units/fiscal-year.js';

/**
 * Years in which the second half of a site may be prepared: a life in two halves gets a column for
 * each of them, and for no other.
 *
 *     year + 1  <=  second half  <=  min(year + most years apart, last year of the horizon)
 */
export function secondHalfYears(
  { calendar }: Campus,
  { phasing }: CandidateSite,
  year: FiscalYear,
): FiscalYear[] {
  const most = Math.min(phasing?.mostYearsApart ?? 0, lastBuildYear(calendar) - year);
  return Array.from({ length: Math.max(0, most) }, (_, i) => yearsLater(year, i + 1));
}
