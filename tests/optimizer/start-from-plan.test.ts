/** A solve that begins from an earlier plan: it mends the plan to a changed campus and still proves the best. */
import { beforeAll, describe, expect, test } from 'vitest';
import type { Campus } from '#domain/campus.js';
import type { Decisions, Plan } from '#domain/plan.js';
import type { Solver } from '#mip/solver.js';
import { quietSurroundings } from '#optimizer/solve/quiet-surroundings.js';
import { solveCampus, type SolveResult } from '#optimizer/solve/solve-campus.js';
import { checkPlan } from '#rules/check-plan.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { tinyCampus, tinySite } from '../support/tiny/tiny-campus.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

function solveFrom(campus: Campus, start?: Decisions): { result: SolveResult; first?: Plan } {
  let first: Plan | undefined;
  const result = solveCampus(campus, solver, {
    settings: { seed: 1 },
    ...(start ? { start } : {}),
    around: {
      ...quietSurroundings(() => 0),
      onPlan: (plan) => (first ??= plan),
    },
  });
  return { result, ...(first ? { first } : {}) };
}

const years = (plan: Plan | undefined) =>
  Object.fromEntries(plan?.decisions.placements.map((p) => [p.site, p.year]) ?? []);

const atLate: Decisions = {
  placements: [
    { site: 'A', buildType: 'beds', year: fiscalYear(2030) },
    { site: 'B', buildType: 'beds', year: fiscalYear(2029) },
  ],
  hires: [],
  workDays: [],
  purchases: [],
};

describe('a solve that begins from an earlier plan', () => {
  test('begins with that plan where the campus still admits it', () => {
    const { first } = solveFrom(tinyCampus(), atLate);
    expect(years(first)).toEqual({ A: 2030, B: 2029 });
  });

  test('puts a site that is now fixed to another year there, and keeps the rest', () => {
    const campus = tinyCampus({
      handPlacements: [{ kind: 'fixed', site: 'A', year: fiscalYear(2028), reason: 'a question' }],
    });
    const { first } = solveFrom(campus, atLate);
    expect(first && checkPlan(campus, first)).toEqual([]);
    expect(years(first)).toEqual({ A: 2028, B: 2029 });
  });

  test('leaves out a site that the campus no longer has', () => {
    const campus = tinyCampus({ candidates: [tinySite('B')] });
    expect(years(solveFrom(campus, atLate).first)).toEqual({ B: 2029 });
  });

  test('proves the same best plan as a solve that begins from nothing', () => {
    const cold = solveFrom(tinyCampus()).result.report;
    const warm = solveFrom(tinyCampus(), atLate).result.report;
    expect(warm.ending).toBe('proven');
    expect(warm.tiers).toEqual(cold.tiers);
  });
});
