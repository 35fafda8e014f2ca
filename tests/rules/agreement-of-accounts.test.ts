/**
 * Each rule is told twice: as rows for the solver and as a check of a finished plan. Here every
 * decision of a tiny campus is judged both ways; no outside source is needed, since the two must
 * agree whatever the numbers are.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import type { Campus } from '#domain/campus.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import type { Solver } from '#mip/solver.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import { checkPlan } from '#rules/check-plan.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { centiYards } from '#units/centiyards.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { agree as agreeWith, expectBinding } from '../support/tiny/agree.js';
import { everyDecision, type Reach } from '../support/tiny/every-decision.js';
import { promise } from '../support/tiny/promises.js';
import { hardModel, rowsHold } from '../support/tiny/rows-hold.js';
import {
  ANYTHING,
  TINY_CALENDAR,
  tinyCampus,
  tinyFund,
  tinyPool,
  tinySite,
  tinyType,
} from '../support/tiny/tiny-campus.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

const agree = (campus: Campus, reach: Reach = {}) => agreeWith(solver, campus, reach);
const oneSite = [tinySite('A')];

describe('rows and checks agree on money, compost and promises', () => {
  test('funds: carry, lapse, expiry, restriction and matching, years apart', () => {
    const gift = tinyFund('gift', 0, {
      inflows: [
        {
          year: fiscalYear(2028),
          amount: cents(20_000_00),
          lastYear: fiscalYear(2029),
          restriction: { lines: ['build'], sites: ['A'], buildTypes: ['fruit'] },
        },
      ],
    });
    const match = tinyFund('match', 0, {
      matchRatio: 1,
      inflows: [
        {
          year: fiscalYear(2028),
          amount: cents(10_000_00),
          lastYear: fiscalYear(2030),
          restriction: { lines: ['build'], sites: ['B'], buildTypes: 'any' },
        },
      ],
    });
    const capital = tinyFund('capital', 18_000, {
      carry: 1,
      restriction: { ...ANYTHING, lines: ['build'] },
    });
    const operating = tinyFund('operating', 900, {
      carry: 0,
      restriction: { ...ANYTHING, lines: ['care', 'compost', 'standing'] },
    });
    const standing = [
      { id: 'rent', name: 'Shed rent', annual: cents(400_00), escalation: 'supplies' as const },
    ];
    expectBinding(
      agree(tinyCampus({ funds: [capital, operating, gift, match], standingCosts: standing })),
    );
  });

  test('a reimbursable grant: cap, ratio, years, and money that is away until it is paid back', () => {
    const award = (from: number, to: number, dollars: number) => ({
      year: fiscalYear(from),
      amount: cents(dollars * 100),
      lastYear: fiscalYear(to),
      restriction: { ...ANYTHING, sites: ['A', 'B'] },
    });
    const oneType = {
      buildTypes: [tinyType('beds', 'perennial-bed')],
      candidates: [
        tinySite('A', { buildTypes: ['beds'] }),
        tinySite('B', { buildTypes: ['beds'], areaSqFt: 3000 }),
      ],
    };
    const gift = tinyFund('gift', 1_500);
    const passing = [0, 1, 2, 4].map((lagYears) => {
      const grant = tinyFund('grant', 0, {
        matchRatio: 1,
        reimbursement: { frontedBy: 'capital', lagYears },
        inflows: [award(2028, 2029, 15_000), award(2030, 2030, 9_000)],
      });
      const capital = tinyFund('capital', 26_000, { carry: 2 });
      const found = agree(tinyCampus({ ...oneType, funds: [capital, grant, gift] }));
      expectBinding(found);
      return found.passing;
    });
    const capital = tinyFund('capital', 26_000, { carry: 2 });
    const without = agree(tinyCampus({ ...oneType, funds: [capital, gift] }));
    expect(passing).toEqual([...passing].sort((a, b) => b - a));
    expect(new Set(passing.slice(0, 3)).size, `passing ${passing.join()}`).toBe(3);
    // Money that is back only after its last year is worth nothing.
    expect(passing[3]).toBe(without.passing);
  });

  test('reserve floor: what lies below it is never spent', () => {
    const reserve = (dollars: number) =>
      tinyFund('reserve', 0, {
        floor: cents(25_000_00),
        inflows: [
          {
            year: fiscalYear(2028),
            amount: cents(dollars * 100),
            lastYear: fiscalYear(2040),
            restriction: ANYTHING,
          },
        ],
      });
    const capital = tinyFund('capital', 1_000, { carry: 8 });
    expectBinding(agree(tinyCampus({ funds: [capital, reserve(60_000)] })));
    expect(
      agree(tinyCampus({ candidates: oneSite, funds: [capital, reserve(24_999)] })).passing,
    ).toBe(0);
  });

  test('compost: yard, carry-over, top-dressing in the tail and purchase', () => {
    expectBinding(
      agree(
        tinyCampus({
          compost: {
            made: { spring: centiYards(20_00) },
            openingStock: centiYards(30_00),
            yard: centiYards(45_00),
            pricePerYard: cents(40_00),
            mostBoughtPerSeason: 40,
            topDressSeason: 'spring',
            topDressFromAge: 2,
          },
          candidates: [
            tinySite('A', { buildTypes: ['beds'] }),
            tinySite('B', { buildTypes: ['beds'], areaSqFt: 3000 }),
          ],
          buildTypes: [tinyType('beds', 'perennial-bed')],
        }),
        { purchases: [0, 10, 40] },
      ),
    );
  });

  test('compost of two grades: food ground takes certified alone, the yard holds both', () => {
    const campus = tinyCampus({
      calendar: { ...TINY_CALENDAR, horizonYears: 2 },
      compost: {
        ...tinyCampus().compost,
        made: { spring: centiYards(5_00) },
        openingStock: centiYards(14_00),
        yard: centiYards(30_00),
        mostBoughtPerSeason: 10,
        other: {
          made: { fall: centiYards(3_00) },
          openingStock: centiYards(9_00),
          pricePerYard: cents(15_00),
          mostBoughtPerSeason: 12,
        },
      },
      candidates: [
        tinySite('A', { areaSqFt: 2400 }),
        tinySite('B', { areaSqFt: 1800, zone: 'south' }),
      ],
    });
    expectBinding(agree(campus, { purchases: [0, 10], otherPurchases: [0, 12] }));
    const uncertified = { ...campus.compost, made: {}, openingStock: centiYards(0) };
    const passing = ['beds', 'fruit'].map((type) => {
      const one = [tinySite('A', { buildTypes: [type], areaSqFt: 600 })];
      const compost = { ...uncertified, mostBoughtPerSeason: 0 };
      return agree({ ...campus, compost, candidates: one }, { otherPurchases: [0, 12] }).passing;
    });
    const leftBare = 4;
    expect(passing[1]).toBe(leftBare);
    expect(passing[0]).toBeGreaterThan(leftBare);
  });

  test('binding promises, each kind', () => {
    const years = { from: fiscalYear(2028), to: fiscalYear(2029) };
    const kinds = [
      promise('yearly', 'binding', {
        kind: 'sites-each-year',
        count: 1,
        countsFromSqFt: 1500,
        ...years,
      }),
      promise('named', 'binding', {
        kind: 'named-site',
        site: 'B',
        by: fiscalYear(2029),
        buildTypes: ['fruit'],
      }),
      promise('area', 'binding', { kind: 'area', sqFt: 5000, by: fiscalYear(2029) }),
      promise('types', 'binding', { kind: 'only-build-types', buildTypes: ['fruit'] }),
      promise('zones', 'binding', { kind: 'zone-balance', leastPerZone: 1 }),
    ];
    for (const commitment of kinds) expectBinding(agree(tinyCampus({ commitments: [commitment] })));
  });

  test('a site that is there already asks for care, counts for area, and is top-dressed', () => {
    const existing = {
      ...tinySite('E'),
      stage: 'existing' as const,
      buildType: 'beds',
      plantedYear: 2027,
    };
    expectBinding(agree(tinyCampus({ existing: [existing], pools: [tinyPool('crew', 90)] })));
  });
});

test('a row that was tampered with is caught', () => {
  const campus = tinyCampus({
    pools: [
      tinyPool('crew', 60, ['care-food', 'care-other', 'plant', 'harvest']),
      tinyPool('builders', 160, ['prepare']),
    ],
    funds: [tinyFund('capital', 26_000)],
  });
  const charges = campusCharges(campus);
  const all = everyDecision(campus).map((decisions) => {
    const { plan } = completePlan(campus, decisions, charges);
    return {
      decisions,
      passes: plan.unserved.length === 0 && checkPlan(campus, plan).length === 0,
    };
  });
  const good = hardModel(campus);
  const disagreements = (factor: (label: string) => number) => {
    const rowUpper = good.model.rowUpper.map((v, r) =>
      Number.isFinite(v) ? v * factor(good.model.rowLabels[r] ?? '') : v,
    );
    const model = { ...good, model: { ...good.model, rowUpper } };
    return all.filter(({ decisions, passes }) => rowsHold(solver, model, decisions) !== passes)
      .length;
  };
  expect(disagreements(() => 1)).toBe(0);
  expect(disagreements((label) => (label.startsWith('labor') ? 0.5 : 1))).toBeGreaterThan(0);
  expect(disagreements((label) => (label.startsWith('fund-vintage') ? 0.7 : 1))).toBeGreaterThan(0);
});
