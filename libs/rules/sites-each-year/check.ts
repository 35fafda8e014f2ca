import { lastBuildYear } from '#domain/calendar.js';
import { fiscalYear, fiscalYearLabel, type FiscalYear } from '#units/fiscal-year.js';
import type { Campus } from '#domain/campus.js';
import type { CommitmentTest } from '#domain/commitment.js';
import type { Plan } from '#domain/plan.js';
import { countsIn, standsThrough } from '../counting.js';
import type { Measure } from '../shortfall.js';

type YearlyTest = Extract<CommitmentTest, { kind: 'sites-each-year' }>;

/** Sites missing, summed over the years that the promise covers within the horizon. */
export const sitesEachYearShortfall: Measure<'sites-each-year'> = (campus, plan, test) => {
  const years = promisedYears(campus, test.from, test.to);
  const missing = years.map((year) => {
    return { year, sites: Math.max(0, test.count - sitesCounted({ campus, plan }, test, year)) };
  });
  return {
    amount: missing.reduce((sum, m) => sum + m.sites, 0),
    unit: 'sites',
    whole: test.count * years.length,
    where: missing.filter((m) => m.sites > 0).map((m) => fiscalYearLabel(m.year)),
  };
};

/** Sites of a plan that count in one year. */
export function sitesCounted(
  { campus, plan }: { readonly campus: Campus; readonly plan: Plan },
  { countsFromSqFt, returnedCounts }: YearlyTest,
  year: FiscalYear,
): number {
  const areas = new Map(campus.candidates.map((s) => [s.id, s.areaSqFt]));
  return plan.decisions.placements.filter(
    (p) =>
      countsIn(p, areas.get(p.site) ?? 0, countsFromSqFt) === year &&
      (returnedCounts || standsThrough(campus, p)),
  ).length;
}

function promisedYears(campus: Campus, from: FiscalYear, to: FiscalYear): FiscalYear[] {
  const first = Math.max(from, campus.calendar.firstYear);
  const last = Math.min(to, lastBuildYear(campus.calendar));
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => fiscalYear(first + i));
}
