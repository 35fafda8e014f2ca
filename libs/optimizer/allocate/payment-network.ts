import { mostMatched } from '#estimating/cost/matching.js';
import type { Fronting } from '#estimating/purses/frontings.js';
import type { Purse } from '#estimating/purses/purses.js';
import { FlowNetwork } from './max-flow.js';

/** A cost of one year that is paid as a whole, with who may pay it: places of purses and frontings. */
export interface Bill {
  readonly yearIndex: number;
  /** Cents. */
  readonly amount: number;
  readonly payers: ReadonlySet<number>;
  readonly frontings: readonly number[];
}

/** All that is to be paid and the money there is for it. */
export interface Payments {
  readonly purses: readonly Purse[];
  readonly frontings: readonly Fronting[];
  readonly bills: readonly Bill[];
  /** Places of the purses in the order in which they are opened: what one has paid stays paid. */
  readonly order: readonly number[];
}

/** Money that a purse does without from the year in which it fronts it until it is paid back. */
export interface Parking {
  readonly fronting: number;
  readonly yearIndex: number;
  /** Cents. */
  readonly amount: number;
}

/** Cents that a purse pays of a bill, paid back by a fronting or not. */
export interface Paid {
  readonly bill: number;
  readonly purse: number;
  readonly fronting?: number;
  readonly amount: number;
}

interface Link {
  readonly edge: number;
  readonly bill: number;
  readonly purse: number;
  readonly fronting?: number;
}

/** More than any campus spends, in cents, and so whole that sums stay exact. */
const NO_LIMIT = 2 ** 50;
const SOURCE = 0;
const SINK = 1;

/**
 * source -> purse -> (matching cap) -> bill -> sink.
 *
 * What is parked is fixed before, so that all stays a flow: a purse that fronts is a chain of years, what
 * it parks leaves it for the sink and comes in again after the lag, and the grant pays the bill meanwhile.
 */
export class PaymentNetwork {
  private readonly flow: FlowNetwork;
  private readonly billEdges: number[];
  private readonly links: Link[] = [];
  private readonly opened: { edge: number; amount: number }[][];
  private readonly caps = new Map<string, number>();
  /** Of each parking: the node of the grant, of the purse as it fronts, and of the purse as it is paid back. */
  private readonly stops: { grant: number; out: number; back: number; outEdge: number }[] = [];
  private paid = 0;

  constructor(
    private readonly of: Payments,
    private readonly parked: readonly Parking[],
  ) {
    this.flow = new FlowNetwork(2 + of.bills.length);
    this.billEdges = of.bills.map(({ amount }, b) => this.flow.addEdge(2 + b, SINK, amount));
    this.opened = of.order.map((purse) => this.addPurse(purse));
    this.opened.unshift(this.addGrants());
  }

  /** Opens the money, grants first: what an earlier one has paid stays paid. */
  settle(): this {
    for (const edges of this.opened) {
      for (const { edge, amount } of edges) this.flow.widen(edge, amount);
      this.paid += this.flow.send(SOURCE, SINK);
    }
    return this;
  }

  /** Cents that are missing, by the year in which they are: for bills, and for what is parked. */
  missing(): { yearIndex: number; amount: number }[] {
    const at = (yearIndex: number, edge: number) => ({
      yearIndex,
      amount: this.flow.roomLeft(edge),
    });
    return [
      ...this.of.bills.map(({ yearIndex }, b) => at(yearIndex, this.billEdges[b] ?? 0)),
      ...this.parked.map(({ yearIndex }, i) => at(yearIndex, this.stops[i]?.outEdge ?? 0)),
    ].filter(({ amount }) => amount > 0);
  }

  isPaid(): boolean {
    return this.missing().length === 0;
  }

  payments(): Paid[] {
    return this.links
      .map(({ edge, ...link }) => ({ ...link, amount: this.flow.flow(edge) }))
      .filter(({ amount }) => amount > 0);
  }

  /**
   * What must hold of the amounts parked for all to be paid, from a smallest cut (Ford and Fulkerson
   * 1956): sum of `weights` x amounts >= `atLeast`. Broken by those of this network unless all is paid.
   */
  cut(): { weights: number[]; atLeast: number } {
    const level = this.flow.levels(SOURCE);
    const isCut = (node: number) => ((level[node] ?? -1) < 0 ? 1 : 0);
    const uses = this.stops.map(
      ({ grant, out, back }) => isCut(grant) + isCut(back) + 1 - isCut(out),
    );
    const bills = this.of.bills.reduce((sum, { amount }) => sum + amount, 0);
    const fixed = uses.reduce(
      (sum, use, i) => sum - use * (this.parked[i]?.amount ?? 0),
      this.paid,
    );
    return { weights: uses.map((use) => use - 1), atLeast: bills - fixed };
  }

  /** A purse as one node, or as a chain of years where it parks money. */
  private addPurse(index: number): { edge: number; amount: number }[] {
    const purse = this.of.purses[index];
    if (!purse) throw new RangeError(`no purse at ${index}`);
    const parked = this.parked.flatMap((parking, i) => {
      const fronting = this.of.frontings[parking.fronting];
      return fronting?.purse === index ? [{ i, lag: fronting.lag, ...parking }] : [];
    });
    const nodeAt = parked.length === 0 ? this.single() : this.chain(purse);
    const opened = [
      { edge: this.flow.addEdge(SOURCE, nodeAt(purse.first), 0), amount: purse.amount },
    ];
    for (const { i, yearIndex, lag, amount } of parked) {
      const [out, back] = [nodeAt(yearIndex), nodeAt(yearIndex + lag)];
      const outEdge = this.flow.addEdge(out, SINK, amount);
      opened.push({ edge: this.flow.addEdge(SOURCE, back, 0), amount });
      this.stops[i] = { grant: -1, out, back, outEdge };
    }
    this.linkToBills({ purse: index }, nodeAt);
    return opened;
  }

  private single(): (year: number) => number {
    const node = this.flow.addNode();
    return () => node;
  }

  private chain({ first, last }: Purse): (year: number) => number {
    const nodes = Array.from({ length: last - first + 1 }, () => this.flow.addNode());
    nodes.slice(1).forEach((node, i) => this.flow.addEdge(nodes[i] ?? 0, node, NO_LIMIT));
    return (year) => nodes[year - first] ?? 0;
  }

  private addGrants(): { edge: number; amount: number }[] {
    return this.parked.map(({ fronting, yearIndex, amount }, i) => {
      const node = this.flow.addNode();
      const purse = this.of.frontings[fronting]?.purse ?? 0;
      const stop = this.stops[i];
      if (stop) this.stops[i] = { ...stop, grant: node };
      this.linkToBills({ purse, fronting, yearIndex }, () => node);
      return { edge: this.flow.addEdge(SOURCE, node, 0), amount };
    });
  }

  private linkToBills(
    by: { readonly purse: number; readonly fronting?: number; readonly yearIndex?: number },
    nodeAt: (year: number) => number,
  ): void {
    const { purse, fronting, yearIndex } = by;
    const { first = 0, last = -1, fund, amount = 0 } = this.of.purses[purse] ?? {};
    const grant = fronting === undefined ? fund : this.of.frontings[fronting]?.grant;
    const capped = fronting !== undefined || fund?.matchRatio !== undefined;
    this.of.bills.forEach((bill, b) => {
      if (bill.yearIndex < first || bill.yearIndex > last) return;
      if (yearIndex !== undefined && bill.yearIndex !== yearIndex) return;
      const may =
        fronting === undefined ? bill.payers.has(purse) : bill.frontings.includes(fronting);
      if (!may) return;
      const to = capped && grant ? this.capNode(grant, b) : 2 + b;
      const edge = this.flow.addEdge(
        nodeAt(bill.yearIndex),
        to,
        fronting === undefined ? amount : NO_LIMIT,
      );
      this.links.push({ edge, bill: b, purse, ...(fronting === undefined ? {} : { fronting }) });
    });
  }

  /** Money of one matching fund reaches a cost through one node that lets no more than its share pass. */
  private capNode(grant: Purse['fund'], b: number): number {
    const key = `${grant.id} ${b}`;
    const found = this.caps.get(key);
    if (found !== undefined) return found;
    const node = this.flow.addNode();
    this.flow.addEdge(node, 2 + b, mostMatched(grant, this.of.bills[b]?.amount ?? 0));
    this.caps.set(key, node);
    return node;
  }
}
