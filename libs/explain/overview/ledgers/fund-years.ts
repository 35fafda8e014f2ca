import type { Campus } from '#domain/campus.js';
import type { Fund } from '#domain/money.js';
import type { Award, Plan } from '#domain/plan.js';
import { paybackOf } from '#estimating/purses/paybacks.js';
import { fiscalYear, yearsLater, type FiscalYear } from '#units/fiscal-year.js';

/** One fund in one year, in whole cents: opening + received + paid back - spent - lapsed = closing. */
export interface FundYear {
  readonly fund: Fund;
  readonly year: FiscalYear;
  readonly opening: number;
  readonly received: number;
  /** What grants paid back to the fund; below 0: what the grant paid back to others. */
  readonly paidBack: number;
  readonly spent: number;
  readonly lapsed: number;
  readonly closing: number;
}

/** The ledger of every counted fund over the years in which sites may be built. */
export function fundYears(campus: Campus, plan: Plan): FundYear[] {
  const { firstYear, horizonYears } = campus.calendar;
  const years = Array.from({ length: horizonYears }, (_, index) => yearsLater(firstYear, index));
  const paybacks = paybacksOf(campus, plan);
  return campus.funds
    .filter((fund) => fund.counted)
    .flatMap((fund) => {
      const back = paybacks.filter((p) => p.to === fund.id);
      const paid = paybacks.filter((p) => p.by.fund === fund.id);
      const unspent = unspentAtLast(fund, { plan, back, paid });
      let opening = broughtForward(fund, firstYear);
      return years.map((year) => {
        const received = sum(fund.inflows.filter((f) => f.year === year));
        const spent = sum(plan.spending.filter((s) => s.fund === fund.id && s.year === year));
        const inYear = (of: readonly Paidback[]) => sum(of.filter((p) => p.year === year));
        const paidBack = inYear(back) - inYear(paid);
        const lapsed = unspent.get(year) ?? 0;
        const closing = opening + received + paidBack - spent - lapsed;
        const row = { fund, year, opening, received, paidBack, spent, lapsed, closing };
        opening = closing;
        return row;
      });
    });
}

function sum(entries: readonly { readonly amount: number }[]): number {
  return entries.reduce((total, { amount }) => total + amount, 0);
}

/** Money of earlier years that may still be spent in the first. */
function broughtForward(fund: Fund, firstYear: FiscalYear): number {
  return sum(fund.inflows.filter((f) => f.year < firstYear && f.lastYear >= firstYear));
}

/** What is left of each inflow after its last year, by that year. */
function unspentAtLast(
  fund: Fund,
  { plan, back, paid }: { plan: Plan; back: readonly Paidback[]; paid: readonly Paidback[] },
): ReadonlyMap<FiscalYear, number> {
  const lapses = new Map<FiscalYear, number>();
  fund.inflows.forEach(({ amount, lastYear }, inflow) => {
    const spent = sum(plan.spending.filter((s) => s.fund === fund.id && s.inflow === inflow));
    const returned = sum(back.filter((p) => p.inflow === inflow));
    const repaid = sum(paid.filter((p) => p.by.inflow === inflow));
    const at = fiscalYear(lastYear);
    lapses.set(at, (lapses.get(at) ?? 0) + amount + returned - spent - repaid);
  });
  return lapses;
}

/** Money that a grant pays back to the inflow that fronted it. */
export interface Paidback {
  readonly by: Award;
  readonly to: string;
  readonly inflow: number;
  readonly spentIn: FiscalYear;
  readonly site: string | undefined;
  /** Fiscal year of the payback. */
  readonly year: FiscalYear;
  readonly amount: number;
}

/** Everything that grants pay back, in the order of the plan's spending. */
export function paybacksOf(campus: Campus, plan: Plan): Paidback[] {
  return plan.spending.flatMap((entry) => {
    const payback = paybackOf(campus, entry);
    if (!payback || !entry.repaidBy) return [];
    const { fund: to, inflow, year: spentIn, site, repaidBy: by } = entry;
    return [{ by, to, inflow, spentIn, site, ...payback }];
  });
}
