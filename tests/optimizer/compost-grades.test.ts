/** Compost of two grades followed season by season; the numbers are round, so the sums are done by hand. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CompostSupply } from '#domain/compost.js';
import { NO_DECISIONS, type CompostPurchase, type Placement, type Plan } from '#domain/plan.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { allocateCompost, purchasesFor, yardsToBuy } from '#optimizer/allocate/compost.js';
import { everyLifecycle } from '#optimizer/columns/lifecycles.js';
import { applyLife, emptyState, purchasesOf } from '#optimizer/search/state.js';
import { tablesOf } from '#optimizer/search/tables.js';
import { checkCompost } from '#rules/compost/check.js';
import { centiYards } from '#units/centiyards.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { tinyCampus, tinySite } from '../support/tiny/tiny-campus.js';

const FIRST = fiscalYear(2028);
const campusWith = (change: Partial<CompostSupply>) =>
  tinyCampus({
    candidates: [tinySite('A', { areaSqFt: 3240 }), tinySite('B', { areaSqFt: 3240 })],
    materialWaste: 0,
    compost: {
      ...tinyCampus().compost,
      made: {},
      topDressFromAge: 90,
      openingStock: centiYards(40_00),
      yard: centiYards(60_00),
      mostBoughtPerSeason: 50,
      other: {
        made: {},
        openingStock: centiYards(20_00),
        pricePerYard: cents(15_00),
        mostBoughtPerSeason: 50,
      },
      ...change,
    },
  });

/** Beds on A and fruit on B take 3,240 sf x 3 in / 324 = 30 cy each. */
const beds: Placement = { site: 'A', buildType: 'beds', year: FIRST };
const fruit: Placement = { site: 'B', buildType: 'fruit', year: FIRST };

const planOf = (placements: Placement[], purchases: CompostPurchase[] = []) => {
  const campus = campusWith({});
  const decisions = { ...NO_DECISIONS, placements, purchases };
  const { compost, shortages } = allocateCompost(campus, decisions, campusCharges(campus));
  const plan: Plan = { decisions, compost, labor: [], unserved: [], spending: [] };
  return { campus, compost, shortages, breaches: checkCompost(campus, plan), plan };
};

describe('what a season takes of which grade', () => {
  test('beds without food take the other grade first', () => {
    const { compost, breaches } = planOf([beds]);
    expect(compost[1]).toEqual({
      season: 1,
      stock: 30_00,
      givenAway: 0,
      certified: { stock: 30_00, givenAway: 0 },
    });
    expect(breaches).toEqual([]);
  });

  test('food ground takes certified compost alone, though there is enough of both together', () => {
    const twice = { ...fruit, site: 'A' };
    const { shortages, breaches } = planOf([fruit, twice]);
    expect(shortages).toEqual([{ resource: 'compost', at: 1, amount: 20_00, grade: 'certified' }]);
    expect(breaches.map(({ message }) => message)).toEqual([
      expect.stringMatching(/certified compost does not balance in fall 2027.* 60 for food ground/),
    ]);
    expect(
      planOf([fruit, twice], [{ season: 1, grade: 'other', cubicYards: 20 }]).breaches,
    ).toHaveLength(1);
    expect(planOf([fruit, twice], [{ season: 1, cubicYards: 20 }]).breaches).toEqual([]);
  });

  test('a plan that calls other compost certified is caught, and one that says nothing', () => {
    const { campus, plan } = planOf([beds]);
    const told = (certified: Plan['compost'][number]['certified']) =>
      checkCompost(campus, {
        ...plan,
        compost: plan.compost.map(({ season, stock, givenAway }) => ({
          season,
          stock,
          givenAway,
          ...(certified ? { certified } : {}),
        })),
      });
    expect(told({ stock: centiYards(30_01), givenAway: centiYards(0) })[0]?.message).toMatch(
      /certified compost does not balance/,
    );
    expect(told(undefined)[0]?.message).toMatch(
      /does not say how much of its compost is certified/,
    );
  });
});

describe('what is bought', () => {
  const supply = campusWith({}).compost;
  test('certified for food, the cheaper grade for the rest, up to its limit', () => {
    const left = { all: -70_50, certified: -10_25 };
    expect(yardsToBuy(supply, left)).toEqual([
      { grade: 'certified', yards: 21 },
      { grade: 'other', yards: 50 },
    ]);
    const dear = { ...supply, pricePerYard: cents(15_00) };
    expect(yardsToBuy(dear, left)).toEqual([{ grade: 'certified', yards: 71 }]);
  });

  test('the search buys what a worked-out plan buys, and no season of it is short', () => {
    const amount = fc.integer({ min: 0, max: 80_00 });
    fc.assert(
      fc.property(
        fc.record({ certified: amount, other: amount, made: amount, picks: fc.array(fc.nat()) }),
        ({ certified, other, made, picks }) => {
          const campus = campusWith({
            openingStock: centiYards(certified),
            topDressFromAge: 1,
            mostBoughtPerSeason: 1000,
            other: {
              made: { winter: centiYards(made) },
              openingStock: centiYards(other),
              pricePerYard: cents(15_00),
              mostBoughtPerSeason: 10,
            },
          });
          const charges = campusCharges(campus);
          const lifecycles = everyLifecycle(campus, charges);
          const state = emptyState(tablesOf({ campus, charges, lifecycles }));
          const taken = new Map(
            picks.map((pick) => lifecycles[pick % lifecycles.length]!).map((l) => [l.site, l]),
          );
          for (const life of taken.values()) applyLife(state, life, 1);
          const placements = [...taken.values()].map((l) => l.placement);
          const purchases = purchasesFor(campus, { ...NO_DECISIONS, placements }, charges);
          expect(purchasesOf(state)).toEqual(purchases);
          const decisions = { ...NO_DECISIONS, placements, purchases };
          const { compost, shortages } = allocateCompost(campus, decisions, charges);
          expect(shortages).toEqual([]);
          const plan: Plan = { decisions, compost, labor: [], unserved: [], spending: [] };
          expect(checkCompost(campus, plan)).toEqual([]);
        },
      ),
      { numRuns: 40 },
    );
  });
});
