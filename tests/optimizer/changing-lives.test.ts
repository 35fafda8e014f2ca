/**
 * Halves, later changes, unsure works and published plans, solved by the optimizer and by trying every
 * decision; and the running totals of the search beside the accounts. No outside source is needed.
 */
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Campus } from '#domain/campus.js';
import { NO_DECISIONS, type Placement } from '#domain/plan.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { hundredthsFor } from '#estimating/site-charges/type-profile.js';
import { compostNeeds } from '#estimating/plan-needs/compost-needs.js';
import { laborNeeds } from '#estimating/plan-needs/labor-needs.js';
import type { Solver } from '#mip/solver.js';
import { allocateMoney } from '#optimizer/allocate/money.js';
import { everyLifecycle, possibleLifecycles } from '#optimizer/columns/lifecycles.js';
import { decisionsOf } from '#optimizer/search/state.js';
import { CLASS_COUNT } from '#optimizer/search/life-charges.js';
import { tablesOf } from '#optimizer/search/tables.js';
import type { SolveResult } from '#optimizer/solve/solve-campus.js';
import { tiersOf } from '#optimizer/tiers/tier-list.js';
import { TASK_CLASSES } from '#domain/labor.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { solveHere } from '../support/solve-here.js';
import { bestOfAll, expectBest } from '../support/tiny/best-of-all.js';
import { changingCampus, UNSURE_WORKS } from '../support/tiny/changing-campus.js';
import { promise } from '../support/tiny/promises.js';
import { tinyCampus, tinyFund, tinyPool, tinySite } from '../support/tiny/tiny-campus.js';
import { wander } from '../support/tiny/wander.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

function solveFully(campus: Campus): SolveResult {
  return solveHere(campus, solver);
}

function crew(hours: number) {
  return [
    tinyPool('crew', hours, ['plant', 'care-food', 'care-other', 'harvest']),
    tinyPool('builders', 400, ['prepare']),
  ];
}

const inTime = promise('n', 'intended', {
  kind: 'named-site',
  site: 'A',
  by: fiscalYear(2029),
  buildTypes: 'any',
});

describe('the optimizer finds what trying everything finds', () => {
  test.each([
    ['plenty of everything', {}],
    ['little care', { pools: crew(58) }],
    ['money for half a site a year', { funds: [tinyFund('capital', 24_000, { carry: 0 })] }],
    ['unsure works', { construction: [UNSURE_WORKS] }],
    ['unsure works and a promise', { construction: [UNSURE_WORKS], commitments: [inTime] }],
    ['a promise and little care', { pools: crew(40), commitments: [inTime] }],
  ])('with %s', (_, change: Partial<Campus>) => {
    const campus = changingCampus(change);
    expectBest(campus, solveFully(campus), bestOfAll(campus));
  });

  test('random means', { timeout: 120_000 }, () => {
    const amount = (min: number, max: number) => fc.integer({ min, max });
    const means = fc.record({
      hours: amount(10, 110),
      dollars: amount(2_000, 50_000),
      carry: amount(0, 2),
      certaintyPercent: amount(5, 95),
      from: amount(2029, 2035),
    });
    fc.assert(
      fc.property(means, ({ hours, dollars, carry, certaintyPercent, from }) => {
        const year = fiscalYear(from);
        const campus = changingCampus({
          pools: crew(hours),
          funds: [tinyFund('capital', dollars, { carry })],
          construction: [{ ...UNSURE_WORKS, certaintyPercent, from: year, to: year }],
        });
        expectBest(campus, solveFully(campus), bestOfAll(campus));
      }),
      { numRuns: 6 },
    );
  });
});

test('a published plan is kept in its frozen years, and changed as little as benefit allows after them', () => {
  const placements = [
    { site: 'A', buildType: 'beds', year: fiscalYear(2028), announced: true },
    { site: 'B', buildType: 'fruit', year: fiscalYear(2029), announced: false },
  ];
  const published = {
    name: 'Plan of January',
    date: '2027-01-15',
    frozenThrough: fiscalYear(2028),
    placements,
    hires: [],
    announcedWeight: 5,
    otherWeight: 2,
  };
  const campus = tinyCampus({ published });
  const { report, plan } = solveFully(campus);
  expectBest(campus, { report, ...(plan ? { plan } : {}) }, bestOfAll(campus));
  expect(tiersOf(campus).at(-1)?.name).toBe('change');
  expect(plan?.decisions.placements).toContainEqual({
    site: 'A',
    buildType: 'beds',
    year: fiscalYear(2028),
  });
  // B is worth most in FY28, which is frozen; FY29 as fruit is next best, and was published.
  expect(report.tiers.at(-1)?.value).toBe(0);
});

test('a life that asks for more and earns less than another is not looked at', () => {
  // Beds dug up and planted anew as beds: more care and more work, for no more benefit.
  const { compost } = tinyCampus();
  const campus = changingCampus({
    compost: { ...compost, topDressFromAge: 1 },
    laterChanges: [
      {
        id: 'to-beds',
        name: 'Beds',
        buildType: 'beds',
        from: ['beds'],
        ages: [5],
        costPerSqFt: cents(1_00),
        hoursPer1000SqFt: 10,
        provenance: { basis: 'judgement', source: 'a test' },
      },
    ],
    candidates: [tinySite('A', { laterChanges: ['to-beds'] })],
  });
  const charges = campusCharges(campus);
  expect(everyLifecycle(campus, charges)).toHaveLength(9);
  expect(possibleLifecycles(campus, charges)).toHaveLength(6);
});

test('after any moves the search knows what the accounts say', () => {
  const match = tinyFund('match', 0, {
    matchRatio: 1,
    inflows: [2028, 2029].map((year) => ({
      year: fiscalYear(year),
      amount: cents(9_000_00),
      lastYear: fiscalYear(2030),
      restriction: { lines: ['build', 'care'], sites: ['A'], buildTypes: 'any' },
    })),
  });
  const campus = changingCampus({
    candidates: [
      tinySite('A', { phasing: { mostYearsApart: 2 }, laterChanges: ['to-beds', 'to-lawn'] }),
      tinySite('B', { zone: 'south', areaSqFt: 3001, laterChanges: ['to-lawn'] }),
    ],
    construction: [UNSURE_WORKS],
    funds: [tinyFund('capital', 16_000, { carry: 1 }), match],
  });
  const charges = campusCharges(campus);
  const ground = { campus, charges, lifecycles: everyLifecycle(campus, charges) };
  const tables = tablesOf(ground);
  const moves = fc.array(fc.nat(ground.lifecycles.length - 1), { minLength: 1, maxLength: 25 });
  fc.assert(
    fc.property(moves, (picked) => {
      const state = wander(tables, picked);
      const placements: Placement[] = [...decisionsOf(state).placements];
      const decisions = { ...NO_DECISIONS, placements };
      laborNeeds(campus, decisions, charges).forEach((needs, season) =>
        TASK_CLASSES.forEach((c, i) =>
          expect(hundredthsFor(state.needs[season * CLASS_COUNT + i] ?? 0)).toBe(needs[c]),
        ),
      );
      compostNeeds(campus, decisions, charges).forEach(({ builds, topDress }, season) =>
        expect(hundredthsFor(state.compost[season] ?? 0)).toBe(builds + topDress),
      );
      const { shortages } = allocateMoney(campus, decisions, charges);
      expect(state.money.paid(state.costs)).toBe(shortages.length === 0);
    }),
    { numRuns: 60 },
  );
});

test('where what was published can no longer be built, its frozen years are named', () => {
  const campus = tinyCampus({
    candidates: [tinySite('A', { earliest: fiscalYear(2029) })],
    published: {
      name: 'Plan of January',
      date: '2027-01-15',
      frozenThrough: fiscalYear(2028),
      placements: [{ site: 'A', buildType: 'beds', year: fiscalYear(2028), announced: true }],
      hires: [],
      announcedWeight: 1,
      otherWeight: 1,
    },
  });
  const { report } = solveFully(campus);
  expect(report.ending).toBe('no-plan');
  expect(report.conflict.map((m) => m.id)).toEqual(['frozen-years']);
});

test('change that money forces is counted by weight, and bounded', () => {
  // Fruit on A in FY28 was published; there is money for B alone.
  const campus = tinyCampus({
    funds: [tinyFund('capital', 27_000, { carry: 0 })],
    published: {
      name: 'Plan of January',
      date: '2027-01-15',
      placements: [{ site: 'A', buildType: 'fruit', year: fiscalYear(2028), announced: true }],
      hires: [],
      announcedWeight: 4,
      otherWeight: 1,
    },
  });
  // A is dropped (4) and B is added (1); half of A and all of B would change less, so the bound is lower.
  const change = solveFully(campus).report.tiers.at(-1);
  expect(change).toMatchObject({ name: 'change', value: 5 });
  expect(change?.bound).toBeGreaterThan(0);
  expect(change?.bound).toBeLessThanOrEqual(5);
});
