import { yearAt } from '#domain/calendar.js';
import type { Fund } from '#domain/money.js';
import { finalPayer } from '#domain/plan.js';
import { paysBackLater } from '#estimating/purses/purses.js';
import { cents, centsToDollars } from '#units/cents.js';
import { fiscalYearLabel, type FiscalYear } from '#units/fiscal-year.js';
import { counted, dollarsInWords } from '#units/in-words.js';
import type { Ground } from '../ground.js';
import type { FundYear } from '../ledgers/fund-years.js';
import type { LimitRow } from '../plan-overview.js';
import { firstUnpaid } from './first-unpaid.js';

const NEVER = {
  resource: 'money',
  year: null,
  label: null,
  shortBy: null,
  unit: 'dollars',
} as const;

/**
 * The first year that cannot be paid without money that is only pledged. A verified plan pays every
 * cost with the pledges; where it does so without them too, the tightest year is told.
 */
export function moneyLimit(ground: Ground, ledger: readonly FundYear[]): LimitRow {
  const { campus, plan, charges } = ground;
  const pledged = campus.funds.filter((f) => f.counted && f.status !== 'received');
  const funds = campus.funds.map((f) => (pledged.includes(f) ? { ...f, counted: false } : f));
  const short = firstUnpaid({ ...campus, funds }, plan.decisions, charges);
  if (!short) return { ...NEVER, ...tightest(ledger, pledged) };
  const used = spentFrom(ground, pledged);
  const year = fiscalYearLabel(yearAt(campus.calendar, short.yearIndex));
  const shortBy = centsToDollars(cents(short.amount));
  return {
    resource: 'money',
    year,
    label: year,
    shortBy,
    unit: 'dollars',
    figures: used.length === 1 ? [] : [{ what: 'only pledged', value: used.length, unit: 'funds' }],
    sentence: `Without ${pledgesInWords(used)}, ${dollarsInWords(shortBy)} of the costs of ${year} cannot be paid.`,
  };
}

/** The pledges that the plan spends from. */
function spentFrom({ plan }: Ground, pledged: readonly Fund[]): Fund[] {
  return pledged.filter(({ id }) =>
    plan.spending.some((entry) => entry.fund === id || finalPayer(entry).fund === id),
  );
}

/** The one by name, several by number. */
function pledgesInWords(used: readonly Fund[]): string {
  const [first] = used;
  if (first && used.length === 1) return `“${first.name}”, only pledged`;
  return `${counted(used.length, 'fund')} only pledged`;
}

function tightest(
  ledger: readonly FundYear[],
  pledged: readonly Fund[],
): Pick<LimitRow, 'figures' | 'sentence'> {
  const ownMoney = ledger.filter(({ fund }) => !paysBackLater(fund));
  const groups = [
    { what: 'for building', rows: ownMoney.filter((row) => paysBuilds(row.fund)) },
    { what: 'for upkeep', rows: ownMoney.filter((row) => !paysBuilds(row.fund)) },
  ];
  const years = groups.flatMap(({ what, rows }) =>
    yearsOf(rows).map((year) => ({ what, ...year })),
  );
  const [first, ...rest] = years.filter(({ had }) => had > 0);
  const all = pledged.length > 0 ? 'Enough, also without pledges.' : 'Enough for all costs.';
  if (!first) return { figures: [], sentence: all };
  const { year, left, what } = rest.reduce(
    (a, b) => (b.left / b.had < a.left / a.had ? b : a),
    first,
  );
  const label = fiscalYearLabel(year);
  return {
    figures: [
      { what: 'tightest', value: label, unit: 'label' },
      { what: `left ${what}`, value: left, unit: 'dollars' },
    ],
    sentence: `${all} Tightest: ${label}, ${dollarsInWords(left)} left ${what}.`,
  };
}

function paysBuilds(fund: Fund): boolean {
  return fund.inflows.some(({ restriction }) => restriction.lines.includes('build'));
}

interface MoneyYear {
  readonly year: FiscalYear;
  readonly left: number;
  readonly had: number;
}

/** Dollars that could have been spent in each year above the floors, and what was not. */
function yearsOf(rows: readonly FundYear[]): MoneyYear[] {
  const dollars = (amount: number) => centsToDollars(cents(amount));
  return [...new Set(rows.map(({ year }) => year))].map((year) => {
    const ofYear = rows.filter((row) => row.year === year);
    const sum = (of: (row: FundYear) => number) =>
      dollars(ofYear.reduce((t, row) => t + of(row), 0));
    return {
      year,
      left: sum(({ closing, lapsed, fund }) => closing + lapsed - fund.floor),
      had: sum(
        ({ opening, received, paidBack, fund }) => opening + received + paidBack - fund.floor,
      ),
    };
  });
}
