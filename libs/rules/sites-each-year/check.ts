import { lastBuildYear } from '#domain/calendar.js';
import { fiscalYear, fiscalYearLabel, type FiscalYear } from '#units/fiscal-year.js';
import type { Campus } from '#domain/campus.js';
import { countsIn, standsThrough } from '../counting.js';
import type { Measure } from '../shortfall.js';

/** Sites missing, summed over the years that the promise covers within the horizon. */
export const sitesEachYearShortfall: Measure<'sites-each-year'> = (campus, plan, test) => {
  const areas = new Map(campus.candidates.map((s) => [s.id, s.areaSqFt]));
  const years = promisedYears(campus, test.from, test.to);
  const missing = years.map((year) => {
    const counted = plan.decisions.placements.filter(
      (p) =>
        countsIn(p, areas.get(p.site) ?? 0, test.countsFromSqFt) === year &&
        (test.returnedCounts || standsThrough(campus, p)),
    ).length;
    return { year, sites: Math.max(0, test.count - counted) };
  });
  return {
    amount: missing.reduce((sum, m) => sum + m.sites, 0),
    unit: 'sites',
    whole: test.count * years.length,
    where: missing.filter((m) => m.sites > 0).map((m) => fiscalYearLabel(m.year)),
  };
};

function promisedYears(campus: Campus, from: FiscalYear, to: FiscalYear): FiscalYear[] {
  const first = Math.max(from, campus.calendar.firstYear);
  const last = Math.min(to, lastBuildYear(campus.calendar));
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => fiscalYear(first + i));
}
