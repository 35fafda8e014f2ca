import type { Campus } from '#domain/campus.js';
import type { Fund } from '#domain/money.js';
import type { Plan } from '#domain/plan.js';
import { fiscalYear, yearsLater, type FiscalYear } from '#units/fiscal-year.js';

/** One fund in one year, in whole cents: opening + received - spent - lapsed = closing. */
export interface FundYear {
  readonly fund: Fund;
  readonly year: FiscalYear;
  readonly opening: number;
  readonly received: number;
  readonly spent: number;
  readonly lapsed: number;
  readonly closing: number;
}

/** The ledger of every counted fund over the years in which sites may be built. */
export function fundYears(campus: Campus, plan: Plan): FundYear[] {
  const { firstYear, horizonYears } = campus.calendar;
  const years = Array.from({ length: horizonYears }, (_, index) => yearsLater(firstYear, index));
  return campus.funds
    .filter((fund) => fund.counted)
    .flatMap((fund) => {
      const unspent = unspentAtLast(fund, plan);
      let opening = broughtForward(fund, firstYear);
      return years.map((year) => {
        const received = sum(fund.inflows.filter((f) => f.year === year));
        const spent = sum(plan.spending.filter((s) => s.fund === fund.id && s.year === year));
        const lapsed = unspent.get(year) ?? 0;
        const closing = opening + received - spent - lapsed;
        const row = { fund, year, opening, received, spent, lapsed, closing };
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
function unspentAtLast(fund: Fund, plan: Plan): ReadonlyMap<FiscalYear, number> {
  const lapses = new Map<FiscalYear, number>();
  fund.inflows.forEach(({ amount, lastYear }, inflow) => {
    const spent = sum(plan.spending.filter((s) => s.fund === fund.id && s.inflow === inflow));
    const at = fiscalYear(lastYear);
    lapses.set(at, (lapses.get(at) ?? 0) + amount - spent);
  });
  return lapses;
}
