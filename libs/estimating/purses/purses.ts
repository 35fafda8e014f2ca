import { plannedYears, yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { CostLine, Fund, Restriction } from '#domain/money.js';

/** Money of one inflow that a plan may spend, with the years in which it may. Cents; floor taken off. */
export interface Purse {
  readonly fund: Fund;
  /** Place of the inflow in the fund's list. */
  readonly inflow: number;
  readonly amount: number;
  /** First and last year index (included), within horizon and tail. */
  readonly first: number;
  readonly last: number;
  readonly restriction: Restriction;
}

/**
 * Every purse of a campus; a grant that pays back later has none (`frontingsOf`). The floor of a fund is locked into its earliest inflows for good, since
 * its closing balance may never be spent below it.
 */
export function pursesOf(campus: Campus): Purse[] {
  const end = plannedYears(campus.calendar) - 1;
  return campus.funds
    .filter((fund) => fund.counted && !paysBackLater(fund))
    .flatMap((fund) => {
      let locked: number = fund.floor;
      return fund.inflows.map((flow, inflow) => {
        const kept = Math.min(locked, flow.amount);
        locked -= kept;
        return {
          fund,
          inflow,
          amount: flow.amount - kept,
          first: Math.max(0, yearIndexOf(campus.calendar, flow.year)),
          last: Math.min(end, yearIndexOf(campus.calendar, flow.lastYear)),
          restriction: payable(fund, flow.restriction),
        };
      });
    })
    .filter((purse) => purse.amount > 0 && purse.first <= purse.last);
}

/** Whether a grant never pays a cost itself, but another fund after it has. */
export function paysBackLater({ reimbursement }: Fund): boolean {
  return (reimbursement?.lagYears ?? 0) > 0;
}

/** Matching and reimbursable money pays on builds alone, whatever else its restriction names. */
export function payable(
  { matchRatio, reimbursement }: Fund,
  restriction: Restriction,
): Restriction {
  if (matchRatio === undefined && reimbursement === undefined) return restriction;
  return { ...restriction, lines: restriction.lines.filter((line) => line === 'build') };
}

/** A cost as a restriction sees it. Only `build` and `care` have a site and type. */
export interface Payable {
  readonly line: CostLine;
  readonly site?: string;
  readonly buildType?: string;
}

/** Whether a restriction lets its money pay a cost. */
export function mayPay(restriction: Restriction, cost: Payable): boolean {
  if (!restriction.lines.includes(cost.line)) return false;
  const { sites, buildTypes } = restriction;
  const siteOk = sites === 'any' || (cost.site !== undefined && sites.includes(cost.site));
  const typeOk =
    buildTypes === 'any' || (cost.buildType !== undefined && buildTypes.includes(cost.buildType));
  return siteOk && typeOk;
}
