/**
 * Published knapsacks as campuses, through the path of a user's file: two resources are the capital and
 * the compost of one year. Sources: Lorie and Savage 1955 and the OR-Library, in tests/support/knapsacks;
 * for one resource, the exact dynamic program below.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import fc from 'fast-check';
import type { Solver } from '#mip/solver.js';
import { checkPlan } from '#rules/check-plan.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { knapsackCampus, profitOf } from '../support/knapsacks/knapsack-campus.js';
import {
  LORIE_SAVAGE,
  LORIE_SAVAGE_KNAPSACK,
  OR_LIBRARY,
  type Knapsack,
} from '../support/knapsacks/knapsacks.js';
import { solveHere } from '../support/solve-here.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

interface Solved {
  readonly profit: number;
  readonly benefit: number;
  readonly sites: readonly string[];
}

/** Solves a knapsack as a campus; the plan is proven and keeps every rule. */
function solveAsCampus(problem: Knapsack): Solved {
  const campus = knapsackCampus(problem);
  const { report, plan } = solveHere(campus, solver);
  expect(report.ending).toBe('proven');
  expect(plan && checkPlan(campus, plan)).toEqual([]);
  const sites = plan?.decisions.placements.map((p) => p.site) ?? [];
  const benefit = report.tiers.find((t) => t.name === 'benefit')?.value ?? NaN;
  return { profit: profitOf(problem, sites), benefit, sites };
}

const TWO_RESOURCES = OR_LIBRARY.filter(({ capacities }) => capacities.length === 2);

test('the OR-Library problems of two resources are all here', () => {
  expect(TWO_RESOURCES.map(({ name }) => name)).toEqual(
    [1, 2, 3, 4, 5, 6, 7, 8].map((n) => `WEING${n}`),
  );
});

describe.each([LORIE_SAVAGE_KNAPSACK, ...TWO_RESOURCES])('$name as a campus', (problem) => {
  test('the plan reaches the published optimum', () => {
    const { profit, benefit } = solveAsCampus(problem);
    expect(profit).toBe(problem.published);
    expect(benefit).toBeCloseTo(problem.published, 3);
  });
});

test('Lorie-Savage: the sites of projects 1, 3, 4, 6 and 9 are built', () => {
  const { sites } = solveAsCampus(LORIE_SAVAGE_KNAPSACK);
  expect([...sites].sort()).toEqual(LORIE_SAVAGE.ip_selection.map((n) => `I${n}`));
});

/** Most profit for each amount of one resource, item by item (Bellman 1957). */
function bestByDynamicProgram({ profits, constraints, capacities }: Knapsack): number {
  const best = new Array<number>((capacities[0] ?? 0) + 1).fill(0);
  profits.forEach((profit, item) => {
    const takes = constraints[0]?.[item] ?? 0;
    for (let left = best.length - 1; left >= takes; left--) {
      best[left] = Math.max(best[left] ?? 0, (best[left - takes] ?? 0) + profit);
    }
  });
  return best.at(-1) ?? 0;
}

const oneFund: fc.Arbitrary<Knapsack> = fc
  .array(
    fc.record({ profit: fc.integer({ min: 1, max: 500 }), takes: fc.integer({ min: 1, max: 60 }) }),
    {
      minLength: 1,
      maxLength: 14,
    },
  )
  .chain((items) =>
    fc.integer({ min: 0, max: 250 }).map((capacity) => ({
      name: 'one fund, one season',
      profits: items.map(({ profit }) => profit),
      constraints: [items.map(({ takes }) => takes)],
      capacities: [capacity],
    })),
  );

test('one fund and one season: as good as an exact dynamic program', () => {
  fc.assert(
    fc.property(oneFund, (problem) => {
      expect(solveAsCampus(problem).profit).toBe(bestByDynamicProgram(problem));
    }),
    { numRuns: 40 },
  );
});
