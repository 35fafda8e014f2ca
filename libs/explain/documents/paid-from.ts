import type { SpendEntry } from '#domain/plan.js';
import { paybackOf } from '#estimating/purses/paybacks.js';
import { centsToDollars, sumCents } from '#units/cents.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Ground } from '../overview/ground.js';

/** Dollars of one fund; what a grant pays back to it is told apart, in the fund's words. */
export interface PaidFrom {
  readonly fund: string;
  readonly dollars: number;
}

/** What each fund spends on builds that are meant, in the order of the campus file. */
export function paidFrom(
  { campus, plan }: Ground,
  isMeant: (entry: SpendEntry) => boolean,
): PaidFrom[] {
  const entries = plan.spending.filter((entry) => entry.line === 'build' && isMeant(entry));
  return campus.funds.flatMap(({ id, name }) => {
    const ofFund = entries.filter(({ fund }) => fund === id);
    const words = ofFund.map((entry) => `${name}${paidBackWords(campus, entry)}`);
    return [...new Set(words)].map((fund) => ({
      fund,
      dollars: centsToDollars(
        sumCents(ofFund.filter((_, i) => words[i] === fund).map(({ amount }) => amount)),
      ),
    }));
  });
}

function paidBackWords(campus: Ground['campus'], entry: SpendEntry): string {
  const payback = paybackOf(campus, entry);
  if (!payback) return '';
  const grant = campus.funds.find(({ id }) => id === entry.repaidBy?.fund);
  return `, paid back by ${grant?.name} in ${fiscalYearLabel(payback.year)}`;
}
