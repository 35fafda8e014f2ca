import { plannedYears } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Decisions } from '#domain/plan.js';
import { mostMatched } from '#estimating/cost/matching.js';
import { moneyNeeds } from '#estimating/plan-needs/money-needs.js';
import type { CampusCharges } from '#estimating/site-charges/campus-charges.js';
import { payFronted } from '#optimizer/allocate/fronted.js';
import { FlowNetwork } from '#optimizer/allocate/max-flow.js';
import { duesOf, paymentsOf } from '#optimizer/allocate/money.js';
import type { Payments } from '#optimizer/allocate/payment-network.js';

/** The first year whose costs cannot all be paid, with what is missing in it. */
export interface UnpaidYear {
  readonly yearIndex: number;
  /** Cents, above 0. */
  readonly amount: number;
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
  const payments = paymentsOf(campus, duesOf(campus, moneyNeeds(campus, decisions, charges)));
  const years = plannedYears(campus.calendar);
  return payments.frontings.length > 0
    ? firstWithFronted(payments, years)
    : firstByFlow(payments, years);
}

function firstByFlow(payments: Payments, years: number): UnpaidYear | undefined {
  const { flow, edges } = layOut(payments);
  for (let yearIndex = 0; yearIndex < years; yearIndex++) {
    const ofYear = payments.bills.flatMap((bill, b) =>
      bill.yearIndex === yearIndex ? [{ bill, b }] : [],
    );
    for (const { bill, b } of ofYear) flow.widen(edges[b] ?? 0, bill.amount);
    flow.send(1, 0);
    const amount = ofYear.reduce((sum, { b }) => sum + flow.roomLeft(edges[b] ?? 0), 0);
    if (amount > 0) return { yearIndex, amount };
  }
  return undefined;
}

/** What may be paid up to a year may be paid up to any earlier one, so the first that may not is halved in on. */
function firstWithFronted(payments: Payments, years: number): UnpaidYear | undefined {
  const short = (through: number) => {
    const bills = payments.bills.filter(({ yearIndex }) => yearIndex <= through);
    const missing = payFronted({ ...payments, bills }).missing();
    return missing.reduce((sum, { amount }) => sum + amount, 0);
  };
  if (short(years - 1) === 0) return undefined;
  let paid = -1;
  let unpaid = years - 1;
  while (unpaid - paid > 1) {
    const middle = Math.floor((paid + unpaid) / 2);
    if (short(middle) === 0) paid = middle;
    else unpaid = middle;
  }
  return { yearIndex: unpaid, amount: short(unpaid) };
}

/** 1 -> bill (opened year by year) -> purse (or its matching share) -> 0: bills send, so paid ones stay so. */
function layOut({ purses, bills }: Payments) {
  const firstPurse = 2 + bills.length;
  const flow = new FlowNetwork(firstPurse + purses.length);
  const edges = bills.map((_, b) => flow.addEdge(1, 2 + b, 0));
  purses.forEach((purse, p) => {
    flow.addEdge(firstPurse + p, 0, purse.amount);
    bills.forEach((bill, b) => {
      if (bill.yearIndex < purse.first || bill.yearIndex > purse.last) return;
      if (!bill.payers.has(p)) return;
      if (purse.fund.matchRatio === undefined) {
        flow.addEdge(2 + b, firstPurse + p, purse.amount);
        return;
      }
      const share = flow.addNode();
      flow.addEdge(2 + b, share, mostMatched(purse.fund, bill.amount));
      flow.addEdge(share, firstPurse + p, purse.amount);
    });
  });
  return { flow, edges };
}
