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
  const counted = countedByYear({ campus, plan }, test);
  const missing = years.map((year) => {
    return { year, sites: Math.max(0, test.count - (counted.get(year) ?? 0)) };
  });
  return {
    amount: missing.reduce((sum, m) => sum + m.sites, 0),
    unit: 'sites',
    whole: test.count * years.length,
    where: missing.filter((m) => m.sites > 0).map((m) => fiscalYearLabel(m.year)),
  };
};

/** Sites of a plan that count in one year. */
export function sitesCounted(of: Counting, test: YearlyTest, year: FiscalYear): number {
  return countedByYear(of, test).get(year) ?? 0;
}

interface Counting {
  readonly campus: Campus;
  readonly plan: Plan;
}

/** Sites of a plan by the year in which they count. */
function countedByYear(
  { campus, plan }: Counting,
  { countsFromSqFt, returnedCounts }: YearlyTest,
): ReadonlyMap<FiscalYear, number> {
  const areas = new Map(campus.candidates.map((s) => [s.id, s.areaSqFt]));
  const counted = new Map<FiscalYear, number>();
  for (const placement of plan.decisions.placements) {
    const year = countsIn(placement, areas.get(placement.site) ?? 0, countsFromSqFt);
    if (year === undefined || !(returnedCounts || standsThrough(campus, placement))) continue;
    counted.set(year, (counted.get(year) ?? 0) + 1);
  }
  return counted;
}

function promisedYears(campus: Campus, from: FiscalYear, to: FiscalYear): FiscalYear[] {
  const first = Math.max(from, campus.calendar.firstYear);
  const last = Math.min(to, lastBuildYear(campus.calendar));
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => fiscalYear(first + i));
}
