/** Shortages of money that a search remembers: they rule out nothing that can be paid, and do rule out. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { groundOf } from '#optimizer/columns/ground-of.js';
import { moneyTest } from '#optimizer/search/fronted-test.js';
import { addAmounts, type Amounts } from '#optimizer/search/life-charges.js';
import { applyLife, emptyState, type SearchState } from '#optimizer/search/state.js';
import { tablesOf } from '#optimizer/search/tables.js';
import { cents } from '#units/cents.js';
import { grantedCampus } from '../support/tiny/granted.js';
import { randomPrograms } from '../support/tiny/random-program.js';

/** With so little money that many lives fail for it. */
const poorPrograms = fc
  .tuple(
    fc.oneof(randomPrograms, fc.constant(grantedCampus(1))),
    fc.double({ min: 0.05, max: 1, noNaN: true }),
  )
  .map(([campus, share]) => ({
    ...campus,
    funds: campus.funds.map((fund) => ({
      ...fund,
      inflows: fund.inflows.map((i) => ({ ...i, amount: cents(Math.floor(i.amount * share)) })),
    })),
  }));

function scaled({ at, amounts }: Amounts, share: number): Amounts {
  return { at, amounts: amounts.map((a) => Math.floor(a * share)) };
}

function paidAnew(state: SearchState, more: Amounts): boolean {
  const costs = Float64Array.from(state.costs);
  addAmounts(costs, more, 1);
  const money = moneyTest(state.tables);
  for (let due = 0; due < costs.length; due++) money.touch(due);
  return money.paid(costs);
}

test('what remembered shortages rule out, to the last cent, a look at all money anew rules out too', () => {
  const seen = { ruledOut: 0, passed: 0 };
  const expectRight = (state: SearchState, bills: Amounts) => {
    for (let share = 0.05; share < 1; share += 0.05) {
      const more = scaled(bills, share);
      if (state.money.mayPay(state.costs, more)) {
        seen.passed += 1;
        continue;
      }
      seen.ruledOut += 1;
      expect(paidAnew(state, more)).toBe(false);
    }
  };
  fc.assert(
    fc.property(poorPrograms, fc.array(fc.nat(400), { maxLength: 40 }), (campus, moves) => {
      const state = emptyState(tablesOf(groundOf(campus)));
      const { lifecycles } = state.tables.ground;
      for (const move of moves) {
        const life = lifecycles[move % Math.max(1, lifecycles.length)];
        if (!life) return;
        const isIn = state.lives.has(life);
        applyLife(state, life, isIn ? -1 : 1);
        if (isIn || state.money.paid(state.costs)) continue;
        applyLife(state, life, -1);
        expectRight(state, state.tables.chargesOf(life).bills);
      }
    }),
    { numRuns: 100 },
  );
  expect(seen.ruledOut).toBeGreaterThan(100);
  expect(seen.passed).toBeGreaterThan(100);
});
