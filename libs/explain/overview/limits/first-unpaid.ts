import { plannedYears } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { CostLine } from '#domain/money.js';
import type { Decisions } from '#domain/plan.js';
import { moneyNeeds, type MoneyNeeds } from '#estimating/plan-needs/money-needs.js';
import { mayPay, pursesOf, type Purse } from '#estimating/purses/purses.js';
import type { CampusCharges } from '#estimating/site-charges/campus-charges.js';
import { FlowNetwork } from '#optimizer/allocate/max-flow.js';

/** The first year whose costs cannot all be paid, with what is missing in it. */
export interface UnpaidYear {
  readonly yearIndex: number;
  /** Cents, above 0. */
  readonly amount: number;
}

interface Due {
  readonly line: CostLine;
  readonly yearIndex: number;
  readonly amount: number;
  readonly site?: string;
  readonly buildType?: string;
}

/**
 * Pays the costs of one year after the other with what the counted funds hold, each time by a largest
 * flow that leaves paid what is paid; so the first year that stays short could not have been paid
 * whatever was paid before. `undefined`: all years are paid.
 */
export function firstUnpaid(
  campus: Campus,
  decisions: Decisions,
  charges: CampusCharges,
): UnpaidYear | undefined {
  const dues = duesOf(campus, moneyNeeds(campus, decisions, charges));
  const { flow, edges } = layOut(pursesOf(campus), dues);
  for (let yearIndex = 0; yearIndex < plannedYears(campus.calendar); yearIndex++) {
    const ofYear = dues.flatMap((due, d) => (due.yearIndex === yearIndex ? [{ due, d }] : []));
    for (const { due, d } of ofYear) flow.widen(edges[d] ?? 0, due.amount);
    flow.send(1, 0);
    const amount = ofYear.reduce((sum, { d }) => sum + flow.roomLeft(edges[d] ?? 0), 0);
    if (amount > 0) return { yearIndex, amount };
  }
  return undefined;
}

function duesOf(campus: Campus, needs: MoneyNeeds): Due[] {
  const years = Array.from({ length: plannedYears(campus.calendar) }, (_, y) => y);
  return [
    ...needs.build.map((cost) => ({ line: 'build' as const, ...cost })),
    ...needs.care.map((cost) => ({ line: 'care' as const, ...cost })),
    ...(['positions', 'compost', 'standing'] as const).flatMap((line) =>
      years.map((yearIndex) => ({ line, yearIndex, amount: needs[line][yearIndex] ?? 0 })),
    ),
  ].filter(({ amount }) => amount > 0);
}

/** 1 -> due (opened year by year) -> purse (or its matching share) -> 0: dues send, so paid ones stay so. */
function layOut(purses: readonly Purse[], dues: readonly Due[]) {
  const matching = purses.filter(({ fund }) => fund.matchRatio !== undefined).length;
  const firstPurse = 2 + dues.length;
  let spare = firstPurse + purses.length;
  const flow = new FlowNetwork(spare + matching * dues.length);
  const edges = dues.map((_, d) => flow.addEdge(1, 2 + d, 0));
  purses.forEach((purse, p) => {
    flow.addEdge(firstPurse + p, 0, purse.amount);
    dues.forEach((due, d) => {
      if (due.yearIndex < purse.first || due.yearIndex > purse.last) return;
      if (!mayPay(purse.restriction, due)) return;
      const share = matchedShare(purse, due);
      if (share === undefined) flow.addEdge(2 + d, firstPurse + p, purse.amount);
      else {
        flow.addEdge(2 + d, spare, share);
        flow.addEdge(spare++, firstPurse + p, purse.amount);
      }
    });
  });
  return { flow, edges };
}

/** Most that matching money may pay of a cost: ratio / (1 + ratio) of it. */
function matchedShare({ fund: { matchRatio } }: Purse, { amount }: Due): number | undefined {
  return matchRatio === undefined
    ? undefined
    : Math.floor((amount * matchRatio) / (1 + matchRatio));
}
