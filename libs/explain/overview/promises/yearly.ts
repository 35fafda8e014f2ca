import { lastBuildYear } from '#domain/calendar.js';
import type { Commitment, CommitmentTest } from '#domain/commitment.js';
import { sitesCounted } from '#rules/sites-each-year/check.js';
import { fiscalYear, type FiscalYear } from '#units/fiscal-year.js';
import type { Ground } from '../ground.js';

type YearlyTest = Extract<CommitmentTest, { kind: 'sites-each-year' }>;

/** What the promises of sites every year ask of one year. */
export interface PromisedYear {
  /** Most sites that any of them wants; 0 where none covers the year. */
  readonly promised: number;
  /** Whether all of them are kept; `null` where none covers the year. */
  readonly kept: boolean | null;
  /** Smallest area that counts as a site for the first of them; 0 where no area is asked for. */
  readonly countsFromSqFt: number;
}

export function promisedIn(ground: Ground, year: FiscalYear): PromisedYear {
  const tests = yearlyPromises(ground).map(({ test }) => test);
  const covering = tests.filter((test) => year >= test.from && year <= test.to);
  return {
    promised: Math.max(0, ...covering.map((test) => test.count)),
    kept:
      covering.length === 0
        ? null
        : covering.every((test) => sitesCounted(ground, test, year) >= test.count),
    countsFromSqFt: tests[0]?.countsFromSqFt ?? 0,
  };
}

/** The promises of sites every year, in the order of their rank. */
export function yearlyPromises({
  campus,
}: Pick<Ground, 'campus'>): (Commitment & { test: YearlyTest })[] {
  return campus.commitments.filter(
    (c): c is Commitment & { test: YearlyTest } => c.test.kind === 'sites-each-year',
  );
}

/** Years of a promise that lie within the plan. */
export function yearsOf(
  { campus }: Pick<Ground, 'campus'>,
  { from, to }: YearlyTest,
): FiscalYear[] {
  const first = Math.max(from, campus.calendar.firstYear);
  const last = Math.min(to, lastBuildYear(campus.calendar));
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => fiscalYear(first + i));
}
