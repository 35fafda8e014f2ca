import { COST_LINES, type CostLine, type Fund } from '#domain/money.js';
import { cents, centsToDollars } from '#units/cents.js';
import { fiscalYearLabel, type FiscalYear } from '#units/fiscal-year.js';
import { dollarsInWords } from '#units/in-words.js';
import type { Ground } from '../ground.js';
import type { FundRow, LapseRow, MoneyRow, PaybackRow } from '../plan-overview.js';
import { siteName } from '../site-words.js';
import { paybacksOf, type FundYear, type Paidback } from './fund-years.js';

const dollars = (amount: number): number => centsToDollars(cents(amount));

/** The ledger as a reader sees it, without the years in which a fund holds nothing. */
export function fundRows(ledger: readonly FundYear[]): FundRow[] {
  return ledger
    .filter(({ opening, received, paidBack }) => opening + received + Math.abs(paidBack) > 0)
    .map(({ fund, year, ...amounts }) => ({
      fund: fund.id,
      name: fund.name,
      year: fiscalYearLabel(year),
      opening: dollars(amounts.opening),
      received: dollars(amounts.received),
      paidBack: dollars(amounts.paidBack),
      spent: dollars(amounts.spent),
      lapsed: dollars(amounts.lapsed),
      closing: dollars(amounts.closing),
      floor: dollars(fund.floor),
    }));
}

/** Dollars of every year by what they are spent on, with what all funds together received and keep. */
export function moneyRows({ plan, years }: Ground, ledger: readonly FundYear[]): MoneyRow[] {
  return years.map((year) => {
    const all = ledger.filter((row) => row.year === year);
    const sumOf = (part: 'received' | 'lapsed' | 'closing') =>
      dollars(all.reduce((total, row) => total + row[part], 0));
    return {
      year: fiscalYearLabel(year),
      ...(Object.fromEntries(COST_LINES.map((line) => [line, spentOn(plan, line, year)])) as Record<
        CostLine,
        number
      >),
      received: sumOf('received'),
      lapsed: sumOf('lapsed'),
      closing: sumOf('closing'),
    };
  });
}

function spentOn(plan: Ground['plan'], line: CostLine, year: FiscalYear): number {
  const entries = plan.spending.filter((s) => s.line === line && s.year === year);
  return dollars(entries.reduce((total, { amount }) => total + amount, 0));
}

const GIVEN: ReadonlySet<Fund['kind']> = new Set(['gift', 'reunion-gift', 'grant']);

/** Given money that is left unspent when its time is over. */
export function lapseRows(ledger: readonly FundYear[]): LapseRow[] {
  return ledger
    .filter(({ fund, lapsed }) => GIVEN.has(fund.kind) && lapsed > 0)
    .sort((a, b) => a.year - b.year)
    .map(({ fund, year, lapsed }) => {
      const amount = dollars(lapsed);
      const label = fiscalYearLabel(year);
      return {
        fund: fund.id,
        name: fund.name,
        year: label,
        dollars: amount,
        sentence: `${dollarsInWords(amount)} of “${fund.name}” lapses unspent at the end of ${label}.`,
      };
    });
}

/** What grants pay back, each grant, fund, and site once for each year of payback. */
export function paybackRows({ campus, plan }: Ground): PaybackRow[] {
  const merged = new Map<string, Paidback>();
  for (const payback of paybacksOf(campus, plan)) {
    const { by, to, site, spentIn } = payback;
    const key = [by.fund, to, site, spentIn].join('\u0000');
    const amount = (merged.get(key)?.amount ?? 0) + payback.amount;
    merged.set(key, { ...payback, amount });
  }
  const nameOf = (id: string) => campus.funds.find((fund) => fund.id === id)?.name ?? id;
  return [...merged.values()]
    .sort((a, b) => a.year - b.year)
    .map(({ by, to, site = '', spentIn, year, amount }) => ({
      grant: by.fund,
      name: nameOf(by.fund),
      year: fiscalYearLabel(year),
      dollars: dollars(amount),
      sentence: `“${nameOf(to)}” fronts ${dollarsInWords(dollars(amount))} for ${siteName(campus, site)} in ${fiscalYearLabel(spentIn)}; “${nameOf(by.fund)}” pays it back in ${fiscalYearLabel(year)}.`,
    }));
}
