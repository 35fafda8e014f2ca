import { yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { CostLine, Fund } from '#domain/money.js';
import type { Award, Plan } from '#domain/plan.js';
import { matchShare } from '#estimating/cost/matching.js';
import {
  mayPay,
  paysBackLater,
  pursesOf,
  type Payable,
  type Purse,
} from '#estimating/purses/purses.js';

/** A bill of one year. Amounts are cents; fractions of a cent do not matter here. */
export interface Bill extends Payable {
  readonly yearIndex: number;
  readonly amount: number;
}

/** What a plan means to spend of one purse on one line, or site, in one year. */
interface Meant {
  readonly purse: number;
  readonly amount: number;
  /** The award that pays it back. */
  readonly repaidBy?: Award;
}

/** What was taken out of a purse for a bill. */
interface Draw extends Meant {
  /** Year index from which it is back in the purse. */
  readonly back?: number;
}

/** The money of a campus with what a plan means to do with it: made once, read by every future. */
export interface Budget {
  readonly purses: readonly Purse[];
  /** Grants that pay back later what other funds have spent. */
  readonly grants: readonly Fund[];
  /** Where each purse of the campus stands among them. */
  readonly places: readonly number[];
  readonly meant: ReadonlyMap<string, readonly Meant[]>;
}

/** Purses, those that lapse first before the others, and the plan's own payments by year, line, and site. */
export function budgetOf(campus: Campus, plan: Plan): Budget {
  const asFiled = pursesOf(campus);
  const purses = [...asFiled].sort(
    (a, b) => a.last - b.last || breadth(a) - breadth(b) || a.first - b.first,
  );
  const placeOf = new Map(purses.map((p, i) => [`${p.fund.id} ${p.inflow}`, i]));
  const meant = new Map<string, Meant[]>();
  // What is paid back comes first: it is least missed where a bill is smaller than planned.
  const inOrder = [...plan.spending].sort((a, b) => Number(!a.repaidBy) - Number(!b.repaidBy));
  for (const { fund, inflow, year, line, site, amount, repaidBy } of inOrder) {
    const purse = placeOf.get(`${fund} ${inflow}`);
    if (purse === undefined) continue;
    const key = keyOf(yearIndexOf(campus.calendar, year), line, site);
    const entry = { purse, amount, ...(repaidBy ? { repaidBy } : {}) };
    meant.set(key, [...(meant.get(key) ?? []), entry]);
  }
  const grants = campus.funds.filter((fund) => fund.counted && paysBackLater(fund));
  return { purses, places: asFiled.map((purse) => purses.indexOf(purse)), grants, meant };
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
 * that may pay it, what lapses first before the rest. Bills come in the order of their years. What the
 * plan has a grant pay back is fronted in any case, and comes back if the grant does.
 */
export class Wallet {
  private readonly left: Float64Array;
  private readonly meantLeft = new Map<string, Float64Array>();
  private fronted: readonly Draw[] = [];
  /** Cents that each grant has paid back or will, by its id. */
  private readonly repaid = new Map<string, number>();

  constructor(
    private readonly budget: Budget,
    private readonly arrives: ReadonlySet<string>,
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
    for (const draw of draws) this.record(draw, -1);
    return false;
  }

  /** Cents left in each purse, with those that are paid back to it, in the order of the campus's purses. */
  amounts(): Float64Array {
    const amounts = Float64Array.from(this.left);
    for (const { purse, amount } of this.fronted) amounts[purse] = (amounts[purse] ?? 0) + amount;
    return Float64Array.from(this.budget.places, (place) => amounts[place] ?? 0);
  }

  /** Cents that a grant still pays back. */
  repayable({ id, inflows }: Fund): number {
    const awarded = inflows.reduce((sum, { amount }) => sum + amount, 0);
    return awarded - (this.repaid.get(id) ?? 0);
  }

  /** Cents of a fund that nobody spent. */
  unspent(fund: string): number {
    const grant = this.budget.grants.find(({ id }) => id === fund);
    if (grant) return this.repayable(grant);
    return this.budget.purses.reduce(
      (sum, purse, i) => sum + (purse.fund.id === fund ? (this.left[i] ?? 0) : 0),
      0,
    );
  }

  private drawn(bill: Bill): Draw[] {
    this.takeBack(bill.yearIndex);
    const draws: Draw[] = [];
    const matched = new Map<string, number>();
    let owed = bill.amount;
    const draw = ({ purse: place, amount: most, repaidBy }: Meant): number => {
      const purse = this.budget.purses[place];
      if (!purse || owed <= 0) return 0;
      const grant = this.budget.grants.find(({ id }) => id === repaidBy?.fund);
      const payer = grant ?? purse.fund;
      const room = Math.min(most, this.left[place] ?? 0, owed, matchRoom(payer, bill, matched));
      if (room <= 0) return 0;
      owed -= room;
      matched.set(payer.id, (matched.get(payer.id) ?? 0) + room);
      const lag = grant?.reimbursement?.lagYears;
      const back = lag === undefined ? {} : { back: bill.yearIndex + lag };
      const made = { purse: place, amount: room, ...(repaidBy ? { repaidBy } : {}), ...back };
      this.record(made, 1);
      draws.push(made);
      return room;
    };
    for (const site of bill.site === undefined ? [undefined] : [bill.site, undefined]) {
      this.asMeant(keyOf(bill.yearIndex, bill.line, site), bill, draw);
    }
    this.budget.purses.forEach((purse, place) => {
      if (owed > 0 && isOpen(purse, bill)) draw({ purse: place, amount: Infinity });
    });
    return draws;
  }

  /** Takes money out of its purse (sign 1), or puts it in again as if it had never been out (sign -1). */
  private record(draw: Draw, sign: 1 | -1): void {
    const { purse, amount, repaidBy, back } = draw;
    this.left[purse] = (this.left[purse] ?? 0) - sign * amount;
    if (!repaidBy || back === undefined || !this.arrives.has(repaidBy.fund)) return;
    this.repaid.set(repaidBy.fund, (this.repaid.get(repaidBy.fund) ?? 0) + sign * amount);
    this.fronted =
      sign === 1 ? [...this.fronted, draw] : this.fronted.filter((other) => other !== draw);
  }

  /** Puts what is paid back by a year into the purses that it left. */
  private takeBack(yearIndex: number): void {
    if (this.fronted.length === 0) return;
    const isBack = ({ back = Infinity }: Draw) => back <= yearIndex;
    for (const { purse, amount } of this.fronted.filter(isBack))
      this.left[purse] = (this.left[purse] ?? 0) + amount;
    this.fronted = this.fronted.filter((f) => !isBack(f));
  }

  private asMeant(key: string, bill: Bill, draw: (meant: Meant) => number): void {
    const entries = this.budget.meant.get(key);
    if (!entries) return;
    const left = this.meantLeft.get(key) ?? Float64Array.from(entries, (e) => e.amount);
    this.meantLeft.set(key, left);
    entries.forEach((entry, i) => {
      const purse = this.budget.purses[entry.purse];
      if (!purse || !isOpen(purse, bill)) return;
      left[i] = (left[i] ?? 0) - draw({ ...entry, amount: left[i] ?? 0 });
    });
  }
}

function isOpen(purse: Purse, bill: Bill): boolean {
  const { first, last, restriction } = purse;
  return bill.yearIndex >= first && bill.yearIndex <= last && mayPay(restriction, bill);
}

/** Matching money pays at most its share of a bill: ratio / (1 + ratio). */
function matchRoom(fund: Fund, bill: Bill, matched: ReadonlyMap<string, number>): number {
  if (fund.matchRatio === undefined) return Infinity;
  return bill.amount * matchShare(fund) - (matched.get(fund.id) ?? 0);
}
