import type { Amounts } from './life-charges.js';
import { moneyLayout, type MoneyLayout } from './money-layout.js';
import { Shortages } from './shortages.js';
import type { Tables } from './tables.js';

/**
 * Tells whether costs by sink and year can be paid. It keeps how the last costs were paid, and works
 * only on what has changed since, so that thousands of small changes a second can be judged.
 */
export interface MoneyTest {
  /** Says that a cost, at [sink x years + year], is no longer what it was at the last look. */
  touch(due: number): void;
  /** True where every cost can be paid; `costs` holds cents at [sink x years + year]. */
  paid(costs: Float64Array): boolean;
  /** False only where it is known already that not all can be paid once there is more to pay. */
  mayPay(costs: Float64Array, more: Amounts): boolean;
}

/** The same where no money is fronted, with what can be paid where not all can be. */
export interface KeptMoney extends MoneyTest {
  /** What can be paid of each cost, by the same places. */
  payable(costs: Float64Array): Float64Array;
}

/**
 * A largest flow from purses to dues (costs of one sink in one year), kept from call to call. A cost
 * that falls gives money back; one that rises is paid along augmenting paths (Ford and Fulkerson 1956),
 * which find a way of paying where there is one, whatever was paid how before. Whole cents throughout.
 */
export function keptFlow(tables: Tables, layout: MoneyLayout = moneyLayout(tables)): KeptMoney {
  return new KeptFlow(tables, layout);
}

class KeptFlow implements KeptMoney {
  private readonly flow: Float64Array;
  private readonly left: Float64Array;
  private readonly paidSoFar: Float64Array;
  private readonly cost: Float64Array;
  /** Money that each matching fund pays of each due. */
  private readonly matched: Float64Array;
  /** For each due reached: the arc that would pay it less, and the arc that would pay another more. */
  private readonly cameBy: Int32Array;
  private readonly takenFor: Int32Array;
  private readonly reached: Int32Array;
  private readonly queue: Int32Array;
  /** Purses known to hold nothing more, by the number of the search that found it. */
  private readonly emptied: Int32Array;
  private search = 0;
  /** Dues that have changed, or could not be paid, since all were paid. */
  private touched: number[] = [];
  private readonly isTouched: Uint8Array;
  private readonly shortages: Shortages;

  constructor(
    tables: Tables,
    private readonly arcs: MoneyLayout,
  ) {
    this.left = Float64Array.from(tables.purses, (p) => p.amount);
    this.shortages = new Shortages(arcs, Float64Array.from(this.left));
    const dues = tables.sinkKeys.length * tables.years;
    this.flow = new Float64Array(this.arcs.purse.length);
    this.paidSoFar = new Float64Array(dues);
    this.cost = new Float64Array(dues);
    this.matched = new Float64Array(this.arcs.match.reduce((a, b) => Math.max(a, b + 1), 0));
    this.cameBy = new Int32Array(dues);
    this.takenFor = new Int32Array(dues);
    this.reached = new Int32Array(dues);
    this.queue = new Int32Array(dues);
    this.emptied = new Int32Array(tables.purses.length);
    this.isTouched = new Uint8Array(dues);
  }

  touch(due: number): void {
    if (this.isTouched[due]) return;
    this.isTouched[due] = 1;
    this.touched.push(due);
  }

  paid(costs: Float64Array): boolean {
    this.owe(costs);
    for (const due of this.touched) if (!this.payDue(due)) return false;
    for (const due of this.touched) this.isTouched[due] = 0;
    this.touched.length = 0;
    return true;
  }

  mayPay(costs: Float64Array, more: Amounts): boolean {
    return !this.shortages.has(costs, more);
  }

  payable(costs: Float64Array): Float64Array {
    for (let due = 0; due < costs.length; due++) this.touch(due);
    this.owe(costs);
    for (const due of this.touched) this.payDue(due);
    return Float64Array.from(this.paidSoFar);
  }

  private owe(costs: Float64Array): void {
    for (const due of this.touched) {
      const cost = costs[due] ?? 0;
      if (cost < (this.cost[due] ?? 0)) this.lower(due, cost);
      else this.cost[due] = cost;
    }
  }

  /** Pays one due as far as it can be; false where something of it stays open. */
  private payDue(due: number): boolean {
    while ((this.paidSoFar[due] ?? 0) < (this.cost[due] ?? 0)) {
      if (!this.payMore(due)) return false;
    }
    return true;
  }

  private lower(due: number, cost: number): void {
    this.cost[due] = cost;
    const first = this.arcs.dueStarts[due] ?? 0;
    const end = this.arcs.dueStarts[due + 1] ?? 0;
    for (let arc = first; arc < end; arc++) {
      const over = Math.min(this.flow[arc] ?? 0, -this.room(arc, -1));
      if (over > 0) this.giveBack(arc, over);
    }
    for (let arc = end - 1; arc >= first; arc--) {
      const over = (this.paidSoFar[due] ?? 0) - cost;
      if (over <= 0) return;
      this.giveBack(arc, Math.min(over, this.flow[arc] ?? 0));
    }
  }

  /**
   * How much more an arc may pay, below 0 where it pays too much. Where another arc of the same
   * matching fund and due pays less for it, what the fund pays of the due stays as it is.
   */
  private room(arc: number, takes: number): number {
    const cost = this.cost[this.arcs.due[arc] ?? 0] ?? 0;
    const match = this.arcs.match[arc] ?? -1;
    if (match < 0) return cost - (this.flow[arc] ?? 0);
    if (takes >= 0 && this.arcs.match[takes] === match) return this.flow[takes] ?? 0;
    return Math.floor(cost * (this.arcs.share[arc] ?? 0)) - (this.matched[match] ?? 0);
  }

  private giveBack(arc: number, amount: number): void {
    this.change(arc, -amount);
    const purse = this.arcs.purse[arc] ?? 0;
    this.left[purse] = (this.left[purse] ?? 0) + amount;
    const due = this.arcs.due[arc] ?? 0;
    this.paidSoFar[due] = (this.paidSoFar[due] ?? 0) - amount;
  }

  private change(arc: number, by: number): void {
    this.flow[arc] = (this.flow[arc] ?? 0) + by;
    const match = this.arcs.match[arc] ?? -1;
    if (match >= 0) this.matched[match] = (this.matched[match] ?? 0) + by;
  }

  /** Pays more of a due by the shortest way there is; false where there is none. */
  private payMore(due: number): boolean {
    this.search += 1;
    this.reached[due] = this.search;
    this.cameBy[due] = -1;
    this.queue[0] = due;
    let queued = 1;
    for (let q = 0; q < queued; q++) {
      const at = this.queue[q] ?? 0;
      const end = this.arcs.dueStarts[at + 1] ?? 0;
      for (let arc = this.arcs.dueStarts[at] ?? 0; arc < end; arc++) {
        if (this.room(arc, this.cameBy[at] ?? -1) <= 0) continue;
        const purse = this.arcs.purse[arc] ?? 0;
        if (this.emptied[purse] === this.search) continue;
        if ((this.left[purse] ?? 0) > 0) {
          this.payAlong({ due, arc, purse });
          return true;
        }
        this.emptied[purse] = this.search;
        queued = this.reachFrom(arc, queued);
      }
    }
    this.shortages.learn(this.cost, this.queue.subarray(0, queued));
    return false;
  }

  /** Adds to the queue every due that holds money of the purse of an arc and was not reached yet. */
  private reachFrom(arc: number, queued: number): number {
    const { purseStarts, byPurse, due } = this.arcs;
    const purse = this.arcs.purse[arc] ?? 0;
    const end = purseStarts[purse + 1] ?? 0;
    let count = queued;
    for (let i = purseStarts[purse] ?? 0; i < end; i++) {
      const other = byPurse[i] ?? 0;
      const next = due[other] ?? 0;
      if ((this.flow[other] ?? 0) <= 0 || this.reached[next] === this.search) continue;
      this.reached[next] = this.search;
      this.cameBy[next] = other;
      this.takenFor[next] = arc;
      this.queue[count++] = next;
    }
    return count;
  }

  private payAlong(to: { due: number; arc: number; purse: number }): void {
    const due = to.due;
    let amount = (this.cost[due] ?? 0) - (this.paidSoFar[due] ?? 0);
    amount = Math.min(amount, this.left[to.purse] ?? 0);
    this.walk(to.arc, (gives, takes) => {
      amount = Math.min(amount, this.room(gives, takes));
      if (takes >= 0) amount = Math.min(amount, this.flow[takes] ?? 0);
    });
    this.walk(to.arc, (gives, takes) => {
      this.change(gives, amount);
      if (takes >= 0) this.change(takes, -amount);
    });
    this.left[to.purse] = (this.left[to.purse] ?? 0) - amount;
    this.paidSoFar[due] = (this.paidSoFar[due] ?? 0) + amount;
  }

  /** Visits a way of paying from its purse back to the due: arcs that pay more, and arcs that pay less. */
  private walk(lastArc: number, visit: (gives: number, takes: number) => void): void {
    for (let gives = lastArc; ;) {
      const at = this.arcs.due[gives] ?? 0;
      const takes = this.cameBy[at] ?? -1;
      visit(gives, takes);
      if (takes < 0) return;
      gives = this.takenFor[at] ?? 0;
    }
  }
}
