import { matchShare } from '#estimating/cost/matching.js';
import { payersOf } from '#rules/funds/sinks.js';
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
}

/** The same where no money is fronted, with what can be paid where not all can be. */
export interface KeptMoney extends MoneyTest {
  /** What can be paid of each cost, by the same places. */
  payable(costs: Float64Array): Float64Array;
}

/** Who may pay what, laid out once for campuses that differ in amounts and costs only. */
export type MoneyLayout = Arcs;

/**
 * A largest flow from purses to dues (costs of one sink in one year), kept from call to call. A cost
 * that falls gives money back; one that rises is paid along augmenting paths (Ford and Fulkerson 1956),
 * which find a way of paying where there is one, whatever was paid how before. Whole cents throughout.
 */
export function keptFlow(tables: Tables, layout: MoneyLayout = moneyLayout(tables)): KeptMoney {
  return new KeptFlow(tables, layout);
}

/** Dues by purse, as flat lists: the arcs of one purse, or of one due, lie side by side. */
interface Arcs {
  readonly purse: Int32Array;
  readonly due: Int32Array;
  /** Share of a due that the fund of this purse may pay at most: below 1 for matching money. */
  readonly share: Float64Array;
  /** Number of the matching fund and due together, which share one limit; -1 for other money. */
  readonly match: Int32Array;
  readonly dueStarts: Int32Array;
  readonly purseStarts: Int32Array;
  /** Arc numbers in the order of `purseStarts`. */
  readonly byPurse: Int32Array;
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

  constructor(
    tables: Tables,
    private readonly arcs: Arcs,
  ) {
    this.left = Float64Array.from(tables.purses, (p) => p.amount);
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

export function moneyLayout({ years, purses, sinkKeys }: Tables): MoneyLayout {
  const matches = new Map<string, number>();
  const matchOf = (fund: string, due: number): number => {
    const key = `${fund} ${due}`;
    const found = matches.get(key) ?? matches.size;
    matches.set(key, found);
    return found;
  };
  const arcs = sinkKeys.flatMap((key, k) => {
    const payers = payersOf(key).sort((a, b) => (purses[a]?.last ?? 0) - (purses[b]?.last ?? 0));
    return Array.from({ length: years }, (_, year) =>
      payers.flatMap((purse) => {
        const { first = 0, last = -1, fund } = purses[purse] ?? {};
        if (year < first || year > last) return [];
        const due = k * years + year;
        if (fund?.matchRatio === undefined) return [{ purse, due, share: 1, match: -1 }];
        return [{ purse, due, share: matchShare(fund), match: matchOf(fund.id, due) }];
      }),
    ).flat();
  });
  const byPurse = Int32Array.from(arcs.keys()).sort(
    (a, b) => (arcs[a]?.purse ?? 0) - (arcs[b]?.purse ?? 0) || a - b,
  );
  return {
    purse: Int32Array.from(arcs, (a) => a.purse),
    due: Int32Array.from(arcs, (a) => a.due),
    share: Float64Array.from(arcs, (a) => a.share),
    match: Int32Array.from(arcs, (a) => a.match),
    dueStarts: startsOf(
      arcs.map((a) => a.due),
      sinkKeys.length * years,
    ),
    purseStarts: startsOf(
      Array.from(byPurse, (a) => arcs[a]?.purse ?? 0),
      purses.length,
    ),
    byPurse,
  };
}

/** Where each group begins in a list sorted by group; one more entry for the end. */
function startsOf(groups: readonly number[], count: number): Int32Array {
  const starts = new Int32Array(count + 1);
  for (const g of groups) starts[g + 1] = (starts[g + 1] ?? 0) + 1;
  for (let g = 0; g < count; g++) starts[g + 1] = (starts[g + 1] ?? 0) + (starts[g] ?? 0);
  return starts;
}
