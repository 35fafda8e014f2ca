import { yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { CostLine } from '#domain/money.js';
import type { Plan } from '#domain/plan.js';
import { mayPay, pursesOf, type Payable, type Purse } from '#estimating/purses/purses.js';

/** A bill of one year. Amounts are cents; fractions of a cent do not matter here. */
export interface Bill extends Payable {
  readonly yearIndex: number;
  readonly amount: number;
}

/** What a plan means to spend of one purse on one line, or site, in one year. */
interface Meant {
  readonly purse: number;
  readonly amount: number;
}

/** The money of a campus with what a plan means to do with it: made once, read by every future. */
export interface Budget {
  readonly purses: readonly Purse[];
  readonly meant: ReadonlyMap<string, readonly Meant[]>;
}

/** Purses, those that lapse first before the others, and the plan's own payments by year, line, and site. */
export function budgetOf(campus: Campus, plan: Plan): Budget {
  const purses = pursesOf(campus).sort(
    (a, b) => a.last - b.last || breadth(a) - breadth(b) || a.first - b.first,
  );
  const placeOf = new Map(purses.map((p, i) => [`${p.fund.id} ${p.inflow}`, i]));
  const meant = new Map<string, Meant[]>();
  for (const { fund, inflow, year, line, site, amount } of plan.spending) {
    const purse = placeOf.get(`${fund} ${inflow}`);
    if (purse === undefined) continue;
    const key = keyOf(yearIndexOf(campus.calendar, year), line, site);
    meant.set(key, [...(meant.get(key) ?? []), { purse, amount }]);
  }
  return { purses, meant };
}

function keyOf(yearIndex: number, line: CostLine, site: string | undefined): string {
  return `${yearIndex} ${line} ${site ?? ''}`;
}

/** The narrower a restriction, the sooner its money is spent. */
function breadth({ restriction: { lines, sites, buildTypes } }: Purse): number {
  return lines.length + (sites === 'any' ? 10 : 0) + (buildTypes === 'any' ? 10 : 0);
}

/**
 * The money of one future. A bill is paid as the plan means it, and what it costs more from any money
 * that may pay it, what lapses first before the rest.
 */
export class Wallet {
  private readonly left: Float64Array;
  private readonly meantLeft = new Map<string, Float64Array>();

  constructor(
    private readonly budget: Budget,
    arrives: ReadonlySet<string>,
  ) {
    this.left = Float64Array.from(budget.purses, (p) => (arrives.has(p.fund.id) ? p.amount : 0));
  }

  /** Pays as much of a bill as there is money for, and tells what stays unpaid. */
  pay(bill: Bill): number {
    return this.drawn(bill).reduce((owed, { amount }) => owed - amount, bill.amount);
  }

  /** Pays a bill whole, or not at all. */
  payWhole(bill: Bill): boolean {
    const draws = this.drawn(bill);
    const paid = draws.reduce((sum, { amount }) => sum + amount, 0);
    if (paid >= bill.amount - 1) return true;
    for (const { purse, amount } of draws) this.left[purse] = (this.left[purse] ?? 0) + amount;
    return false;
  }

  /** Cents of a fund that nobody spent. */
  unspent(fund: string): number {
    return this.budget.purses.reduce(
      (sum, purse, i) => sum + (purse.fund.id === fund ? (this.left[i] ?? 0) : 0),
      0,
    );
  }

  private drawn(bill: Bill): { purse: number; amount: number }[] {
    const draws: { purse: number; amount: number }[] = [];
    const matched = new Map<string, number>();
    let owed = bill.amount;
    const draw = (place: number, most: number): number => {
      const purse = this.budget.purses[place];
      if (!purse || owed <= 0) return 0;
      const room = Math.min(most, this.left[place] ?? 0, owed, matchRoom(purse, bill, matched));
      if (room <= 0) return 0;
      this.left[place] = (this.left[place] ?? 0) - room;
      owed -= room;
      matched.set(purse.fund.id, (matched.get(purse.fund.id) ?? 0) + room);
      draws.push({ purse: place, amount: room });
      return room;
    };
    for (const site of bill.site === undefined ? [undefined] : [bill.site, undefined]) {
      this.asMeant(keyOf(bill.yearIndex, bill.line, site), bill, draw);
    }
    this.budget.purses.forEach((purse, place) => {
      if (owed > 0 && isOpen(purse, bill)) draw(place, Infinity);
    });
    return draws;
  }

  private asMeant(key: string, bill: Bill, draw: (place: number, most: number) => number): void {
    const entries = this.budget.meant.get(key);
    if (!entries) return;
    const left = this.meantLeft.get(key) ?? Float64Array.from(entries, (e) => e.amount);
    this.meantLeft.set(key, left);
    entries.forEach(({ purse: place }, i) => {
      const purse = this.budget.purses[place];
      if (!purse || !isOpen(purse, bill)) return;
      left[i] = (left[i] ?? 0) - draw(place, left[i] ?? 0);
    });
  }
}

function isOpen(purse: Purse, bill: Bill): boolean {
  const { first, last, restriction } = purse;
  return bill.yearIndex >= first && bill.yearIndex <= last && mayPay(restriction, bill);
}

/** Matching money pays at most its share of a bill: ratio / (1 + ratio). */
function matchRoom({ fund }: Purse, bill: Bill, matched: ReadonlyMap<string, number>): number {
  if (fund.matchRatio === undefined) return Infinity;
  const share = (bill.amount * fund.matchRatio) / (1 + fund.matchRatio);
  return share - (matched.get(fund.id) ?? 0);
}
