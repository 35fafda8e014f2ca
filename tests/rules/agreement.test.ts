/**
 * Each rule is told twice: as rows for the solver and as a check of a finished plan. Here every
 * decision of a tiny campus is judged both ways; no outside source is needed, since the two must
 * agree whatever the numbers are.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import type { Campus } from '#domain/campus.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { centiHours } from '#units/centihours.js';
import { centiYards } from '#units/centiyards.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import { checkPlan } from '#rules/check-plan.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import type { Solver } from '#mip/solver.js';
import { everyDecision, type Reach } from '../support/tiny/every-decision.js';
import { promise } from '../support/tiny/promises.js';
import { hardModel, rowsHold } from '../support/tiny/rows-hold.js';
import {
  ANYTHING,
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

/** Judges every decision both ways and returns how many pass. */
function agree(campus: Campus, reach: Reach = {}): { passing: number; of: number } {
  const charges = campusCharges(campus);
  const model = hardModel(campus);
  let passing = 0;
  const all = everyDecision(campus, reach);
  for (const decisions of all) {
    const { plan } = completePlan(campus, decisions, charges);
    const fullyServed = plan.unserved.length === 0;
    const passes = fullyServed && checkPlan(campus, plan).length === 0;
    const holds = rowsHold(solver, model, decisions);
    if (holds !== passes) {
      const found = checkPlan(campus, plan).map((b) => b.message);
      expect.fail(
        `rows ${holds ? 'hold' : 'break'}, checks ${passes ? 'pass' : 'fail'}: ${JSON.stringify(decisions)} ${found.join('; ')}`,
      );
    }
    if (passes) passing += 1;
  }
  return { passing, of: all.length };
}

/** Some decisions pass and some do not, so the rule under test binds. */
function expectBinding(result: { passing: number; of: number }): void {
  expect(result.passing).toBeGreaterThan(0);
  expect(result.passing).toBeLessThan(result.of);
}

const oneSite = [tinySite('A')];

describe('rows and checks agree on every decision of a tiny campus', () => {
  test('built once, with ample means: every placement passes', () => {
    expect(agree(tinyCampus())).toEqual({ passing: 49, of: 49 });
  });

  test('eligible years: windows, types and gates', () => {
    const gate = {
      kind: 'contamination' as const,
      status: 'unknown' as const,
      note: 'no test',
      bars: 'edible' as const,
      clearedBy: 'a soil test',
      plannedClearFrom: fiscalYear(2029),
    };
    expectBinding(
      agree(
        tinyCampus({
          candidates: [
            tinySite('A', { gates: [gate], latest: fiscalYear(2029) }),
            tinySite('B', { buildTypes: ['beds'], earliest: fiscalYear(2029) }),
          ],
        }),
      ),
    );
  });

  test('a failed gate bars for good', () => {
    const gate = {
      kind: 'utilities' as const,
      status: 'fail' as const,
      note: 'gas main',
      bars: 'all' as const,
      clearedBy: 'nothing',
    };
    expect(agree(tinyCampus({ candidates: [tinySite('A', { gates: [gate] })] }))).toEqual({
      passing: 1,
      of: 7,
    });
  });

  test('construction: sure works bar, unsure ones do not', () => {
    const works = {
      id: 'w',
      name: 'Tunnel',
      kind: 'footprint',
      sites: ['A'],
      from: fiscalYear(2029),
      to: fiscalYear(2029),
      source: 'a test',
    };
    const certain = agree(
      tinyCampus({ candidates: oneSite, construction: [{ ...works, certaintyPercent: 70 }] }),
    );
    expect(certain).toEqual({ passing: 3, of: 7 });
    const unsure = agree(
      tinyCampus({ candidates: oneSite, construction: [{ ...works, certaintyPercent: 50 }] }),
    );
    expect(unsure).toEqual({ passing: 7, of: 7 });
  });

  test('hand placements: fixed and forbidden', () => {
    const hand = { site: 'A', year: fiscalYear(2029), reason: 'a test' };
    const fixed = agree(tinyCampus({ handPlacements: [{ ...hand, kind: 'fixed' }] }));
    expect(fixed).toEqual({ passing: 14, of: 49 });
    const forbidden = agree(tinyCampus({ handPlacements: [{ ...hand, kind: 'forbidden' }] }));
    expect(forbidden).toEqual({ passing: 35, of: 49 });
  });

  test('precedence and exclusive groups', () => {
    expectBinding(
      agree(
        tinyCampus({
          precedence: [{ before: 'A', after: 'B', yearsApart: 1, reason: 'water main' }],
        }),
      ),
    );
    expect(
      agree(
        tinyCampus({ exclusiveGroups: [{ id: 'g', sites: ['A', 'B'], reason: 'same ground' }] }),
      ),
    ).toEqual({ passing: 13, of: 49 });
  });

  test('labor: pools with different tasks, in the season that binds', () => {
    expectBinding(
      agree(
        tinyCampus({
          pools: [
            tinyPool('crew', 60, ['care-food', 'care-other', 'plant']),
            tinyPool('pickers', 20, ['harvest', 'care-food']),
            tinyPool('builders', 160, ['prepare']),
          ],
        }),
      ),
    );
  });

  test('labor: a supply that lies on the knife edge, and a hundredth below it', () => {
    const edge = (hours: number) =>
      agree(
        tinyCampus({
          candidates: oneSite,
          pools: [
            tinyPool('crew', 1000, ['plant', 'care-food', 'care-other', 'harvest', 'supervise']),
            tinyPool('builders', hours, ['prepare']),
          ],
        }),
      );
    expect(edge(150)).toEqual({ passing: 7, of: 7 });
    expect(edge(149.99)).toEqual({ passing: 1, of: 7 });
  });

  test('positions: lead time, number, and the hours they bring', () => {
    const position = {
      id: 'gardener',
      name: 'Gardener',
      term: 'recurring' as const,
      tasks: ['care-food', 'care-other', 'harvest', 'plant'] as const,
      startSeason: 'fall',
      leadMonths: 20,
      hours: {
        summer: centiHours(100_00),
        fall: centiHours(100_00),
        winter: centiHours(50_00),
        spring: centiHours(100_00),
      },
      firstYearHours: {
        fall: centiHours(50_00),
        winter: centiHours(50_00),
        spring: centiHours(80_00),
      },
      annualCost: cents(60_000_00),
      firstYearCost: cents(45_000_00),
      oneTimeCost: cents(5_000_00),
      most: 1,
      provenance: { basis: 'judgement' as const, source: 'a test' },
    };
    expectBinding(
      agree(
        tinyCampus({
          candidates: oneSite,
          positions: [position],
          pools: [
            tinyPool('crew', 40, ['care-food', 'care-other', 'harvest', 'plant']),
            tinyPool('builders', 200, ['prepare']),
          ],
          funds: [tinyFund('capital', 70_000, { carry: 2 })],
        }),
      ),
    );
  });

  test('work days: their leaders are found among those who may lead', () => {
    const day = {
      id: 'fall-day',
      name: 'Fall work day',
      season: 'fall',
      mostPerSeason: 2,
      hoursEach: centiHours(60_00),
      leaderHoursEach: centiHours(12_00),
      tasks: ['prepare'] as const,
      peoplePresent: 34,
      leaders: 4,
      provenance: { basis: 'judgement' as const, source: 'a test' },
    };
    const campus = (leaders: number) =>
      agree(
        tinyCampus({
          candidates: oneSite,
          workDays: [day],
          pools: [
            tinyPool('crew', 30, ['prepare', 'plant', 'care-food', 'care-other', 'harvest']),
            tinyPool('crew-2', 200, ['plant', 'care-food', 'care-other', 'harvest']),
            tinyPool('lead', leaders, ['supervise']),
          ],
        }),
      );
    expect(campus(24)).toEqual({ passing: 7, of: 7 });
    expect(campus(23.99)).toEqual({ passing: 0, of: 7 });
  });

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
