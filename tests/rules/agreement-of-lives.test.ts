/**
 * Lives that change: halves, later changes, unsure works, a published plan. Every decision of a tiny
 * campus is judged by rows and by checks, and the two must agree whatever the numbers are.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import type { Campus } from '#domain/campus.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import type { Solver } from '#mip/solver.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import { checkPlan } from '#rules/check-plan.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { centiHours } from '#units/centihours.js';
import { centiYards } from '#units/centiyards.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { agree as agreeWith, expectBinding } from '../support/tiny/agree.js';
import { TO_BEDS, TO_LAWN, UNSURE_WORKS } from '../support/tiny/changing-campus.js';
import { everyDecision } from '../support/tiny/every-decision.js';
import { promise } from '../support/tiny/promises.js';
import { hardModel, rowsHold } from '../support/tiny/rows-hold.js';
import { tinyCampus, tinyFund, tinyPool, tinySite, tinyType } from '../support/tiny/tiny-campus.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

const agree = (campus: Campus) => agreeWith(solver, campus);

const HALVES = tinySite('A', { phasing: { mostYearsApart: 1 } });
const CHANGING = tinySite('A', { laterChanges: ['to-beds', 'to-lawn'] });
const BOTH = tinySite('A', { ...CHANGING, phasing: { mostYearsApart: 1 } });
const CHANGES = [TO_BEDS, TO_LAWN];
const crew = (hours: number) => [
  tinyPool('crew', hours, ['plant', 'care-food', 'care-other', 'harvest']),
  tinyPool('builders', 400, ['prepare']),
];

describe('halves', () => {
  test('with ample means: only where the site allows them, within its years', () => {
    // 2 types x (FY28, FY29, FY30 at once; FY28+FY29, FY29+FY30 in halves), or nothing
    expect(agree(tinyCampus({ candidates: [HALVES] })).passing).toBe(11);
    const closed = tinySite('A', { ...HALVES, latest: fiscalYear(2029) });
    expect(agree(tinyCampus({ candidates: [closed] })).passing).toBe(7);
  });

  test('with tight labor, compost and money, each half is paid and served in its year', () => {
    const campus = tinyCampus({ candidates: [HALVES] });
    expectBinding(
      agree({
        ...campus,
        pools: [
          tinyPool('crew', 60, ['plant', 'care-food', 'care-other', 'harvest']),
          tinyPool('builders', 80, ['prepare']),
        ],
      }),
    );
    expectBinding(agree({ ...campus, funds: [tinyFund('capital', 23_000, { carry: 0 })] }));
    expectBinding(
      agree({
        ...campus,
        compost: { ...campus.compost, made: {}, openingStock: centiYards(45_00) },
      }),
    );
  });

  test('matching money pays its share of each half, from several inflows together', () => {
    const match = tinyFund('match', 0, {
      matchRatio: 1,
      inflows: [2028, 2029].map((year) => ({
        year: fiscalYear(year),
        amount: cents(15_000_00),
        lastYear: fiscalYear(2030),
        restriction: { lines: ['build', 'care'], sites: ['A'], buildTypes: 'any' },
      })),
    });
    const own = (dollars: number) => [tinyFund('capital', dollars, { carry: 0 }), match];
    expectBinding(agree(tinyCampus({ candidates: [HALVES], funds: own(12_000) })));
    expectBinding(agree(tinyCampus({ candidates: [HALVES], funds: own(21_000) })));
  });

  test('promises count a site when enough of it is prepared', () => {
    const campus = tinyCampus({ candidates: [HALVES] });
    const years = { from: fiscalYear(2028), to: fiscalYear(2028) };
    const yearly = (countsFromSqFt: number) =>
      agree({
        ...campus,
        commitments: [
          promise('y', 'binding', { kind: 'sites-each-year', count: 1, countsFromSqFt, ...years }),
        ],
      }).passing;
    expect(yearly(2500)).toBe(4);
    expect(yearly(2501)).toBe(2);
    const named = { kind: 'named-site' as const, site: 'A', buildTypes: 'any' as const };
    expectBinding(
      agree({
        ...campus,
        commitments: [promise('n', 'binding', { ...named, by: fiscalYear(2029) })],
      }),
    );
    const area = { kind: 'area' as const, sqFt: 2500, by: fiscalYear(2028) };
    expect(agree({ ...campus, commitments: [promise('a', 'binding', area)] }).passing).toBe(4);
  });

  test('a site that waits for another waits for the whole of it', () => {
    const campus = tinyCampus({
      candidates: [
        tinySite('A', { buildTypes: ['beds'], phasing: { mostYearsApart: 1 } }),
        tinySite('B', { buildTypes: ['beds'], zone: 'south' }),
      ],
      buildTypes: [tinyType('beds', 'perennial-bed')],
      precedence: [{ before: 'A', after: 'B', yearsApart: 1, reason: 'water main' }],
    });
    expectBinding(agree(campus));
  });
});

describe('later changes', () => {
  test('with ample means: at its ages, for its types, while the plan runs', () => {
    // nothing; 2 types x 3 years unchanged, returned at 5; fruit to beds at 5
    const campus = tinyCampus({ candidates: [CHANGING], laterChanges: CHANGES });
    expect(agree(campus).passing).toBe(1 + 6 + 6 + 3);
  });

  test('halves that are changed later, with tight hours and money', () => {
    const campus = tinyCampus({ candidates: [BOTH], laterChanges: CHANGES });
    expectBinding(agree({ ...campus, pools: crew(48) }));
    expectBinding(agree({ ...campus, funds: [tinyFund('capital', 24_000, { carry: 0 })] }));
  });

  test('works come first: what they have taken is not changed', () => {
    const works = { ...UNSURE_WORKS, from: fiscalYear(2033), to: fiscalYear(2033) };
    const campus = tinyCampus({ candidates: [CHANGING], laterChanges: CHANGES });
    expect(agree({ ...campus, construction: [works] }).passing).toBe(7);
  });

  test('a returned site counts only where the promise says so', () => {
    const returning = tinySite('A', { laterChanges: ['to-lawn'] });
    const campus = tinyCampus({ candidates: [returning], laterChanges: [TO_LAWN] });
    const by = fiscalYear(2029);
    const passing = (returnedCounts: { returnedCounts?: true }) =>
      agree({
        ...campus,
        commitments: [
          promise('n', 'binding', {
            kind: 'named-site',
            site: 'A',
            by,
            buildTypes: 'any',
            ...returnedCounts,
          }),
        ],
      }).passing;
    expect(passing({})).toBe(4);
    expect(passing({ returnedCounts: true })).toBe(8);
  });

  test('food alone forbids what would not be food later', () => {
    const fruit = promise('food', 'binding', { kind: 'only-build-types', buildTypes: ['fruit'] });
    const campus = tinyCampus({ candidates: [CHANGING], laterChanges: CHANGES });
    expect(agree({ ...campus, commitments: [fruit] }).passing).toBe(1 + 3 + 3);
  });
});

describe('a published plan', () => {
  const published = {
    name: 'Plan of January',
    date: '2027-01-15',
    frozenThrough: fiscalYear(2028),
    placements: [
      { site: 'A', buildType: 'fruit', year: fiscalYear(2028), announced: true },
      { site: 'B', buildType: 'beds', year: fiscalYear(2029), announced: false },
    ],
    hires: [],
    announcedWeight: 5,
    otherWeight: 1,
  };

  test('its frozen years are kept, later ones are free', () => {
    // A as published; B nothing or 2 types x FY29, FY30
    expect(agree(tinyCampus({ published })).passing).toBe(5);
    const second = { ...published, frozenThrough: fiscalYear(2029) };
    expect(agree(tinyCampus({ published: second })).passing).toBe(1);
  });

  test('a frozen first half leaves the second open', () => {
    const campus = tinyCampus({ candidates: [HALVES], published });
    expect(agree(campus).passing).toBe(2);
  });

  test('its hires in frozen years are made, and no others there', () => {
    const hours = { summer: centiHours(50_00), fall: centiHours(50_00) };
    const position = {
      id: 'gardener',
      name: 'Gardener',
      term: 'recurring' as const,
      tasks: ['care-food', 'care-other', 'harvest', 'plant'] as const,
      startSeason: 'fall',
      leadMonths: 20,
      hours,
      firstYearHours: hours,
      annualCost: cents(1_000_00),
      firstYearCost: cents(1_000_00),
      oneTimeCost: cents(0),
      most: 1,
      provenance: { basis: 'judgement' as const, source: 'a test' },
    };
    const hires = [{ position: 'gardener', year: fiscalYear(2028), count: 1 }];
    const one = { ...published, placements: published.placements.slice(0, 1) };
    const campus = tinyCampus({ candidates: [tinySite('A')], positions: [position] });
    expect(agree({ ...campus, published: { ...one, hires } }).passing).toBe(1);
    // without it: none, or one of FY29 or FY30 once the lead time is over
    expect(agree({ ...campus, published: one }).passing).toBe(3);
  });
});

test('a row of a life that was tampered with is caught', () => {
  const campus = tinyCampus({
    candidates: [BOTH],
    laterChanges: CHANGES,
    pools: crew(66),
    funds: [tinyFund('capital', 24_000, { carry: 0 })],
  });
  const charges = campusCharges(campus);
  const all = everyDecision(campus).map((decisions) => {
    const { plan } = completePlan(campus, decisions, charges);
    const passes = plan.unserved.length === 0 && checkPlan(campus, plan).length === 0;
    return { decisions, passes };
  });
  const good = hardModel(campus);
  const disagreements = (label: string, factor: number) => {
    const rowUpper = good.model.rowUpper.map((v, r) =>
      good.model.rowLabels[r]?.startsWith(label) ? v * factor : v,
    );
    const model = { ...good, model: { ...good.model, rowUpper } };
    return all.filter((a) => rowsHold(solver, model, a.decisions) !== a.passes).length;
  };
  expect(disagreements('labor', 1)).toBe(0);
  expect(disagreements('labor', 0.7)).toBeGreaterThan(0);
  expect(disagreements('fund-vintage', 0.6)).toBeGreaterThan(0);
});
