/**
 * The year in which equal sites break a flat capacity, beside the closed form: a component asks for
 * m(a) = m∞ + (m1 - m∞) e^(-k(a-1)) hours per 1,000 sf at age a, so n sites built a year apart ask for
 * the sum over ages 1 to n. The capacity and its answer (1,306 summer hours: short with 12 sites) are
 * an outside calculation given with the coefficients; the code under test has no part in it.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import { COMPONENTS } from '#domain/component.js';
import type { LimitsAnswer } from '#explain/questions/limits/answer.js';
import { limits } from '#explain/questions/limits/limits.js';
import type { Solver } from '#mip/solver.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { planOf } from '../../support/small-campus.js';
import { equalSites, MIX, SHARES, siteHours } from '../../support/explain/equal-sites.js';
import { hereResolver } from '../../support/explain/here-resolver.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

const YEARS = 13;
const SUMMER_HOURS = 1306;

function sitesThatBreak(capacity: number, share: number): number {
  let total = 0;
  for (let n = 1; ; n++) {
    total += siteHours(n) * share;
    if (total > capacity) return n;
  }
}

describe('equal sites, one a year', () => {
  const campus = equalSites(YEARS, { summer: SUMMER_HOURS });
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
    expect(sitesThatBreak(SUMMER_HOURS, SHARES.summer)).toBe(12);
    expect(COMPONENTS.every((c) => c in MIX)).toBe(true);
  });

  test('a plan of one a year is short in the first summer after the twelfth is planted', async () => {
    const { ofPlan } = await answer();
    const summer = ofPlan.find((l) => l.resource === 'summer hours');
    expect(summer?.year).toBe(`FY${28 + sitesThatBreak(SUMMER_HOURS, SHARES.summer)}`);
  });

  test('the promise can be kept for eleven years, and no longer is proven, by summer hours and by all together', async () => {
    const { ofPromise, together, headline } = await answer();
    const summer = ofPromise.find((l) => l.id === 'summer-hours');
    const last = 28 + sitesThatBreak(SUMMER_HOURS, SHARES.summer) - 2;
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
