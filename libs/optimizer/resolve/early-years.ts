import { TAIL_YEARS, yearAt } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Commitment } from '#domain/commitment.js';
import { frozenThrough } from '#rules/stability/frozen.js';
import { yearsLater, type FiscalYear } from '#units/fiscal-year.js';
import { groundOf } from '../columns/ground-of.js';
import { secondsLimit } from '../solve/budget.js';
import { withAmpleLabor, withAmpleMoney } from '../solve/relaxations.js';
import { relaxTier, type TierSolve } from '../solve/solve-tier.js';

/** Share of the years that a proof looks at, where something binding asks for builds to the end. */
const SHARE = 0.75;

/**
 * The campus as far as its first `years` years go: what falls due later is left out, and after them come
 * people and money without limit. The first years of any plan are a plan of this campus, so where this
 * one has none, neither has the campus. `undefined` where that need not hold: a site in halves might have
 * its second half later, and a grant might pay back after the last year that is looked at.
 */
export function throughEarlyYears(campus: Campus, years: number): Campus | undefined {
  const last = yearAt(campus.calendar, years - 1);
  if (campus.candidates.some(({ phasing }) => phasing)) return undefined;
  if (campus.funds.some((f) => (f.reimbursement?.lagYears ?? 0) > TAIL_YEARS)) return undefined;
  if (frozenThrough(campus) > last) return undefined;
  const early = {
    ...campus,
    calendar: { ...campus.calendar, horizonYears: years },
    handPlacements: campus.handPlacements.filter((h) => h.year !== undefined && h.year <= last),
    commitments: campus.commitments.flatMap((c) => promisedBy(c, last) ?? []),
  };
  const after = yearsLater(last, 1);
  return withAmpleMoney(withAmpleLabor(early, { from: after }), after);
}

/** What a binding promise asks for up to a year; `undefined` where that is nothing. */
function promisedBy(commitment: Commitment, last: FiscalYear): Commitment | undefined {
  const { test, strength } = commitment;
  if (strength !== 'binding') return undefined;
  switch (test.kind) {
    case 'named-site':
    case 'area':
      return test.by <= last ? commitment : undefined;
    case 'sites-each-year':
      if (test.from > last) return undefined;
      return { ...commitment, test: { ...test, to: test.to < last ? test.to : last } };
    case 'zone-balance':
      return undefined;
    case 'no-new-positions-before':
    case 'no-unserved-care':
    case 'only-build-types':
      return commitment;
  }
}

type Question = Pick<TierSolve, 'solver' | 'held' | 'seed' | 'shouldStop'>;

/**
 * Whether a relaxation of the first years alone proves that there is no plan. It is a part of the whole
 * one and sooner solved, and what cannot be kept is most often missed before the last year.
 */
export function provenByEarlyYears(
  campus: Campus,
  question: Question,
  of: { readonly needed: number; readonly secondsLeft: () => number },
): boolean {
  const all = campus.calendar.horizonYears;
  const years = of.needed < all ? of.needed : Math.floor(all * SHARE);
  const early = years > 0 && !question.shouldStop() ? throughEarlyYears(campus, years) : undefined;
  if (!early) return false;
  const limits = secondsLimit(of.secondsLeft());
  const relaxed = relaxTier({ ...question, ground: groundOf(early), tier: 'benefit', limits });
  return relaxed === 'infeasible';
}
