import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { COMPONENTS } from '#domain/component.js';
import {
  accumulatedHours,
  accumulation,
  yearsUntilFull,
} from '#estimating/care-hours/accumulation.js';
import { CARE_LEVEL_TEXT, hoursAtLevel, levelReached } from '#estimating/care-hours/care-level.js';
import { careHoursPer1000SqFt } from '#estimating/care-hours/decay.js';
import { careOf, careOfComponents } from '#estimating/care-hours/default-care.js';
import { harvestHours } from '#estimating/care-hours/harvest.js';
import { renewalFalls, renewalsAt, renewalsPerYear } from '#estimating/care-hours/renewals.js';
import { hoursBySeason, seasonShareFindings } from '#estimating/care-hours/seasons.js';
import { careHoursByComponent, careHoursOfSite } from '#estimating/care-hours/site-care.js';
import { ageAfterNeglect } from '#estimating/care-hours/weeds.js';
import { careChecks, MIXED_SITE, sumOfAges } from './outside/labor.checks.js';
import { runOutsideChecks } from './outside/outside-check.js';

runOutsideChecks(careChecks);

const care = careOfComponents();
const perennial = { firstYearHours: 75, matureHours: 22, decayPerYear: 0.7 };

describe('care by age', () => {
  test('begins at the first-year level and sinks to the mature one', () => {
    expect(careHoursPer1000SqFt(perennial, 1)).toBe(75);
    expect(careHoursPer1000SqFt(perennial, 2)).toBeCloseTo(22 + 53 * Math.exp(-0.7), 12);
    expect(careHoursPer1000SqFt(perennial, 60)).toBeCloseTo(22, 9);
  });

  test('there is none before planting, and part years count', () => {
    expect(careHoursPer1000SqFt(perennial, 0)).toBe(0);
    expect(careHoursPer1000SqFt(perennial, -3)).toBe(0);
    expect(careHoursPer1000SqFt(perennial, 0.5)).toBeGreaterThan(75);
  });

  test('never rises with age where the first year is the hardest', () => {
    fc.assert(
      fc.property(
        fc.nat(200),
        fc.nat(100),
        fc.integer({ min: 0, max: 20 }),
        fc.integer({ min: 1, max: 40 }),
        (above, mature, k, age) => {
          const one = { firstYearHours: mature + above, matureHours: mature, decayPerYear: k / 10 };
          expect(careHoursPer1000SqFt(one, age + 1)).toBeLessThanOrEqual(
            careHoursPer1000SqFt(one, age) + 1e-9,
          );
        },
      ),
    );
  });

  test('of a site is the sum of its components and proportional to area', () => {
    const hours = careHoursByComponent({ areasSqFt: MIXED_SITE, care, age: 3 });
    const sum = COMPONENTS.reduce((total, c) => total + hours[c], 0);
    expect(careHoursOfSite({ areasSqFt: MIXED_SITE, care, age: 3 })).toBeCloseTo(sum, 9);
    expect(hours['annual-bed']).toBeCloseTo(0.96 * (120 + 30 * Math.exp(-1.4)), 9);
    expect(careHoursOfSite({ areasSqFt: { meadow: 2000 }, care, age: 1 })).toBeCloseTo(60, 9);
    expect(careHoursOfSite({ areasSqFt: {}, care, age: 1 })).toBe(0);
  });

  test('defaults can be replaced by a campus value', () => {
    const own = {
      'care.woody.first-year': { value: 61, basis: 'measured', source: 'hours log' },
    } as const;
    expect(careOf('woody', own)).toEqual({
      firstYearHours: 61,
      matureHours: 18,
      decayPerYear: 0.6,
    });
    expect(careOfComponents(own).woody.firstYearHours).toBe(61);
    expect(careOfComponents(own)['annual-bed'].firstYearHours).toBe(150);
  });
});

describe('the program law', () => {
  test('closed form approaches the sum age by age', () => {
    const scaled = Object.fromEntries(
      Object.entries(MIXED_SITE).map(([c, a]) => [c, (a * 8500) / 9600]),
    );
    const law = accumulation(scaled, care);
    for (const years of [10, 15, 20, 30]) {
      expect(Math.abs(accumulatedHours(law, years) / sumOfAges(years) - 1)).toBeLessThan(0.001);
    }
    expect(Math.abs(accumulatedHours(law, 3) / sumOfAges(3) - 1)).toBeGreaterThan(0.001);
  });

  test('until full and accumulated are inverse', () => {
    const law = { matureHours: 200, youngHours: 500 };
    expect(yearsUntilFull(law, accumulatedHours(law, 7))).toBeCloseTo(7, 12);
    expect(accumulatedHours(law, 7)).toBe(1900);
  });

  test('a component that starts at its mature level adds no young hours', () => {
    expect(accumulation({ path: 1000 }, care)).toEqual({ matureHours: 8, youngHours: 0 });
  });

  test('a component that never settles has no limit', () => {
    const stuck = { ...care, meadow: { firstYearHours: 30, matureHours: 5, decayPerYear: 0 } };
    expect(() => accumulation({ meadow: 1000 }, stuck)).toThrow(/meadow never reaches/);
    expect(accumulation({ path: 1000 }, stuck).youngHours).toBe(0);
  });
});

describe('seasons', () => {
  const shares = { summer: 0.45, fall: 0.22, winter: 0.08, spring: 0.25 };

  test('splitting a year conserves its hours', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100_000 }), (hours) => {
        const split = Object.values(hoursBySeason(hours, shares)).reduce((a, b) => a + b, 0);
        expect(split).toBeCloseTo(hours, 6);
      }),
    );
    expect(hoursBySeason(200, shares)['summer']).toBeCloseTo(90, 12);
  });

  test('shares that do not total 1 are rejected with the total', () => {
    expect(seasonShareFindings('care', shares)).toEqual([]);
    const [finding] = seasonShareFindings('care', { ...shares, summer: 0.4 });
    expect(finding).toMatchObject({ field: 'care', severity: 'reject' });
    expect(finding?.problem).toContain('0.9500');
    expect(finding?.remedy).toContain('add up to 1');
    expect(finding?.value).toBeCloseTo(0.95, 9);
  });

  test('a negative share is rejected although the total is 1', () => {
    expect(seasonShareFindings('care', { summer: 1.2, winter: -0.2 })).toHaveLength(1);
    expect(seasonShareFindings('care', { summer: 1, winter: 0 })).toEqual([]);
  });
});

describe('harvest', () => {
  test('picking and washing add up', () => {
    expect(harvestHours({ pounds: 1200, pickedPerHour: 20, washedPerHour: 60 })).toBe(80);
  });
});

describe('renewals', () => {
  const edge = { name: 'edge', everyYears: 5, amount: 12 };
  const mulch = { name: 'mulch', everyYears: 2.5, amount: 30 };

  test('fall in their years and in no other', () => {
    const years = (every: typeof edge): number[] =>
      Array.from({ length: 15 }, (_, i) => i + 1).filter((age) => renewalFalls(every, age));
    expect(years(edge)).toEqual([5, 10, 15]);
    expect(years(mulch)).toEqual([3, 5, 8, 10, 13, 15]);
    expect(renewalFalls({ ...edge, everyYears: 1 }, 0)).toBe(false);
    expect(renewalFalls({ ...edge, everyYears: 1 }, 1)).toBe(true);
  });

  test('spikes at an age and their yearly mean', () => {
    expect(renewalsAt([edge, mulch], 5)).toBe(42);
    expect(renewalsAt([edge, mulch], 8)).toBe(30);
    expect(renewalsAt([edge, mulch], 1)).toBe(0);
    expect(renewalsPerYear([edge, mulch])).toBeCloseTo(12 / 5 + 12, 12);
  });

  test('over a common multiple of the periods spikes and mean are the same', () => {
    const total = Array.from({ length: 10 }, (_, i) => renewalsAt([edge, mulch], i + 1)).reduce(
      (a, b) => a + b,
      0,
    );
    expect(total).toBeCloseTo(10 * renewalsPerYear([edge, mulch]), 9);
  });
});

describe('care levels', () => {
  const shares = { A: 1, B: 0.75, C: 0.5 };

  test('ask for their part of full care', () => {
    expect(hoursAtLevel(200, 'A', shares)).toBe(200);
    expect(hoursAtLevel(200, 'B', shares)).toBe(150);
    expect(hoursAtLevel(200, 'C', shares)).toBe(100);
  });

  test('are reached by the hours served', () => {
    expect([1, 0.999, 0.75, 0.749, 0].map((served) => levelReached(served, shares))).toEqual([
      'A',
      'B',
      'B',
      'C',
      'C',
    ]);
  });

  test('are each described in words of their own', () => {
    expect(new Set(Object.values(CARE_LEVEL_TEXT)).size).toBe(3);
    expect(CARE_LEVEL_TEXT.C).toContain('harvest is not promised');
    expect(CARE_LEVEL_TEXT.B).toContain('edges blur');
    expect(CARE_LEVEL_TEXT.A).toContain('before they seed');
  });
});

describe('weeds', () => {
  test('a year half served makes a site half a year younger, never below its first', () => {
    expect(ageAfterNeglect({ age: 4, unservedShare: 0.5, yearsPerShare: 1 })).toBe(3.5);
    expect(ageAfterNeglect({ age: 4, unservedShare: 1, yearsPerShare: 2 })).toBe(2);
    expect(ageAfterNeglect({ age: 1.5, unservedShare: 1, yearsPerShare: 1 })).toBe(1);
  });
});
