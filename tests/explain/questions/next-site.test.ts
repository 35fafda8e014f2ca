/**
 * Next year's choices on tiny campuses, where every choice is solved until proven. The outside answer is
 * brute force: the best of all decisions with the choice, tier by tier; regret is the difference of two.
 */
import { beforeAll, expect, test } from 'vitest';
import { nextSite } from '#explain/questions/next-site/next-site.js';
import { worseBy } from '#explain/questions/common/worse-by.js';
import type { Solver } from '#mip/solver.js';
import { compareTiers } from '#optimizer/tiers/tier-values.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { askedOf } from '../../support/explain/asked-of.js';
import { bestByFirstYear } from '../../support/explain/best-by-first-year.js';
import { promise, siteAYear } from '../../support/tiny/promises.js';
import { tinyCampus, tinyFund, tinySite } from '../../support/tiny/tiny-campus.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

const walked = (id: string, walkersPerDay: number, areaSqFt = 4000) =>
  tinySite(id, {
    areaSqFt,
    buildTypes: ['beds'],
    facts: { ...tinySite(id).facts, walkersPerDay: { known: true, value: walkersPerDay } },
  });

const campus = tinyCampus({
  candidates: [walked('A', 1000), walked('B', 3000), walked('C', 500, 2500)],
  funds: [tinyFund('capital', 34_000, { carry: 0 })],
  calendar: { ...tinyCampus().calendar, horizonYears: 2 },
  commitments: [promise('yearly', 'intended', siteAYear(2028, 2029))],
});

test('regret is what brute force says, and every choice is in the list', async () => {
  const answer = await nextSite(askedOf(campus, solver));
  expect(answer.choices.map((c) => c.id).sort()).toEqual(['A', 'A+B', 'B', 'C', 'none'].sort());
  const best = bestByFirstYear(campus);
  const exact = answer.choices.map((c) => ({ c, values: best.get(c.sites.join('+')) }));
  const [top] = exact
    .filter((e) => e.values)
    .sort((a, b) => compareTiers(campus, a.values ?? [], b.values ?? []));
  expect(answer.choices[0]?.standing).toBe('recommended');
  expect(answer.choices[0]?.id).toBe(top?.c.id);
  for (const { c, values } of exact) {
    if (!values) expect(c.standing).toBe('impossible');
    else if (c.regret) {
      const reached = (v: readonly number[]) => ({ values: v, bounds: v });
      const due = worseBy(campus, reached(top?.values ?? []), reached(values));
      expect(c.regret.tier).toBe(due.tier);
      expect(c.regret.found).toBeCloseTo(due.found, 3);
      expect(c.regret.least).toBeLessThanOrEqual(due.found + 1e-3);
      expect(c.regret.most ?? Infinity).toBeGreaterThanOrEqual(due.found - 1e-3);
      if (due.found > 0.01) expect(c.standing).toBe('worse');
    }
  }
});

test('building none breaks the promise before any benefit is weighed, and says so', async () => {
  const { choices } = await nextSite(askedOf(campus, solver));
  const none = choices.find((c) => c.id === 'none');
  expect(none?.regret).toMatchObject({ tier: 'commitment:yearly', found: 1, least: 1, most: 1 });
  expect(none?.sentence).toBe(
    'Worse, proven: a shortfall of “yearly” greater by 1 site, neither more nor less.',
  );
});

test('a site that only a missing test bars is named with what to find out', async () => {
  const gate = {
    kind: 'contamination',
    status: 'unknown',
    note: 'The soil test is missing.',
    bars: 'all',
    clearedBy: 'A soil test',
  } as const;
  const candidates = [...campus.candidates, { ...walked('D', 1000, 4200), gates: [gate] }];
  const { couldBecome, headline } = await nextSite(askedOf({ ...campus, candidates }, solver));
  expect(couldBecome.map((c) => c.site)).toEqual(['D']);
  expect(couldBecome[0]?.findOut[0]?.clearedBy).toBe('A soil test');
  expect(couldBecome[0]?.ifPassed?.sentence).toContain('found better');
  expect(headline).toContain('1 more site needs a test or permit before it could compete.');
});

test('two sites alike cannot be told apart', async () => {
  const twins = { ...campus, candidates: [walked('A', 1000), walked('B', 1000)] };
  const { choices } = await nextSite(askedOf(twins, solver));
  expect(
    choices
      .filter((c) => c.sites.length === 1)
      .map((c) => c.standing)
      .sort(),
  ).toEqual(['recommended', 'tied']);
});
