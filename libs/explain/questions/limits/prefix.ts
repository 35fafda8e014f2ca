import { yearAt } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Commitment } from '#domain/commitment.js';
import type { Decisions } from '#domain/plan.js';
import { MAY_GO_UNSERVED } from '#domain/labor.js';
import type { FiscalYear } from '#units/fiscal-year.js';

export type YearlyPromise = Commitment & {
  readonly test: Extract<Commitment['test'], { kind: 'sites-each-year' }>;
};

/** The first yearly promise; without one, a site each year is asked about. */
export function yearlyPromise(campus: Campus): YearlyPromise {
  const found = campus.commitments.find(
    (c): c is YearlyPromise => c.test.kind === 'sites-each-year',
  );
  if (found) return found;
  const { firstYear, horizonYears } = campus.calendar;
  return {
    id: 'a-site-each-year',
    name: 'A site each year (asked about, not promised)',
    strength: 'intended',
    test: {
      kind: 'sites-each-year',
      count: 1,
      from: firstYear,
      to: yearAt(campus.calendar, horizonYears - 1),
      countsFromSqFt: 0,
    },
    ...{ saidBy: '', saidTo: '', date: campus.dataDate, document: '', public: false, points: 0 },
  };
}

/**
 * The campus planned for its first `years` years only, with the promise binding in all of them and all
 * care served to five years after the last, so that the end is anchored anew for each prefix. Promises
 * and hand placements that fall due later are left out.
 */
export function prefixWithPromise(campus: Campus, promise: YearlyPromise, years: number): Campus {
  const last = yearAt(campus.calendar, years - 1);
  const test = { ...promise.test, to: Math.min(promise.test.to, last) as FiscalYear };
  const others = campus.commitments.filter(
    (c) => c.id !== promise.id && c.strength === 'binding' && dueBy(c, last),
  );
  return {
    ...campus,
    calendar: { ...campus.calendar, horizonYears: years },
    handPlacements: campus.handPlacements.filter((h) => h.year === undefined || h.year <= last),
    commitments: [...others, { ...promise, strength: 'binding', test }, allCareServed(promise)],
  };
}

function dueBy({ test }: Commitment, last: FiscalYear): boolean {
  switch (test.kind) {
    case 'named-site':
    case 'area':
      return test.by <= last;
    case 'zone-balance':
      return false;
    default:
      return true;
  }
}

function allCareServed(promise: Commitment): Commitment {
  return {
    ...promise,
    id: 'all-care-served',
    name: 'All care is served',
    strength: 'binding',
    test: { kind: 'no-unserved-care', classes: MAY_GO_UNSERVED, seasons: 'all' },
  };
}

/** What of a plan falls within the first years. */
export function decisionsWithin(
  { calendar }: Campus,
  decisions: Decisions,
  years: number,
): Decisions {
  const last = yearAt(calendar, years - 1);
  return { ...decisions, placements: decisions.placements.filter((p) => p.year <= last) };
}
