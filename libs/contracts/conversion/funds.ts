import { plannedYears, yearAt, type Calendar } from '#domain/calendar.js';
import type { Fund, Inflow, Reimbursement, Restriction } from '#domain/money.js';
import { cents, dollarsToCents, percentOf, roundCents, type Cents } from '#units/cents.js';
import { yearsLater, type FiscalYear } from '#units/fiscal-year.js';
import type { CampusFile } from '../campus-file.schema.js';
import { optional, toFiscalYear, toOptionalYear, toShare } from './values.js';

export type FundPart = CampusFile['funds'][number];
type YearlyPart = NonNullable<FundPart['yearlyInflows']>[number];

/** Money as it arrives, before fees. */
export interface Receipt {
  readonly year: FiscalYear;
  readonly amount: Cents;
}

/** Last fiscal year that is planned: the horizon's tail included. */
export function lastPlannedYear(calendar: Calendar): FiscalYear {
  return yearAt(calendar, plannedYears(calendar) - 1);
}

/** Id of the pot that keeps the care share of a fund. */
export function careShareId(fundId: string): string {
  return `${fundId}-care`;
}

/** A fund, and the pot of its care share where it has one. */
export function toFunds(fund: FundPart, calendar: Calendar): Fund[] {
  const receipts = receiptsOf(fund, calendar).filter(({ amount }) => amount > 0);
  const split = receipts.map((receipt) => ({ year: receipt.year, ...splitReceipt(fund, receipt) }));
  const main = mainFund(fund, calendar, split);
  return fund.careSharePercent > 0 ? [main, careFund(fund, calendar, split)] : [main];
}

/** Every inflow of a fund through the tail, by year: explicit ones, then the yearly ones. */
export function receiptsOf(fund: FundPart, calendar: Calendar): Receipt[] {
  const explicit = fund.inflows.map(({ year, amountDollars }) => ({
    year: toFiscalYear(year),
    amount: dollarsToCents(amountDollars),
  }));
  const yearly = (fund.yearlyInflows ?? []).flatMap((series) => yearlyReceipts(series, calendar));
  const last = Math.min(toOptionalYear(fund.expires) ?? Infinity, lastPlannedYear(calendar));
  return [...explicit, ...yearly]
    .filter(({ year }) => year <= last)
    .sort((a, b) => a.year - b.year);
}

/** Amount x (1 + growth) ^ (years since the first), to the nearest cent. */
function yearlyReceipts(series: YearlyPart, calendar: Calendar): Receipt[] {
  const from = toFiscalYear(series.from);
  const to = Math.min(toOptionalYear(series.to) ?? Infinity, lastPlannedYear(calendar));
  const growth = 1 + toShare(series.growthPercent ?? 0);
  const receipts: Receipt[] = [];
  for (let later = 0; from + later <= to; later += series.everyYears ?? 1) {
    const amount = roundCents(series.amountDollars * 100 * growth ** later);
    receipts.push({ year: yearsLater(from, later), amount });
  }
  return receipts;
}

interface SplitReceipt {
  readonly year: FiscalYear;
  readonly main: Cents;
  readonly care: Cents;
}

/** The fee comes off first, then the care share of what is left; nothing is lost in the rounding. */
function splitReceipt(fund: FundPart, { amount }: Receipt): { main: Cents; care: Cents } {
  const afterFee = cents(amount - percentOf(amount, fund.feePercent));
  const care = percentOf(afterFee, fund.careSharePercent);
  return { main: cents(afterFee - care), care };
}

function mainFund(fund: FundPart, calendar: Calendar, split: readonly SplitReceipt[]): Fund {
  const opening = { year: calendar.firstYear, amount: dollarsToCents(fund.openingBalanceDollars) };
  const restriction: Restriction = fund.restriction;
  const last = spendableUntil(fund.carryYears, calendar, toOptionalYear(fund.expires));
  const arrivals = [opening, ...split.map(({ year, main }) => ({ year, amount: main }))];
  return {
    id: fund.id,
    name: fund.name,
    kind: fund.kind,
    status: fund.status,
    counted: fund.counted,
    floor: dollarsToCents(fund.floorDollars),
    ...optional('matchRatio', fund.matchRatio),
    ...optional(
      'reimbursement',
      fund.reimbursement && toReimbursement(fund.reimbursement, calendar),
    ),
    inflows: toInflows(arrivals, { last, restriction }),
  };
}

/** Fiscal years that end between the last month of preparing, when a build is paid, and the payback. */
export function toReimbursement(
  { frontedBy, lagMonths }: NonNullable<FundPart['reimbursement']>,
  calendar: Calendar,
): Reimbursement {
  const { fiscalYearStartMonth, prepareSeason, seasons } = calendar;
  const paid =
    seasons.find(({ id }) => id === prepareSeason)?.months.at(-1) ?? fiscalYearStartMonth;
  const monthOfYear = (paid - fiscalYearStartMonth + 12) % 12;
  return { frontedBy, lagYears: Math.floor((monthOfYear + lagMonths) / 12) };
}

/** Care money outlives the dates of the build money that it came with. */
function careFund(fund: FundPart, calendar: Calendar, split: readonly SplitReceipt[]): Fund {
  const restriction: Restriction = { ...fund.restriction, lines: ['care'] };
  const last = spendableUntil(fund.careShareCarryYears ?? 'unlimited', calendar, undefined);
  const arrivals = split.map(({ year, care }) => ({ year, amount: care }));
  return {
    id: careShareId(fund.id),
    name: `${fund.name}, care share`,
    kind: fund.kind,
    status: fund.status,
    counted: fund.counted,
    floor: cents(0),
    careShareOf: fund.id,
    inflows: toInflows(arrivals, { last, restriction }),
  };
}

function toInflows(
  arrivals: readonly Receipt[],
  rule: { last: (year: FiscalYear) => FiscalYear; restriction: Restriction },
): Inflow[] {
  return arrivals
    .filter(({ amount }) => amount > 0)
    .map(({ year, amount }) => ({
      year,
      amount,
      lastYear: rule.last(year),
      restriction: rule.restriction,
    }));
}

/** min(year + carry years, expiry, last planned year), as a rule for each inflow's own year. */
function spendableUntil(
  carry: FundPart['carryYears'],
  calendar: Calendar,
  expires: FiscalYear | undefined,
): (year: FiscalYear) => FiscalYear {
  const end = Math.min(expires ?? Infinity, lastPlannedYear(calendar));
  return (year) => {
    const carried = carry === 'unlimited' ? Infinity : year + carry;
    return yearsLater(year, Math.max(0, Math.min(carried, end) - year));
  };
}
