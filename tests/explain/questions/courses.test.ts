/**
 * What promises, additions and other years for a site cost, on a tiny campus solved until proven. The
 * outside answer is the difference of two plans, each solved on its own and verified.
 */
import { beforeAll, expect, test } from 'vitest';
import type { Campus } from '#domain/campus.js';
import { additions } from '#explain/questions/additions/additions.js';
import { leversOf } from '#explain/questions/additions/levers.js';
import { planMeasures } from '#explain/questions/common/plan-measures.js';
import { attributeChanges } from '#explain/questions/compare/attribute-changes.js';
import { comparePlans } from '#explain/questions/compare/compare-plans.js';
import { promises } from '#explain/questions/promises/promises.js';
import { skippingYears } from '#explain/questions/promises/skipping.js';
import { yearlyPromise } from '#explain/questions/limits/prefix.js';
import { why } from '#explain/questions/why/why.js';
import type { Solver } from '#mip/solver.js';
import { checkPlan } from '#rules/check-plan.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { askedOf } from '../../support/explain/asked-of.js';
import { promise, siteAYear } from '../../support/tiny/promises.js';
import { tinyCampus, tinyFund, tinySite, tinyType } from '../../support/tiny/tiny-campus.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

const bed = (id: string, areaSqFt: number) => tinySite(id, { areaSqFt, buildTypes: ['beds'] });

/** Money for the large site needs two years' saving, which the yearly promise does not leave. */
const campus: Campus = tinyCampus({
  candidates: [bed('A', 5400), bed('B', 2000), bed('C', 2000)],
  funds: [tinyFund('capital', 23_000, { carry: 1 })],
  calendar: { ...tinyCampus().calendar, horizonYears: 2 },
  commitments: [promise('yearly', 'intended', siteAYear(2028, 2029))],
});

test('the price of a promise is the difference of two verified plans', async () => {
  const { promises: prices, skipping, lastKept } = await promises(askedOf(campus, solver));
  const free = { ...campus, commitments: [] };
  const [withIt, without] = [askedOf(campus, solver).plan, askedOf(free, solver).plan];
  expect(checkPlan(campus, withIt)).toEqual([]);
  expect(checkPlan(free, without)).toEqual([]);
  const [a, b] = [planMeasures(campus, withIt), planMeasures(campus, without)];
  expect(prices[0]?.withIt).toEqual(a);
  expect(prices[0]?.withoutIt).toEqual(b);
  expect(b.benefitPoints).toBeGreaterThan(a.benefitPoints);
  expect(prices[0]?.benefitCost?.found).toBeCloseTo(b.benefitPoints - a.benefitPoints, 6);
  expect(prices[0]?.changes.find((c) => c.measure === 'sitesBuilt')?.change).toBe(
    b.sitesBuilt - a.sitesBuilt,
  );
  expect(lastKept).toBe('FY29');
  expect(skipping.map((s) => s.years)).toEqual([['FY28']]);
});

test('a year let go splits a yearly promise round it', () => {
  const tests = (skipped: number[]) =>
    skippingYears(campus, yearlyPromise(campus), skipped.map(fiscalYear)).commitments.map(
      ({ test: t }) => (t.kind === 'sites-each-year' ? [t.from, t.to] : []),
    );
  expect(tests([])).toEqual([[2028, 2029]]);
  expect(tests([2028])).toEqual([[2029, 2029]]);
  expect(tests([2029, 2028])).toEqual([]);
  expect(tests([2040])).toEqual([[2028, 2029]]);
});

test('more money is never found worse, and what it buys is told for the money', async () => {
  const { additions: rows, base } = await additions(askedOf(campus, solver));
  const money = rows.find((r) => r.kind === 'money');
  expect(base?.areaBuiltSqFt).toBe(4000);
  expect(money?.measures?.areaBuiltSqFt).toBeGreaterThan(5400);
  expect(money?.sentence).toContain('sq ft more');
  for (const row of rows) {
    const sites = row.changes.find((c) => c.measure === 'sitesBuilt')?.change ?? 0;
    const due = row.dollars && sites > 0 ? (sites * 10_000) / row.dollars : null;
    expect(row.sitesPer10000Dollars).toBe(due);
    expect(row.dollarsPerSite).toBe(row.dollars && sites > 0 ? row.dollars / sites : null);
    expect(row.sentence).toContain(row.askBy);
  }
});

test('leave to simplify two sites later is a lever, with the month by which it is decided', () => {
  const longer = {
    ...campus,
    calendar: { ...campus.calendar, horizonYears: 8 },
    candidates: campus.candidates.map((c) => ({ ...c, buildTypes: ['beds', 'meadow'] })),
    buildTypes: [...campus.buildTypes, tinyType('meadow', 'meadow')],
    care: {
      ...campus.care,
      meadow: { ...campus.care.meadow, firstYearHours: 1, matureHours: 1 },
    },
  };
  const at = (site: string, year: number) => ({ site, buildType: 'beds', year: fiscalYear(year) });
  const placements = [at('A', 2028), at('B', 2029), at('C', 2030)];
  const decisions = { placements, hires: [], workDays: [], purchases: [] };
  const plan = { decisions, labor: [], unserved: [], spending: [], compost: [] };
  const lever = leversOf(longer, plan).find(({ kind }) => kind === 'simplified')!;
  const changed = lever.course.start?.placements.filter((p) => p.change) ?? [];
  expect(changed.map(({ site }) => site)).toHaveLength(2);
  expect(changed.every(({ change }) => change?.age === 5)).toBe(true);
  expect(lever.course.name).toContain('to meadow');
  expect(lever.dollars).toBeGreaterThan(0);
  expect(lever.isAsked).toBe(false);
  // Planted in spring 2028 or 2029, and changed five years later.
  expect(lever.askBy).toMatch(/^(March|April) 203[34]$/);
});

test('a site in another year is planned again; a year that a rule bars is named with the rule', async () => {
  const asked = askedOf(
    {
      ...campus,
      candidates: [
        ...campus.candidates.slice(0, 2),
        { ...bed('C', 2500), earliest: fiscalYear(2029) },
      ],
    },
    solver,
  );
  const { places } = await why(asked, { site: 'C', year: 2028 });
  expect(places[0]?.bars).toEqual(['It is open from FY29 on.']);
  const other = await why(asked, { site: 'A', year: 2028 });
  expect(other.places[0]?.sentence).toContain('proven that no plan has it');
});

test('changes turned on one by one add up to the change of all', async () => {
  const richer = { ...campus, funds: [tinyFund('capital', 30_000, { carry: 1 })] };
  const steps = [
    { change: 'funds capital', campus: richer },
    { change: 'commitments yearly left out', campus: { ...richer, commitments: [] } },
  ];
  const { first, last, steps: rows } = await attributeChanges(askedOf(campus, solver), steps);
  const sum = rows
    .flatMap((r) => r.changes)
    .filter((c) => c.measure === 'benefitPoints')
    .reduce((s, c) => s + c.change, 0);
  expect(sum).toBeCloseTo((last?.benefitPoints ?? 0) - (first?.benefitPoints ?? 0), 6);
  const { moved } = comparePlans(
    campus,
    askedOf(campus, solver).plan,
    askedOf({ ...campus, commitments: [] }, solver).plan,
  );
  expect(moved.map((m) => m.site)).toContain('A');
});
