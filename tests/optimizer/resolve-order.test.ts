/**
 * Re-solves of tiny programs beside trying every decision: what is called impossible has no plan among
 * all of them, and what is found passes every check. No outside source is needed.
 */
import { beforeAll, expect, test } from 'vitest';
import fc from 'fast-check';
import type { Campus } from '#domain/campus.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import type { Solver } from '#mip/solver.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import type { ResolveOrder } from '#optimizer/resolve/order.js';
import { resolveOrder } from '#optimizer/resolve/resolve-order.js';
import { compareTiers } from '#optimizer/tiers/tier-values.js';
import { checkPlan } from '#rules/check-plan.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { everyDecision } from '../support/tiny/every-decision.js';
import { promise, siteAYear } from '../support/tiny/promises.js';
import { tinyCampus, tinyFund, tinyPool, tinySite } from '../support/tiny/tiny-campus.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

const answer = (order: Partial<ResolveOrder> & Pick<ResolveOrder, 'campus' | 'wish'>) =>
  resolveOrder(
    { seed: 1, effort: { kind: 'rounds', rounds: 5 }, ...order },
    { solver, elapsed: () => 0 },
  );

function somePlanPasses(campus: Campus): boolean {
  const charges = campusCharges(campus);
  return everyDecision(campus).some((decisions) => {
    const { plan, shortages } = completePlan(campus, decisions, charges);
    return shortages.length === 0 && checkPlan(campus, plan).length === 0;
  });
}

interface Means {
  readonly dollars: number;
  readonly crew: number;
  readonly count: number;
  readonly through: number;
}

const withMeans = ({ dollars, crew, count, through }: Means) =>
  tinyCampus({
    funds: [tinyFund('capital', dollars)],
    pools: [tinyPool('crew', crew)],
    commitments: [
      promise('yearly', 'binding', {
        kind: 'sites-each-year',
        count,
        from: fiscalYear(2028),
        to: fiscalYear(through),
        countsFromSqFt: 1000,
      }),
      promise('care', 'binding', {
        kind: 'no-unserved-care',
        classes: ['care-food', 'care-other', 'harvest'],
        seasons: 'all',
      }),
    ],
  });

const tight = fc
  .record({
    dollars: fc.integer({ min: 5_000, max: 50_000 }),
    crew: fc.integer({ min: 20, max: 200 }),
    count: fc.constantFrom(1, 2),
    through: fc.integer({ min: 2028, max: 2030 }),
  })
  .map(withMeans);

const ENOUGH = withMeans({ dollars: 500_000, crew: 1000, count: 1, through: 2028 });
const TOO_LITTLE = withMeans({ dollars: 5_000, crew: 20, count: 2, through: 2030 });

test('a plan exists by re-solving exactly where one exists by trying everything', () => {
  const seen = new Set<string>();
  fc.assert(
    fc.property(tight, (campus) => {
      const { ending, plan } = answer({ campus, wish: 'exists' });
      seen.add(ending);
      expect(ending).toBe(somePlanPasses(campus) ? 'found' : 'impossible');
      if (plan) expect(checkPlan(campus, plan)).toEqual([]);
    }),
    { numRuns: 20, examples: [[ENOUGH], [TOO_LITTLE]] },
  );
  expect([...seen].sort()).toEqual(['found', 'impossible']);
});

test('searching on from a plan never ends with a worse one, and the bounds hold', () => {
  const campus = tinyCampus({ funds: [tinyFund('capital', 40_000)] });
  const best = answer({ campus, wish: 'best', effort: { kind: 'proven' } });
  const late = [{ site: 'A', buildType: 'beds', year: fiscalYear(2030) }];
  const start = { placements: late, hires: [], workDays: [], purchases: [] };
  const begun = answer({ campus, wish: 'best', start, effort: { kind: 'rounds', rounds: 0 } });
  const searched = answer({ campus, wish: 'best', start, effort: { kind: 'rounds', rounds: 30 } });
  expect(begun.plan?.decisions.placements).toEqual(late);
  expect(compareTiers(campus, searched.values, begun.values)).toBeLessThanOrEqual(0);
  expect(searched.rounds).toBe(30);
  const { bounds } = answer({ campus, wish: 'bound', start });
  expect(bounds[0]).toBe(0);
  expect(bounds[2]).toBeGreaterThanOrEqual((best.values[2] ?? NaN) - 1e-6);
});

test('a site forced into a year leaves no promised year empty where the others can move up', () => {
  const site = (id: string) => tinySite(id, { areaSqFt: 2000, buildTypes: ['beds'] });
  const campus = tinyCampus({
    candidates: [site('A'), site('B'), site('C')],
    handPlacements: [{ kind: 'fixed', site: 'C', year: fiscalYear(2028), reason: 'a test' }],
    commitments: [promise('yearly', 'intended', siteAYear(2028, 2030))],
  });
  const at = (id: string, year: number) => ({
    site: id,
    buildType: 'beds',
    year: fiscalYear(year),
  });
  const placements = [at('A', 2028), at('B', 2029), at('C', 2030)];
  const start = { placements, hires: [], workDays: [], purchases: [] };
  const { plan, values } = answer({
    campus,
    wish: 'best',
    start,
    effort: { kind: 'rounds', rounds: 0 },
  });
  expect(plan && checkPlan(campus, plan)).toEqual([]);
  expect(values[2]).toBe(0);
  expect(plan?.decisions.placements.find((p) => p.site === 'C')?.year).toBe(2028);
});

test('several searches on one set-up come to what each comes to alone, and the best of them is the answer', () => {
  const campus = tinyCampus({ funds: [tinyFund('capital', 40_000)] });
  const late = [{ site: 'A', buildType: 'beds', year: fiscalYear(2030) }];
  const start = { placements: late, hires: [], workDays: [], purchases: [] };
  const of = { campus, wish: 'best', start, effort: { kind: 'rounds', rounds: 3 } } as const;
  const seeds = [1, 2, 3];
  const alone = seeds.map((seed) => answer({ ...of, seed }).values);
  const runs = seeds.map((seed) => ({ seed }));
  const together = answer({ ...of, runs });
  expect(together.runs?.map((run) => run.values)).toEqual(alone);
  const [best] = [...alone].sort((a, b) => compareTiers(campus, a, b));
  expect(together.values).toEqual(best);
  expect(together.rounds).toBe(9);
  const ahead = answer({ campus, wish: 'best', effort: { kind: 'proven' } });
  const from = { decisions: ahead.plan?.decisions ?? start, values: ahead.values };
  const begun = answer({ ...of, runs: [{ seed: 1, from }], effort: { kind: 'rounds', rounds: 0 } });
  expect(begun.runs).toEqual([from]);
  expect(begun.plan && checkPlan(campus, begun.plan)).toEqual([]);
  expect(begun.values).toEqual(ahead.values);
});
