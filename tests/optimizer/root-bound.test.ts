/**
 * The root bound worked out again from its prices, in exact fractions. For any prices y and what they
 * leave of each column's worth, d = c - yA, no point of the model is worth more than
 *
 *     sum over rows of y x (the bound that y's sign asks for)  +  sum over columns of d x (likewise)
 *
 * (weak duality), so a bound made so cannot be too tight, whatever the solver's rounding.
 */
import { beforeAll, expect, test } from 'vitest';
import fc from 'fast-check';
import type { Model } from '#mip/model.js';
import type { Solver } from '#mip/solver.js';
import { campusModel } from '#optimizer/model/campus-model.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { exactBound } from '../support/mip/exact-bound.js';
import {
  knapsackModel,
  LORIE_SAVAGE_KNAPSACK,
  OR_LIBRARY,
} from '../support/knapsacks/knapsacks.js';
import { randomPrograms } from '../support/tiny/random-program.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

/** The bound in fractions, beside what the solver says of the relaxation and of whole numbers. */
function bounds(model: Model): { exact: number; relaxed: number; whole: number } | undefined {
  const relaxed = solver.solve(model, { limits: {}, seed: 1, relaxed: true });
  const whole = solver.solve(model, { limits: {}, seed: 1 });
  if (relaxed.kind !== 'optimal' || whole.kind !== 'optimal' || !relaxed.duals) return undefined;
  const exact = exactBound(model, relaxed.duals.rows);
  return { exact, relaxed: relaxed.objective, whole: whole.objective };
}

function expectRight(model: Model): boolean {
  const found = bounds(model);
  if (!found) return false;
  const near = 1e-6 * Math.max(1, Math.abs(found.relaxed));
  expect(Math.abs(found.exact - found.relaxed)).toBeLessThan(near);
  expect(found.exact).toBeGreaterThanOrEqual(found.whole - 1e-6 * Math.max(1, found.whole));
  return true;
}

test('knapsacks', () => {
  for (const problem of [LORIE_SAVAGE_KNAPSACK, ...OR_LIBRARY.slice(0, 7)]) {
    expect(expectRight(knapsackModel(problem)), problem.name).toBe(true);
  }
});

test('tiny programs, for benefit with all care served', () => {
  let judged = 0;
  fc.assert(
    fc.property(randomPrograms, (campus) => {
      const { model } = campusModel(campus, 'benefit', new Map([['unserved-total', 0]]));
      if (expectRight(model)) judged += 1;
    }),
    { numRuns: 40 },
  );
  expect(judged).toBeGreaterThan(5);
});
