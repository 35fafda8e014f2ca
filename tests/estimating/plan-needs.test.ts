/** What a plan must pay and spread, worked out by hand from the tiny campus. */
import { describe, expect, test } from 'vitest';
import type { PositionType } from '#domain/labor.js';
import { NO_DECISIONS, type Decisions, type Placement } from '#domain/plan.js';
import { compostNeeds } from '#estimating/plan-needs/compost-needs.js';
import {
  buildCostOf,
  compostPrice,
  moneyNeeds,
  positionCostIn,
} from '#estimating/plan-needs/money-needs.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { centiYards } from '#units/centiyards.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { NO_FACTS, tinyCampus, tinySite } from '../support/tiny/tiny-campus.js';

const INVENTED = { basis: 'judgement', source: 'invented for a test' } as const;
const campus = tinyCampus();
const beds: Placement = { site: 'A', buildType: 'beds', year: fiscalYear(2028) };
const fruit: Placement = { site: 'A', buildType: 'fruit', year: fiscalYear(2028) };
const deciding = (change: Partial<Decisions>): Decisions => ({ ...NO_DECISIONS, ...change });
const planting = (...placements: Placement[]) => deciding({ placements });

/** Stands since spring 2026: running index -5 where spring 2028 is 3. */
const { costFactor: _, buildTypes: __, notes: ___, ...ground } = tinySite('OLD');
const standing = tinyCampus({
  existing: [{ ...ground, stage: 'existing', buildType: 'beds', plantedYear: 2026 }],
});

const gardener: PositionType = {
  id: 'gardener',
  name: 'Gardener',
  term: 'recurring',
  tasks: ['care-food'],
  startSeason: 'fall',
  leadMonths: 6,
  hours: {},
  firstYearHours: {},
  annualCost: cents(60_000_00),
  firstYearCost: cents(45_000_00),
  oneTimeCost: cents(5_000_00),
  most: 2,
  provenance: INVENTED,
};

describe('Supplies of a site of 5,000 sf, half of it bed', () => {
  const paid = (of: ReturnType<typeof moneyNeeds>) =>
    Object.fromEntries(of.care.map((c) => [c.yearIndex, c.amount]));

  test('are $250 a year, from planting on, at prices of the year', () => {
    // Spring is 30 % of $250; a third of summer's 40 % falls in June, before the fiscal year opens.
    const all = paid(moneyNeeds(campus, planting(beds)));
    expect(Object.keys(all)).toEqual(['0', '1', '2', '3', '4', '5', '6', '7']);
    expect(all[0]).toBe(75_00 + 33_34);
    expect(all[1]).toBe(250_00 * 1.03);
    expect(all[4]).toBe(Math.round(250_00 * 1.03 ** 4));
    expect(all[7]).toBe(Math.round((250_00 - 33_34) * 1.03 ** 7));
  });

  test('are none in the years before it is planted', () => {
    const later = moneyNeeds(campus, planting({ ...beds, year: fiscalYear(2030) })).care;
    expect(later.map(({ yearIndex }) => yearIndex)).toEqual([2, 3, 4, 5, 6, 7]);
  });

  test('are paid from the first season on where the site stands already', () => {
    const all = paid(moneyNeeds(standing, NO_DECISIONS));
    expect(all[0]).toBe(250_00);
    expect(all[1]).toBe(250_00 * 1.03);
    const [first] = moneyNeeds(standing, NO_DECISIONS).care;
    expect(first).toMatchObject({ site: 'OLD', buildType: 'beds' });
  });
});

describe('Capital', () => {
  test('is one bill in the year of preparing, and a later change asks for none', () => {
    const lawn = {
      id: 'lawn',
      name: 'Lawn',
      from: 'any' as const,
      ages: [5] as const,
      costPerSqFt: cents(1_00),
      hoursPer1000SqFt: 6,
      provenance: INVENTED,
    };
    const changed = { ...beds, year: fiscalYear(2029), change: { id: 'lawn', age: 5 } };
    expect(moneyNeeds(tinyCampus({ laterChanges: [lawn] }), planting(changed)).build).toEqual([
      { site: 'A', buildType: 'beds', yearIndex: 1, amount: 5000 * 8_00 * 1.04 },
    ]);
  });

  test('of two halves is the sum of both bills, under the first year', () => {
    const halves = { ...beds, secondHalf: fiscalYear(2030) };
    expect(buildCostOf(campus, halves, campusCharges(campus))).toEqual({
      site: 'A',
      buildType: 'beds',
      yearIndex: 0,
      amount: 2500 * 8_00 + Math.round(2500 * 8_00 * 1.04 ** 2),
    });
  });
});

describe('Positions', () => {
  const ranger = { ...gardener, id: 'ranger', annualCost: cents(1_00) };
  const campusOf = (position: PositionType) => tinyCampus({ positions: [ranger, position] });
  const yearly = (position: PositionType, count = 2) =>
    moneyNeeds(
      campusOf(position),
      deciding({ hires: [{ position: 'gardener', year: fiscalYear(2029), count }] }),
    ).positions;

  test('cost their first year with what is bought once, then the full year at grown wages', () => {
    expect(yearly(gardener).slice(0, 4)).toEqual([
      0,
      2 * 50_000_00 * 1.02,
      2 * Math.round(60_000_00 * 1.02 ** 2),
      2 * Math.round(60_000_00 * 1.02 ** 3),
    ]);
    expect(yearly(gardener)).toHaveLength(8);
  });

  test('of one season cost nothing afterwards', () => {
    expect(yearly({ ...gardener, term: 'one-season' }).slice(0, 3)).toEqual([
      0,
      2 * 50_000_00 * 1.02,
      0,
    ]);
  });

  test('cost nothing before they start', () => {
    const at = { campus, position: gardener, startYear: 2 };
    expect(positionCostIn({ ...at, yearIndex: 1 })).toBe(0);
    expect(positionCostIn({ ...at, yearIndex: 3 })).toBe(Math.round(60_000_00 * 1.02 ** 3));
  });

  test('that the campus does not have are refused by name', () => {
    const hires = [{ position: 'pilot', year: fiscalYear(2028), count: 1 }];
    expect(() => moneyNeeds(campus, deciding({ hires }))).toThrow('pilot');
  });
});

describe('Compost bought and standing costs', () => {
  const other = {
    made: { spring: centiYards(7_00) },
    openingStock: centiYards(0),
    pricePerYard: cents(25_00),
    mostBoughtPerSeason: 10,
  };
  const graded = tinyCampus({ compost: { ...campus.compost, other } });

  test('each grade has its price, at the year in which it is bought', () => {
    const purchases = [
      { season: 1, cubicYards: 3 },
      { season: 5, cubicYards: 2, grade: 'other' as const },
      { season: 7, cubicYards: 1 },
    ];
    const { compost } = moneyNeeds(graded, deciding({ purchases }));
    expect(compost.slice(0, 3)).toEqual([3 * 40_00, 2 * 25_75 + 41_20, 0]);
    expect(compostPrice(graded, 2)).toBe(Math.round(40_00 * 1.03 ** 2));
  });

  test('standing costs follow the price growth that they name', () => {
    const standingCosts = [
      { id: 'rent', name: 'Rent', annual: cents(1_000_00), escalation: 'wages' as const },
      { id: 'fuel', name: 'Fuel', annual: cents(500_00), escalation: 'supplies' as const },
    ];
    const paid = moneyNeeds(tinyCampus({ standingCosts }), NO_DECISIONS).standing;
    expect(paid.slice(0, 2)).toEqual([1_500_00, 1_020_00 + 515_00]);
  });

  test('what is made of both grades is named, and what of it is certified', () => {
    const seasons = compostNeeds(graded, NO_DECISIONS);
    expect(seasons).toHaveLength(32);
    expect(seasons[3]).toEqual({
      made: 207_00,
      builds: 0,
      topDress: 0,
      certified: { made: 200_00, needed: 0 },
    });
    expect(seasons[2]?.made).toBe(0);
    expect(compostNeeds(campus, NO_DECISIONS)[3]?.made).toBe(200_00);
  });
});

describe('Compost of a site of 5,000 sf', () => {
  // 3 in over all of it with 5 % waste; each spring from age 2 on, half an inch on the half that is bed.
  const built = Math.round(((5000 * 3) / 324) * 1.05 * 100);
  const dressed = Math.ceil(((2500 * 0.5) / 324) * 100);

  test('is laid when it is prepared, and spread each spring from age 2 on', () => {
    const seasons = compostNeeds(campus, planting(beds));
    expect(seasons.flatMap((s, index) => (s.builds > 0 ? [[index, s.builds]] : []))).toEqual([
      [1, built],
    ]);
    const spread = seasons.flatMap((s, index) => (s.topDress > 0 ? [[index, s.topDress]] : []));
    expect(spread).toEqual([7, 11, 15, 19, 23, 27, 31].map((index) => [index, dressed]));
    expect(seasons.every((s) => s.certified.needed === 0)).toBe(true);
  });

  test('must be certified where food grows', () => {
    const seasons = compostNeeds(campus, planting(fruit));
    expect(seasons[1]?.certified.needed).toBe(built);
    expect(seasons[7]?.certified.needed).toBe(dressed);
    expect(seasons[3]?.certified.needed).toBe(0);
    const two = compostNeeds(campus, planting(fruit, { ...fruit, site: 'B' }));
    expect(two[1]?.certified.needed).toBe(two[1]?.builds);
    expect(two[1]?.builds).toBeGreaterThan(1.5 * built);
  });

  test('is spread on what stands already too', () => {
    const seasons = compostNeeds(standing, NO_DECISIONS);
    expect(seasons[3]?.topDress).toBe(dressed);
    expect(seasons[1]?.builds).toBe(0);
  });

  test('of several sites is rounded up once for all together', () => {
    const [a, b] = [tinySite('A', { areaSqFt: 4900 }), tinySite('B', { areaSqFt: 4900 })];
    const both = tinyCampus({ candidates: [a, b] });
    const spread = (...placements: Placement[]) =>
      compostNeeds(both, planting(...placements))[7]?.topDress;
    // 378.09 and 756.17 hundredths
    expect(spread(beds)).toBe(379);
    expect(spread(beds, { ...beds, site: 'B' })).toBe(757);
  });

  test('is thinner in root protection', () => {
    // The default allows 1 in there: half of it at 1 in, half at 3 in, is 2 in.
    const rooted = tinyCampus({
      candidates: [
        tinySite('A', { facts: { ...NO_FACTS, rootProtectedShare: { known: true, value: 0.5 } } }),
      ],
    });
    expect(compostNeeds(rooted, planting(beds))[1]?.builds).toBe(
      Math.round(((5000 * 2) / 324) * 1.05 * 100),
    );
  });
});
