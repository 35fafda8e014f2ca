/** Charges and lives of sites, worked out by hand from the tiny campus: four seasons a year from July on. */
import { describe, expect, test } from 'vitest';
import { seasonInstance } from '#domain/calendar.js';
import type { LaterChange } from '#domain/later-change.js';
import type { Placement } from '#domain/plan.js';
import type { ConstructionConflict, ExistingSite } from '#domain/site.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import {
  ageInSeason,
  caredSeasons,
  existingLife,
  existingPlantIndex,
  lifeOf,
  worksAfter,
} from '#estimating/site-charges/life.js';
import { changeSeason } from '#estimating/site-charges/placed-parts.js';
import { priceGrowth } from '#estimating/site-charges/price-growth.js';
import { seasonDollars } from '#estimating/site-charges/season-money.js';
import { siteCharges } from '#estimating/site-charges/site-charges.js';
import {
  FINE_PARTS,
  FINE_PER_HUNDREDTH,
  hundredthsFor,
  typeProfile,
} from '#estimating/site-charges/type-profile.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { works } from '../support/tiny/works.js';
import { TINY_CALENDAR, tinyCampus, tinySite } from '../support/tiny/tiny-campus.js';

const campus = tinyCampus();
const [beds, fruit] = campus.buildTypes;
const placed: Placement = { site: 'A', buildType: 'beds', year: fiscalYear(2028) };

describe('Charges of a campus', () => {
  test('are worked out once for each site and type, and for each placement', () => {
    const charges = campusCharges(campus);
    expect(charges.of('A', 'beds')).toBe(charges.of('A', 'beds'));
    expect(charges.of('A', 'fruit')).toMatchObject({ site: 'A', buildType: 'fruit' });
    expect(charges.of('B', 'beds')).toMatchObject({ site: 'B', areaSqFt: 3000 });
    expect(charges.parts(placed)).toBe(charges.parts({ ...placed }));
    const [later] = charges.parts({ ...placed, year: fiscalYear(2030) });
    expect(later?.life.planted).toBe(11);
    expect(typeProfile(campus, beds!)).toBe(typeProfile(campus, beds!));
  });

  test('of a site that is not there are refused by name', () => {
    expect(() => campusCharges(campus).of('Z', 'beds')).toThrow('no site Z in Tiny campus');
  });

  test('are in whole square feet, and dearer by the factor of a candidate', () => {
    const dear = siteCharges(campus, tinySite('A', { areaSqFt: 1000.6, costFactor: 1.5 }), 'beds');
    expect(dear.areaSqFt).toBe(1001);
    expect(dear.buildCost).toBe(Math.round(1000.6 * 8_00 * 1.5));
    expect(dear.prepareHours).toBe(30_02);
    expect(dear.plantHours).toBe(10_01);
  });

  test('spread supplies over the seasons as care is', () => {
    // $100 a year per 1,000 sf of bed, which is half of 5,000 sf: 40, 20, 10 and 30 % of $250.
    const { supplies } = siteCharges(campus, tinySite('A'), 'beds');
    expect(supplies).toEqual([100_00, 50_00, 25_00, 75_00]);
  });
});

describe('What 1,000 sf of a type ask for', () => {
  const level = (age: number) => 30 + 30 * Math.exp(-0.7 * (age - 1));

  test('falls with age until 20 years, and is nothing before planting', () => {
    const { care } = typeProfile(campus, beds!);
    expect([0, -3].map((age) => care('care-other', age, 0))).toEqual([0, 0]);
    expect(care('care-other', 1, 0)).toBe(0.5 * 60 * 0.4 * 10_000);
    expect(care('care-other', 2, 3)).toBe(Math.round(0.5 * level(2) * 0.3 * 10_000));
    expect(care('care-other', 12, 0)).toBe(Math.round(0.5 * level(12) * 0.4 * 10_000));
    expect(care('care-other', 21, 0)).toBe(care('care-other', 20, 0));
    expect(care('care-other', 1, 9)).toBe(0);
    expect(care('care-food', 1, 0)).toBe(0);
  });

  test('harvest follows bearing, whose last entry holds', () => {
    const { care } = typeProfile(campus, fruit!);
    const summers = [1, 2, 3, 4, 30].map((age) => care('harvest', age, 0));
    expect(summers).toEqual([0, 12_500, 25_000, 25_000, 25_000]);
    expect(care('harvest', 3, 2)).toBe(0);
    expect(care('care-food', 1, 0)).toBe(120_000);
  });

  test('is settled care at 20 years, though the decay goes on', () => {
    const slow = { ...campus.care['perennial-bed'], decayPerYear: 0.01 };
    const of = tinyCampus({ care: { ...campus.care, 'perennial-bed': slow } });
    const { care } = typeProfile(of, of.buildTypes[0]!);
    const at = (age: number) => Math.round(0.5 * (30 + 30 * Math.exp(-0.01 * (age - 1))) * 4000);
    expect(care('care-other', 19, 0)).toBe(at(19));
    expect(care('care-other', 25, 0)).toBe(at(20));
  });

  test('compost is a quarter inch, certified where the type is edible', () => {
    // Half an inch on the half that is bed: 250 sf-in per 1,000 sf, 324 of them to the yard.
    expect(typeProfile(campus, beds!)).toMatchObject({
      topDress: Math.round((500 * 0.5 * 10_000) / 324),
      compostGrade: 'other',
    });
    expect(typeProfile(campus, fruit!).compostGrade).toBe('certified');
  });

  test('a hundredth is begun as soon as a part of it is used', () => {
    // Ten-thousandths of each 1,000 sf, times square feet.
    expect(FINE_PARTS).toBe(10_000 * 1000);
    expect(FINE_PER_HUNDREDTH).toBe(100_000);
    expect([0, 1, 100_000, 100_001].map(hundredthsFor)).toEqual([0, 1, 1, 2]);
  });
});

describe('The life of a site', () => {
  const old: ExistingSite = {
    ...tinySite('OLD'),
    stage: 'existing',
    buildType: 'beds',
    plantedYear: 2025,
  };

  test('runs from preparing in fall and planting in spring until works take it', () => {
    expect(lifeOf(campus, 'A', fiscalYear(2029))).toEqual({
      prepared: 5,
      planted: 7,
      ends: Infinity,
    });
    const taken = tinyCampus({ construction: [works('hall', 2032)] });
    expect(lifeOf(taken, 'A', fiscalYear(2029)).ends).toBe(16);
    expect(lifeOf(taken, 'B', fiscalYear(2029)).ends).toBe(Infinity);
  });

  test('of one that stands counts from the spring of its calendar year', () => {
    // Spring 2028 is index 3.
    expect(existingPlantIndex(TINY_CALENDAR, 2028)).toBe(3);
    expect(existingPlantIndex(TINY_CALENDAR, 2025)).toBe(-9);
    expect(existingLife(campus, old)).toEqual({ planted: -9, ends: Infinity });
    const taken = tinyCampus({ construction: [works('hall', 2030, { sites: ['OLD'] })] });
    expect(existingLife(taken, old)).toEqual({ planted: -9, ends: 8 });
  });

  test('ends with the first works after planting', () => {
    const first = (construction: ConstructionConflict[], planted: number) =>
      worksAfter({ campus: tinyCampus({ construction }), site: 'A', planted })?.id;
    const three = [works('c', 2033), works('a', 2030), works('b', 2031)];
    // Works of FY30 begin at index 8.
    expect(first(three, 7)).toBe('a');
    expect(first(three, 8)).toBe('b');
    expect(first(three, 30)).toBeUndefined();
    expect(first([works('x', 2033), works('y', 2033)], 3)).toBe('x');
    expect(first([works('elsewhere', 2033, { sites: ['B'] })], 3)).toBeUndefined();
  });

  test('age is 1 from planting, and 0 before and once it is gone', () => {
    const life = { planted: 3, ends: 9 };
    const ages = [2, 3, 6, 7, 8, 9].map((index) => ageInSeason(TINY_CALENDAR, life, index));
    expect(ages).toEqual([0, 1, 1, 2, 2, 0]);
    const cared = caredSeasons(TINY_CALENDAR, life);
    expect(cared[0]).toEqual({ index: 3, yearIndex: 0, age: 1, order: 3 });
    expect(cared.map(({ index }) => index)).toEqual([3, 4, 5, 6, 7, 8]);
  });
});

test('a season’s dollars go to the fiscal years of its months, to the cent', () => {
  // June of summer FY29 falls in FY28.
  expect(seasonDollars(TINY_CALENDAR, seasonInstance(TINY_CALENDAR, 4), cents(100))).toEqual([
    { yearIndex: 0, amount: 34 },
    { yearIndex: 1, amount: 66 },
  ]);
  expect(seasonDollars(TINY_CALENDAR, seasonInstance(TINY_CALENDAR, 5), cents(100))).toEqual([
    { yearIndex: 1, amount: 100 },
  ]);
});

test('prices grow from the price year, each kind at its own rate', () => {
  expect(priceGrowth(campus, 'construction', 2)).toBeCloseTo(1.04 ** 2, 12);
  const older = { ...campus, calendar: { ...TINY_CALENDAR, priceYear: fiscalYear(2026) } };
  expect(priceGrowth(older, 'wages', 1)).toBeCloseTo(1.02 ** 3, 12);
  expect(priceGrowth(older, 'supplies', 0)).toBeCloseTo(1.03 ** 2, 12);
});

describe('A later change', () => {
  const change: LaterChange = {
    id: 'simpler',
    name: 'Simpler beds',
    buildType: 'beds',
    from: 'any',
    ages: [5],
    costPerSqFt: cents(2_00),
    hoursPer1000SqFt: 4,
    provenance: { basis: 'judgement', source: 'invented for a test' },
  };
  const of = tinyCampus({ laterChanges: [change], construction: [works('hall', 2033)] });
  const changed: Placement = { ...placed, buildType: 'fruit', change: { id: 'simpler', age: 2 } };

  test('falls in the planting season at its age', () => {
    expect(changeSeason(of, changed)).toBe(3 + 2 * 4);
    expect(changeSeason(of, placed)).toBeUndefined();
  });

  test('plants the whole ground anew, which asks for no preparing, and works still take it', () => {
    const [built, anew] = campusCharges(of).parts(changed);
    expect(built?.life).toEqual({ prepared: 1, planted: 3, ends: 11 });
    expect(built?.changeCost).toBe(0);
    expect(anew).toMatchObject({
      life: { planted: 11, ends: 20 },
      share: 1,
      changeCost: 5000 * 2_00,
      charges: {
        buildType: 'beds',
        prepareHours: 0,
        plantHours: 20_00,
        buildCost: 0,
        buildCompost: 0,
        supplies: [100_00, 50_00, 25_00, 75_00],
      },
    });
    expect(anew?.charges.profile).toBe(typeProfile(of, beds!));
  });

  test('to lawn leaves nothing to care for or pay', () => {
    const { buildType: _, ...lawn } = change;
    const returned = campusCharges(tinyCampus({ laterChanges: [lawn] })).parts(changed)[1];
    expect(returned).toMatchObject({ share: 0, life: { planted: 11, ends: 11 } });
    expect(returned?.charges.supplies).toEqual([0, 0, 0, 0]);
    expect(returned?.charges.profile).toMatchObject({ topDress: 0, compostGrade: 'other' });
  });
});
