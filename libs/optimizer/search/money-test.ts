import { payersOf } from '#rules/funds/sinks.js';
import type { Tables } from './tables.js';

/**
 * Tells whether costs by sink and year can be paid. It keeps how the last costs were paid, and works
 * only on what has changed since, so that thousands of small changes a second can be judged.
 */
export interface MoneyTest {
  /** True where every cost can be paid; `costs` holds cents at [sink x years + year]. */
  paid(costs: Float64Array): boolean;
}

/**
 * A largest flow from purses to dues (costs of one sink in one year), kept from call to call. A cost
 * that falls gives money back; one that rises is paid along augmenting paths (Ford and Fulkerson 1956),
 * which find a way of paying where there is one, whatever was paid how before. Whole cents throughout.
 */
export function moneyTest(tables: Tables): MoneyTest {
  return new KeptFlow(tables);
}

/** Dues by purse, as flat lists: the arcs of one purse, or of one due, lie side by side. */
interface Arcs {
  readonly purse: Int32Array;
  readonly due: Int32Array;
  /** Share of a due that this purse may pay at most: below 1 for matching money. */
  readonly share: Float64Array;
  readonly dueStarts: Int32Array;
  readonly purseStarts: Int32Array;
  /** Arc numbers in the order of `purseStarts`. */
  readonly byPurse: Int32Array;
}

class KeptFlow implements MoneyTest {
  private readonly arcs: Arcs;
  private readonly flow: Float64Array;
  private readonly left: Float64Array;
  private readonly paidSoFar: Float64Array;
  private readonly cost: Float64Array;
  /** For each due reached: the arc that would pay it less, and the arc that would pay another more. */
  private readonly cameBy: Int32Array;
  private readonly takenFor: Int32Array;
  private readonly reached: Int32Array;
  private readonly queue: Int32Array;
  private search = 0;

  constructor(tables: Tables) {
    this.arcs = layOut(tables);
    this.left = Float64Array.from(tables.purses, (p) => p.amount);
    const dues = tables.sinkKeys.length * tables.years;
    this.flow = new Float64Array(this.arcs.purse.length);
    this.paidSoFar = new Float64Array(dues);
    this.cost = new Float64Array(dues);
    this.cameBy = new Int32Array(dues);
    this.takenFor = new Int32Array(dues);
    this.reached = new Int32Array(dues);
    this.queue = new Int32Array(dues);
  }

  paid(costs: Float64Array): boolean {
    for (let due = 0; due < costs.length; due++) {
      const cost = costs[due] ?? 0;
      if (cost < (this.cost[due] ?? 0)) this.lower(due, cost);
      else this.cost[due] = cost;
    }
    for (let due = 0; due < costs.length; due++) {
      while ((this.paidSoFar[due] ?? 0) < (this.cost[due] ?? 0)) {
        if (!this.payMore(due)) return false;
      }
    }
    return true;
  }

  private lower(due: number, cost: number): void {
    this.cost[due] = cost;
    const first = this.arcs.dueStarts[due] ?? 0;
    const end = this.arcs.dueStarts[due + 1] ?? 0;
    for (let arc = first; arc < end; arc++) {
      const over = (this.flow[arc] ?? 0) - this.most(arc);
      if (over > 0) this.giveBack(arc, over);
    }
    for (let arc = end - 1; arc >= first; arc--) {
      const over = (this.paidSoFar[due] ?? 0) - cost;
      if (over <= 0) return;
      this.giveBack(arc, Math.min(over, this.flow[arc] ?? 0));
    }
  }

  private most(arc: number): number {
    const share = this.arcs.share[arc] ?? 1;
    const cost = this.cost[this.arcs.due[arc] ?? 0] ?? 0;
    return share === 1 ? cost : Math.floor(cost * share);
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
        const room = this.most(arc) - (this.flow[arc] ?? 0);
        if (room <= 0) continue;
        const purse = this.arcs.purse[arc] ?? 0;
        if ((this.left[purse] ?? 0) > 0) {
          this.payAlong({ due, arc, purse });
          return true;
        }
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
      amount = Math.min(amount, this.most(gives) - (this.flow[gives] ?? 0));
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

function layOut({ years, purses, sinkKeys }: Tables): Arcs {
  const arcs = sinkKeys.flatMap((key, k) => {
    const payers = payersOf(key).sort((a, b) => (purses[a]?.last ?? 0) - (purses[b]?.last ?? 0));
    return Array.from({ length: years }, (_, year) =>
      payers.flatMap((purse) => {
        const { first = 0, last = -1, fund } = purses[purse] ?? {};
        if (year < first || year > last) return [];
        const ratio = fund?.matchRatio;
        return [{ purse, due: k * years + year, share: ratio ? ratio / (1 + ratio) : 1 }];
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
