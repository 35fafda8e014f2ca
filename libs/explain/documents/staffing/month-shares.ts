import type { Calendar, Month, SeasonSpec, Term } from '#domain/calendar.js';

/** Share of a season's hours in each of its months, in their order; adds up to 1. */
export type MonthShares = readonly number[];

/** The same hours in every month. */
export function evenShares({ months }: SeasonSpec): MonthShares {
  return months.map(() => 1 / months.length);
}

/**
 * By the days of each month on which classes are in session, over all terms on record: for those who
 * come and go with the term. Even where no term is on record or none touches the season.
 */
export function termShares({ terms }: Calendar, season: SeasonSpec): MonthShares {
  const days = season.months.map((month) =>
    terms.reduce((sum, term) => sum + daysIn(term, month), 0),
  );
  const all = days.reduce((sum, one) => sum + one, 0);
  return all === 0 ? evenShares(season) : days.map((one) => one / all);
}

const DAY = 86_400_000;

/** Days of a term that fall in a month of any year; both ends are included. */
function daysIn({ starts, ends }: Term, month: Month): number {
  let count = 0;
  for (let day = Date.parse(starts); day <= Date.parse(ends); day += DAY) {
    if (new Date(day).getUTCMonth() + 1 === month) count += 1;
  }
  return count;
}
