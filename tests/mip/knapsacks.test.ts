/**
 * Outside checks of the solver port. Sources: Lorie and Savage 1955, J. Business 28(4):229-239, and the
 * OR-Library's multidimensional knapsacks; both stand in tests/support/knapsacks.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import loadGlpk, { type GLPK } from 'glpk.js/node';
import type { Solver } from '#mip/solver.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { glpkModel } from '../bench/peers/glpk-model.js';
import {
  knapsackModel,
  LORIE_SAVAGE,
  LORIE_SAVAGE_KNAPSACK,
  OR_LIBRARY,
} from '../support/knapsacks/knapsacks.js';

let solver: Solver;
let glpk: GLPK;
beforeAll(async () => {
  [solver, glpk] = await Promise.all([loadHighsSolver(), loadGlpk()]);
});

describe.each([LORIE_SAVAGE_KNAPSACK, ...OR_LIBRARY])('$name', (problem) => {
  test('whole items reach the published optimum, and fractions its bound', () => {
    const model = knapsackModel(problem);
    const whole = solver.solve(model, { limits: {}, seed: 1 });
    const relaxed = solver.solve(model, { limits: {}, seed: 1, relaxed: true });
    expect(whole.kind === 'optimal' && whole.objective).toBeCloseTo(problem.published, 6);
    expect(relaxed.kind === 'optimal' && relaxed.objective).toBeCloseTo(problem.relaxation, 3);
  });

  test('a second solver agrees', () => {
    const { result } = glpk.solve(glpkModel(glpk, knapsackModel(problem)), {
      msglev: glpk.GLP_MSG_OFF,
    });
    expect(result.z).toBeCloseTo(problem.published, 6);
  });
});

test('time that ran out before the solve began is none left, and no error', () => {
  const model = knapsackModel(LORIE_SAVAGE_KNAPSACK);
  const { kind } = solver.solve(model, { limits: { seconds: -0.01 }, seed: 1 });
  expect(['optimal', 'stopped', 'stopped-without-point']).toContain(kind);
});

test('Lorie-Savage: one dollar more is worth 3/22 in the first year and 41/22 in the second', () => {
  const model = knapsackModel(LORIE_SAVAGE_KNAPSACK);
  const relaxed = solver.solve(model, { limits: {}, seed: 1, relaxed: true });
  const prices = relaxed.kind === 'optimal' ? [...(relaxed.duals?.rows ?? [])] : [];
  expect(prices[0]).toBeCloseTo(3 / 22, 9);
  expect(prices[1]).toBeCloseTo(41 / 22, 9);
  expect(prices).toEqual(LORIE_SAVAGE.lp_budget_duals.map((p) => expect.closeTo(p, 9)));
});

test('Lorie-Savage: projects 1, 3, 4, 6 and 9 are chosen', () => {
  const whole = solver.solve(knapsackModel(LORIE_SAVAGE_KNAPSACK), { limits: {}, seed: 1 });
  const chosen = whole.kind === 'optimal' ? [...whole.values.entries()] : [];
  const names = chosen.filter(([, value]) => value > 0.5).map(([i]) => i + 1);
  expect(names).toEqual(LORIE_SAVAGE.ip_selection);
});
