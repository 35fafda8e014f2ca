import type { Fund } from '#domain/money.js';
import { type Cents, cents, scaleCents } from '#units/cents.js';
import { yearsLater, type FiscalYear } from '#units/fiscal-year.js';

export interface MatchingGrant {
  /** Grant dollars for each dollar of eligible other money on the same site. */
  readonly ratio: number;
  /** What is left of the grant. */
  readonly remaining: Cents;
}

/** What a matching grant pays: the least of ratio x other money, what is unpaid, and what is left. */
export function matchingPayment(
  { ratio, remaining }: MatchingGrant,
  { eligibleCost, otherMoney }: { readonly eligibleCost: Cents; readonly otherMoney: Cents },
): Cents {
  const matched = scaleCents(otherMoney, ratio);
  const unpaid = eligibleCost - otherMoney;
  return cents(Math.max(0, Math.min(matched, unpaid, remaining)));
}

/**
 * Share of a bill that a grant may pay where other money pays the rest: ratio / (1 + ratio), from
 * matched = ratio x other and matched + other = bill. 1 for money that matches nothing.
 */
export function matchShare({ matchRatio }: Pick<Fund, 'matchRatio'>): number {
  return matchRatio === undefined ? 1 : matchRatio / (1 + matchRatio);
}

/** Whole cents of a bill that a grant may pay. */
export function mostMatched(grant: Pick<Fund, 'matchRatio'>, bill: number): number {
  return grant.matchRatio === undefined
    ? bill
    : Math.floor((bill * grant.matchRatio) / (1 + grant.matchRatio));
}

/** Dollars that come back from a reimbursable grant in a later year. */
export interface Payback {
  readonly year: FiscalYear;
  readonly amount: Cents;
}

/** A reimbursable grant pays back after a lag the fund that fronted the money. */
export function reimbursement(paid: Cents, year: FiscalYear, lagYears: number): Payback {
  return { year: yearsLater(year, lagYears), amount: paid };
}
