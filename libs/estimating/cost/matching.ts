import { type Cents, cents, scaleCents } from '#units/cents.js';

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

/** Dollars that come back from a reimbursable grant in a later year. */
export interface Reimbursement {
  readonly year: number;
  readonly amount: Cents;
}

/** A reimbursable grant pays back after a lag the fund that fronted the money. */
export function reimbursement(paid: Cents, year: number, lagYears: number): Reimbursement {
  return { year: year + lagYears, amount: paid };
}
