import { frontingsIn, payersOf } from '#rules/funds/sinks.js';
import { payFronted } from '../allocate/fronted.js';
import type { Bill } from '../allocate/payment-network.js';
import { keptFlow, type MoneyTest } from './money-test.js';
import type { Tables } from './tables.js';

/**
 * Tells whether costs by sink and year can be paid, with money that is fronted for reimbursable grants
 * where it takes that. Most costs are judged without, as that is much sooner known.
 */
export function moneyTest(tables: Tables, kept: MoneyTest = keptFlow(tables)): MoneyTest {
  return tables.frontings.length === 0 ? kept : withFronted(tables, kept);
}

function withFronted({ purses, frontings, sinkKeys, years }: Tables, kept: MoneyTest): MoneyTest {
  const sinks = sinkKeys.map((key) => ({
    payers: new Set(payersOf(key)),
    frontings: frontingsIn(key),
  }));
  const order = purses
    .map((_, i) => i)
    .sort((a, b) => (purses[a]?.last ?? 0) - (purses[b]?.last ?? 0));
  const billsOf = (costs: Float64Array): Bill[] =>
    [...costs].flatMap((amount, due) => {
      const sink = sinks[Math.floor(due / years)];
      return amount > 0 && sink ? [{ ...sink, amount, yearIndex: due % years }] : [];
    });
  return {
    touch: (due) => kept.touch(due),
    // What purses lack may be fronted.
    mayPay: () => true,
    paid: (costs) =>
      kept.paid(costs) || payFronted({ purses, frontings, order, bills: billsOf(costs) }).isPaid(),
  };
}
