import { plannedYears, yearAt } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { CostLine } from '#domain/money.js';
import type { Decisions, SpendEntry } from '#domain/plan.js';
import { moneyNeeds, type MoneyNeeds } from '#estimating/plan-needs/money-needs.js';
import { mayPay, pursesOf, type Purse } from '#estimating/purses/purses.js';
import type { CampusCharges } from '#estimating/site-charges/campus-charges.js';
import { cents } from '#units/cents.js';
import { FlowNetwork } from './max-flow.js';
import type { Shortage } from './shortage.js';

export interface MoneyAllocation {
  readonly spending: readonly SpendEntry[];
  readonly shortages: readonly Shortage[];
}

/** One cost of one year that is paid as a whole. */
interface Due {
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
  const needs = moneyNeeds(campus, decisions, charges);
  const network = new PaymentNetwork(campus, duesOf(campus, needs));
  const purses = pursesOf(campus).map((purse) => ({ purse, breadth: breadth(campus, purse) }));
  purses.sort(
    (a, b) => a.purse.last - b.purse.last || a.breadth - b.breadth || a.purse.first - b.purse.first,
  );
  for (const { purse } of purses) network.addPurse(purse);
  network.settle();
  return { spending: network.spending(), shortages: network.shortages() };
}

/** How many kinds of cost a purse may pay: the narrower, the sooner it is spent. */
function breadth(campus: Campus, { restriction }: Purse): number {
  const sites =
    restriction.sites === 'any' ? campus.candidates.length + 1 : restriction.sites.length;
  const types =
    restriction.buildTypes === 'any' ? campus.buildTypes.length + 1 : restriction.buildTypes.length;
  return restriction.lines.length * sites * types;
}

function duesOf(campus: Campus, needs: MoneyNeeds): Due[] {
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

/** source -> purse -> (matching cap) -> due -> sink. */
class PaymentNetwork {
  private readonly flow: FlowNetwork;
  private readonly dueEdges: number[];
  private readonly links: { purse: Purse; due: Due; edge: number }[] = [];
  private readonly purseEdges: { edge: number; amount: number }[] = [];
  private nextPurse: number;
  private readonly sink = 1;

  constructor(
    private readonly campus: Campus,
    private readonly dues: readonly Due[],
  ) {
    const spare = campus.funds.reduce((sum, f) => sum + f.inflows.length * 2, 0) + 2;
    const matched = campus.funds.filter((f) => f.matchRatio !== undefined).length;
    this.nextPurse = 2 + dues.length;
    this.flow = new FlowNetwork(this.nextPurse + spare + matched * dues.length);
    this.dueEdges = dues.map((due, d) => this.flow.addEdge(2 + d, this.sink, due.amount));
  }

  addPurse(purse: Purse): void {
    const node = this.nextPurse++;
    this.purseEdges.push({ edge: this.flow.addEdge(0, node, 0), amount: purse.amount });
    this.dues.forEach((due, d) => {
      if (due.yearIndex < purse.first || due.yearIndex > purse.last) return;
      if (!mayPay(purse.restriction, due)) return;
      const to = purse.fund.matchRatio === undefined ? 2 + d : this.capNode(purse, d);
      const edge = this.flow.addEdge(node, to, purse.amount);
      this.links.push({ purse, due, edge });
    });
  }

  private readonly caps = new Map<string, number>();

  /** Money of one matching fund reaches a cost through one node that lets no more than its share pass. */
  private capNode({ fund }: Purse, d: number): number {
    const key = `${fund.id} ${d}`;
    const found = this.caps.get(key);
    if (found !== undefined) return found;
    const ratio = fund.matchRatio ?? 0;
    const node = this.nextPurse++;
    const share = Math.floor(((this.dues[d]?.amount ?? 0) * ratio) / (1 + ratio));
    this.flow.addEdge(node, 2 + d, share);
    this.caps.set(key, node);
    return node;
  }

  /** Opens the purses one after the other: what an earlier one has paid stays paid. */
  settle(): void {
    for (const { edge, amount } of this.purseEdges) {
      this.flow.widen(edge, amount);
      this.flow.send(0, this.sink);
    }
  }

  spending(): SpendEntry[] {
    const entries = this.links
      .map(({ purse, due, edge }) => ({ purse, due, amount: this.flow.flow(edge) }))
      .filter(({ amount }) => amount > 0)
      .map(({ purse, due, amount }) => this.entry(purse, due, amount));
    return mergeEntries(entries);
  }

  private entry(purse: Purse, due: Due, amount: number): SpendEntry {
    const named = due.line === 'build' || (due.line === 'care' && isRestricted(purse));
    return {
      fund: purse.fund.id,
      inflow: purse.inflow,
      year: yearAt(this.campus.calendar, due.yearIndex),
      line: due.line,
      ...(named && due.site !== undefined ? { site: due.site } : {}),
      amount: cents(amount),
    };
  }

  shortages(): Shortage[] {
    return this.dues.flatMap((due, d) => {
      const amount = this.flow.roomLeft(this.dueEdges[d] ?? 0);
      return amount > 0 ? [{ resource: 'money' as const, at: due.yearIndex, amount }] : [];
    });
  }
}

/** One line for each purse, year, line and named site, in order of year. */
function mergeEntries(entries: readonly SpendEntry[]): SpendEntry[] {
  const merged = new Map<string, SpendEntry>();
  for (const entry of entries) {
    const key = [entry.year, entry.line, entry.site ?? '', entry.fund, entry.inflow].join('\u0000');
    const before = merged.get(key);
    merged.set(key, before ? { ...entry, amount: cents(before.amount + entry.amount) } : entry);
  }
  return [...merged].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, entry]) => entry);
}

function isRestricted({ restriction }: Purse): boolean {
  return restriction.sites !== 'any' || restriction.buildTypes !== 'any';
}
