import { plannedYears, yearAt } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { CostLine } from '#domain/money.js';
import type { Award, Decisions, SpendEntry } from '#domain/plan.js';
import { moneyNeeds, type MoneyNeeds } from '#estimating/plan-needs/money-needs.js';
import { frontingsOf, mayFront } from '#estimating/purses/frontings.js';
import { mayPay, pursesOf, type Purse } from '#estimating/purses/purses.js';
import type { CampusCharges } from '#estimating/site-charges/campus-charges.js';
import { cents } from '#units/cents.js';
import { payFronted } from './fronted.js';
import type { Paid, Payments } from './payment-network.js';
import type { Shortage } from './shortage.js';

export interface MoneyAllocation {
  readonly spending: readonly SpendEntry[];
  readonly shortages: readonly Shortage[];
}

/** One cost of one year that is paid as a whole. */
export interface Due {
  readonly line: CostLine;
  readonly yearIndex: number;
  readonly amount: number;
  readonly site?: string;
  readonly buildType?: string;
}

/**
 * Pays every cost to the cent, purses that lapse first and may pay least going first, so that no
 * money is lost which could have been used.
 */
export function allocateMoney(
  campus: Campus,
  decisions: Decisions,
  charges: CampusCharges,
): MoneyAllocation {
  const dues = duesOf(campus, moneyNeeds(campus, decisions, charges));
  const payments = paymentsOf(campus, dues);
  const network = payFronted(payments);
  return {
    spending: spendingOf(campus, { dues, payments, paid: network.payments() }),
    shortages: network
      .missing()
      .map(({ yearIndex, amount }) => ({ resource: 'money' as const, at: yearIndex, amount })),
  };
}

/** Who may pay each cost, in the order in which money is best spent. */
export function paymentsOf(campus: Campus, dues: readonly Due[]): Payments {
  const purses = pursesOf(campus);
  const frontings = frontingsOf(campus, purses);
  const breadths = purses.map((purse) => breadth(campus, purse));
  const key = (i: number) => [purses[i]?.last ?? 0, breadths[i] ?? 0, purses[i]?.first ?? 0];
  const order = purses
    .map((_, i) => i)
    .sort((a, b) => key(a).reduce((found, k, at) => found || k - (key(b)[at] ?? 0), 0));
  const payersOf = remembered((due: Due) => ({
    payers: new Set(purses.flatMap((p, i) => (mayPay(p.restriction, due) ? [i] : []))),
    frontings: frontings.flatMap((f, i) => (mayFront(f, purses, due) ? [i] : [])),
  }));
  const bills = dues.map((due) => ({
    yearIndex: due.yearIndex,
    amount: due.amount,
    ...payersOf(due),
  }));
  return { purses, frontings, bills, order };
}

/** Who may pay a cost hangs on its line, site and build type alone. */
function remembered<T>(make: (due: Due) => T): (due: Due) => T {
  const kept = new Map<string, T>();
  return (due) => {
    const key = [due.line, due.site ?? '', due.buildType ?? ''].join('\u0000');
    const found = kept.get(key) ?? make(due);
    kept.set(key, found);
    return found;
  };
}

/** How many kinds of cost a purse may pay: the narrower, the sooner it is spent. */
function breadth(campus: Campus, { restriction }: Purse): number {
  const sites =
    restriction.sites === 'any' ? campus.candidates.length + 1 : restriction.sites.length;
  const types =
    restriction.buildTypes === 'any' ? campus.buildTypes.length + 1 : restriction.buildTypes.length;
  return restriction.lines.length * sites * types;
}

export function duesOf(campus: Campus, needs: MoneyNeeds): Due[] {
  const years = Array.from({ length: plannedYears(campus.calendar) }, (_, y) => y);
  const yearly = (line: CostLine, amounts: readonly number[]) =>
    years.map((yearIndex) => ({ line, yearIndex, amount: amounts[yearIndex] ?? 0 }));
  return [
    ...needs.build.map((c) => ({ line: 'build' as const, ...c })),
    ...needs.care.map((c) => ({ line: 'care' as const, ...c })),
    ...yearly('positions', needs.positions),
    ...yearly('compost', needs.compost),
    ...yearly('standing', needs.standing),
  ].filter((due) => due.amount > 0);
}

function spendingOf(
  { calendar }: Campus,
  all: { readonly dues: readonly Due[]; readonly payments: Payments; readonly paid: Paid[] },
): SpendEntry[] {
  const { purses, frontings } = all.payments;
  const entries = all.paid.flatMap(({ bill, purse: place, fronting, amount }): SpendEntry[] => {
    const due = all.dues[bill];
    const purse = purses[place];
    if (!due || !purse) return [];
    const named = due.line === 'build' || (due.line === 'care' && isRestricted(purse));
    const by = fronting === undefined ? undefined : frontings[fronting];
    return [
      {
        fund: purse.fund.id,
        inflow: purse.inflow,
        year: yearAt(calendar, due.yearIndex),
        line: due.line,
        ...(named && due.site !== undefined ? { site: due.site } : {}),
        amount: cents(amount),
        ...(by ? { repaidBy: { fund: by.grant.id, inflow: by.inflow } } : {}),
      },
    ];
  });
  return mergeEntries(entries);
}

/** One line for each purse, year, line, named site and award, in order of year. */
function mergeEntries(entries: readonly SpendEntry[]): SpendEntry[] {
  const merged = new Map<string, SpendEntry>();
  for (const entry of entries) {
    const key = [
      entry.year,
      entry.line,
      entry.site ?? '',
      entry.fund,
      entry.inflow,
      ...awardKey(entry.repaidBy),
    ].join('\u0000');
    const before = merged.get(key);
    merged.set(key, before ? { ...entry, amount: cents(before.amount + entry.amount) } : entry);
  }
  return [...merged].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, entry]) => entry);
}

function awardKey(award: Award | undefined): (string | number)[] {
  return award ? [award.fund, award.inflow] : [];
}

function isRestricted({ restriction }: Purse): boolean {
  return restriction.sites !== 'any' || restriction.buildTypes !== 'any';
}
