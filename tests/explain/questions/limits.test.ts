/**
 * The year in which equal sites break a flat capacity, beside the closed form: a component asks for
 * m(a) = m∞ + (m1 - m∞) e^(-k(a-1)) hours per 1,000 sf at age a, so n sites built a year apart ask for
 * the sum over ages 1 to n. The capacity and its answer (1,306 summer hours: short with 12 sites) are
 * an outside calculation given with the coefficients; the code under test has no part in it.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import { COMPONENTS, type CareCoefficients, type Component } from '#domain/component.js';
import type { Campus } from '#domain/campus.js';
import type { LimitsAnswer } from '#explain/questions/limits/answer.js';
import { limits } from '#explain/questions/limits/limits.js';
import type { Solver } from '#mip/solver.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { centiHours } from '#units/centihours.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { planOf } from '../../support/small-campus.js';
import { hereResolver } from '../../support/explain/here-resolver.js';
import { promise } from '../../support/tiny/promises.js';
import {
  byComponent,
  tinyCampus,
  tinyFund,
  tinyPool,
  tinySite,
  tinyType,
} from '../../support/tiny/tiny-campus.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

const YEARS = 13;
const AREA = 8500;
const SUMMER_HOURS = 1306;
const SUMMER_SHARE = 0.45;
const SHARES = { summer: SUMMER_SHARE, fall: 0.22, winter: 0.08, spring: 0.25 };

/** Square feet of a 9,600 sf site, and m1, m∞ and k of each component. */
const MIX: Partial<
  Record<Component, readonly [sqFt: number, m1: number, settled: number, k: number]>
> = {
  'annual-bed': [960, 150, 120, 0.7],
  'perennial-bed': [1840, 75, 22, 0.7],
  woody: [2400, 55, 18, 0.6],
  'rain-garden': [800, 60, 20, 0.7],
  meadow: [800, 30, 5, 0.8],
  path: [2800, 8, 8, 0],
};

/** Hours a year of one site at an age, by the closed form. */
function siteHours(age: number): number {
  return Object.values(MIX).reduce((sum, [sqFt, m1, settled, k]) => {
    const hours = settled + (m1 - settled) * Math.exp(-k * (age - 1));
    return sum + (hours * sqFt * (AREA / 9600)) / 1000;
  }, 0);
}

function sitesThatBreak(capacity: number, share: number): number {
  let total = 0;
  for (let n = 1; ; n++) {
    total += siteHours(n) * share;
    if (total > capacity) return n;
  }
}

const careOf = (component: Component): CareCoefficients => {
  const [, m1, settled, k] = MIX[component] ?? [0, 0, 0, 0];
  return {
    ...tinyCampus().care[component],
    firstYearHours: m1,
    matureHours: settled,
    decayPerYear: k,
    seasonShares: SHARES,
    harvestHours: 0,
    suppliesDollars: 0,
    topDressInches: 0,
  };
};

function equalSites(): Campus {
  const base = tinyCampus();
  const shares = byComponent((c) => (MIX[c]?.[0] ?? 0) / 9600);
  const mix = tinyType('mix', 'perennial-bed', {
    shares,
    prepareHoursPer1000SqFt: 0,
    plantHoursPer1000SqFt: 0,
    compostInches: byComponent(() => 0),
  });
  const pool = tinyPool('crew', 100_000);
  return tinyCampus({
    calendar: { ...base.calendar, horizonYears: YEARS },
    candidates: Array.from({ length: YEARS }, (_, i) =>
      tinySite(`S${String(i + 1).padStart(2, '0')}`, { areaSqFt: AREA, buildTypes: ['mix'] }),
    ),
    buildTypes: [mix],
    care: byComponent(careOf),
    pools: [{ ...pool, hours: { ...pool.hours, summer: centiHours(SUMMER_HOURS * 100) } }],
    funds: [tinyFund('capital', 10_000_000, { carry: 30 })],
    commitments: [
      promise('yearly', 'intended', {
        kind: 'sites-each-year',
        count: 1,
        from: fiscalYear(2028),
        to: fiscalYear(2028 + YEARS - 1),
        countsFromSqFt: 1000,
      }),
    ],
  });
}

describe('equal sites, one a year', () => {
  const campus = equalSites();
  const placed = campus.candidates.map((s, i) => [s.id, 'mix', 2028 + i] as const);
  let asked: Promise<LimitsAnswer> | undefined;
  const answer = () =>
    (asked ??= limits({
      campus,
      plan: planOf(campus, placed),
      tiers: [],
      resolver: hereResolver(solver),
      seed: 1,
      effort: { kind: 'rounds', rounds: 5 },
    }));

  test('the closed form is short with 12 sites', () => {
    expect(sitesThatBreak(SUMMER_HOURS, SUMMER_SHARE)).toBe(12);
    expect(COMPONENTS.every((c) => c in MIX)).toBe(true);
  });

  test('a plan of one a year is short in the first summer after the twelfth is planted', async () => {
    const { ofPlan } = await answer();
    const summer = ofPlan.find((l) => l.resource === 'summer hours');
    expect(summer?.year).toBe(`FY${28 + sitesThatBreak(SUMMER_HOURS, SUMMER_SHARE)}`);
  });

  test('the promise can be kept for eleven years, and no longer is proven, by summer hours and by all together', async () => {
    const { ofPromise, together, headline } = await answer();
    const summer = ofPromise.find((l) => l.id === 'summer-hours');
    const last = 28 + sitesThatBreak(SUMMER_HOURS, SUMMER_SHARE) - 2;
    for (const limit of [summer, together[0]]) {
      expect(limit?.keptThrough).toBe(`FY${last}`);
      expect(limit?.impossibleThrough).toBe(`FY${last + 1}`);
    }
    expect(ofPromise[0]?.id).toBe('summer-hours');
    expect(ofPromise.find((l) => l.id === 'winter-hours')?.sentence).toContain(
      'enough in every year',
    );
    expect(headline).toContain('Summer hours alone would end it first');
  });

  test('hours added up over the year hide it', async () => {
    const { annual } = await answer();
    expect(annual.year).toBeNull();
  });
});
