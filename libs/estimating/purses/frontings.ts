import { yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Fund } from '#domain/money.js';
import { mayPay, payable, paysBackLater, type Payable, type Purse } from './purses.js';

/**
 * One way to front money: what a purse spends on a build, one inflow of a reimbursable grant pays back
 * to it. The money comes back to the inflow that it left and keeps that inflow's last year, so that
 * fronting never makes money last longer; nothing is fronted that would come back too late to be spent.
 */
export interface Fronting {
  /** Place of the purse among those of the campus. */
  readonly purse: number;
  readonly grant: Fund;
  /** Place of the award in the grant's list of inflows. */
  readonly inflow: number;
  /** Most that the award pays back in all, in cents. */
  readonly most: number;
  /** First and last year index (included) of the spending. */
  readonly first: number;
  readonly last: number;
  /** Years until the money is back, 1 or more. */
  readonly lag: number;
}

/** Every way to front money on a campus; none where no grant pays back later. */
export function frontingsOf(campus: Campus, purses: readonly Purse[]): Fronting[] {
  return campus.funds
    .filter((fund) => fund.counted && paysBackLater(fund))
    .flatMap((grant) => {
      const { frontedBy, lagYears: lag = 0 } = grant.reimbursement ?? {};
      return grant.inflows.flatMap(({ amount: most, year, lastYear }, inflow) =>
        purses.flatMap(({ fund, first: opens, last: closes }, purse) => {
          if (fund.id !== frontedBy) return [];
          const first = Math.max(opens, yearIndexOf(campus.calendar, year));
          const last = Math.min(closes - lag, yearIndexOf(campus.calendar, lastYear));
          return most > 0 && first <= last
            ? [{ purse, grant, inflow, most, first, last, lag }]
            : [];
        }),
      );
    });
}

/** Whether a cost may be fronted so: both the grant and the purse that fronts may pay it. */
export function mayFront(
  { purse, grant, inflow }: Fronting,
  purses: readonly Purse[],
  cost: Payable,
): boolean {
  const award = grant.inflows[inflow];
  const front = purses[purse];
  if (!award || !front) return false;
  return mayPay(payable(grant, award.restriction), cost) && mayPay(front.restriction, cost);
}
