import type { CampusFile } from '../../api.js';

/** Fiscal years in which sites may be prepared, as the campus file writes them: `FY2028`. */
export function yearsOf({ calendar }: CampusFile): readonly string[] {
  const first = Number(calendar.firstYear.slice(2));
  return Array.from({ length: calendar.horizonYears }, (_, index) => `FY${first + index}`);
}

/** `FY2028` as plans print it: `FY28`. */
export function shortYear(year: string): string {
  return year.replace(/^FY\d\d(?=\d\d$)/, 'FY');
}
