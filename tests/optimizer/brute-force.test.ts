/**
 * Tiny programs solved twice: by the optimizer and by trying every decision. No outside source is
 * needed: the best of all decisions, tier by tier, is the answer by definition.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import fc from 'fast-check';
import type { Campus } from '#domain/campus.js';
import type { Solver } from '#mip/solver.js';
import type { SolveResult } from '#optimizer/solve/solve-campus.js';
import { benefitPlace, tiersOf } from '#optimizer/tiers/tier-list.js';
import { compareTiers } from '#optimizer/tiers/tier-values.js';
import { checkPlan } from '#rules/check-plan.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { solveHere } from '../support/solve-here.js';
import { bestOfAll } from '../support/tiny/best-of-all.js';
import { promise } from '../support/tiny/promises.js';
import { tinyCampus, tinyFund, tinyPool, tinySite } from '../support/tiny/tiny-campus.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

function solveFully(campus: Campus): SolveResult {
  return solveHere(campus, solver);
}

function expectSameAsBruteForce(campus: Campus): void {
  const best = bestOfAll(campus);
  const { report, plan } = solveFully(campus);
  if (!best) {
    expect(report.ending).toBe('no-plan');
    return;
  }
  expect(report.ending).toBe('proven');
  expect(plan && checkPlan(campus, plan)).toEqual([]);
  const upTo = benefitPlace(tiersOf(campus)) + 1;
  report.tiers.slice(0, upTo).forEach((tier, i) => {
    expect(tier.value).toBeCloseTo(best[i] ?? NaN, 3);
    const bound = tier.bound ?? NaN;
    if (tier.sense === 'min')
      expect(bound).toBeLessThanOrEqual((best[i] ?? NaN) + tier.tolerance + 1e-6);
    else expect(bound).toBeGreaterThanOrEqual((best[i] ?? NaN) - tier.tolerance - 1e-6);
  });
}

const amount = (most: number) => fc.integer({ min: 0, max: most });

/** Random tiny programs: loose, tight and impossible ones. */
const programs = fc
  .record({
    areaA: fc.integer({ min: 1000, max: 8000 }),
    areaB: fc.integer({ min: 1000, max: 8000 }),
    dollars: amount(90_000),
    carry: fc.integer({ min: 0, max: 3 }),
    crew: amount(160),
    builders: amount(300),
    yearly: fc.constantFrom('binding', 'intended', 'aspiration', undefined),
    named: fc.constantFrom('binding', 'intended', 'aspiration', undefined),
    byYear: fc.integer({ min: 2028, max: 2030 }),
  })
  .map((p) =>
    tinyCampus({
      candidates: [
        tinySite('A', { areaSqFt: p.areaA }),
        tinySite('B', { zone: 'south', areaSqFt: p.areaB }),
      ],
      funds: [tinyFund('capital', p.dollars, { carry: p.carry })],
      pools: [
        tinyPool('crew', p.crew, ['plant', 'care-food', 'care-other', 'harvest']),
        tinyPool('builders', p.builders, ['prepare']),
      ],
      commitments: [
        ...(p.yearly
          ? [
              promise('yearly', p.yearly, {
                kind: 'sites-each-year',
                count: 1,
                from: fiscalYear(2028),
                to: fiscalYear(2029),
                countsFromSqFt: 1500,
              }),
            ]
          : []),
        ...(p.named
          ? [
              promise('named', p.named, {
                kind: 'named-site',
                site: 'A',
                by: fiscalYear(p.byYear),
                buildTypes: ['fruit'],
              }),
            ]
          : []),
      ],
    }),
  );

describe('the optimizer finds what trying everything finds', () => {
  test('random tiny programs, infeasible ones among them', { timeout: 240_000 }, () => {
    fc.assert(fc.property(programs, expectSameAsBruteForce), { numRuns: 25 });
  });

  test('no candidate at all: an empty plan is proven', () => {
    const { report, plan } = solveFully(tinyCampus({ candidates: [] }));
    expect(report.ending).toBe('proven');
    expect(plan?.decisions.placements).toEqual([]);
  });

  test('no money at all: nothing is built, and that is proven', () => {
    const { report, plan } = solveFully(tinyCampus({ funds: [] }));
    expect(report.ending).toBe('proven');
    expect(plan?.decisions.placements).toEqual([]);
  });

  test('standing costs that nobody pays admit no plan, and money is named', () => {
    const standingCosts = [
      { id: 'rent', name: 'Shed rent', annual: cents(1_00), escalation: 'wages' as const },
    ];
    const { report } = solveFully(tinyCampus({ funds: [], standingCosts }));
    expect(report.ending).toBe('no-plan');
    expect(report.conflict.map((m) => m.id)).toEqual(['money']);
  });

  test('one year of horizon', () => {
    const base = tinyCampus();
    expectSameAsBruteForce(tinyCampus({ calendar: { ...base.calendar, horizonYears: 1 } }));
  });

  test('care that nobody can do is counted, not hidden', () => {
    const existing = {
      ...tinySite('E'),
      stage: 'existing' as const,
      buildType: 'beds',
      plantedYear: 2027,
    };
    const campus = tinyCampus({ existing: [existing], pools: [tinyPool('crew', 10)] });
    expectSameAsBruteForce(campus);
    const { report } = solveFully(campus);
    expect(report.tiers[0]?.value).toBeGreaterThan(0);
  });
});

describe('monotone: more of a thing never makes a plan worse', () => {
  test('more money, more hours, fewer promises', { timeout: 240_000 }, () => {
    const campus = tinyCampus({
      funds: [tinyFund('capital', 22_000)],
      pools: [
        tinyPool('crew', 60, ['plant', 'care-food', 'care-other', 'harvest']),
        tinyPool('builders', 150, ['prepare']),
      ],
      commitments: [
        promise('named', 'binding', {
          kind: 'named-site',
          site: 'B',
          by: fiscalYear(2029),
          buildTypes: ['beds'],
        }),
      ],
    });
    const base = bestOfAll(campus);
    const relaxed = [
      { ...campus, funds: [tinyFund('capital', 30_000)] },
      { ...campus, pools: [...campus.pools, tinyPool('more', 40)] },
      { ...campus, commitments: [] },
    ];
    for (const more of relaxed) {
      const found = solveFully(more).report.tiers.map((t) => t.value);
      const upTo = benefitPlace(tiersOf(campus)) + 1;
      expect(
        compareTiers(more, found.slice(0, upTo), (base ?? []).slice(0, upTo)),
      ).toBeLessThanOrEqual(1e-3);
    }
  });
});
