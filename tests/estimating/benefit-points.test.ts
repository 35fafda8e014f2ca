/** Points of a site, worked out by hand from round shares of 5,000 sf. */
import { describe, expect, test } from 'vitest';
import type { BenefitMeasure } from '#domain/benefit.js';
import type { Placement } from '#domain/plan.js';
import type { SiteFacts } from '#domain/site.js';
import {
  lifetimePoints,
  measured,
  placementPoints,
  pointsPerYear,
} from '#estimating/benefit-points/benefit-points.js';
import { careAvoided, careAvoidedReference } from '#estimating/benefit-points/care-avoided.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { known, UNKNOWN } from '#units/known.js';
import { works } from '../support/tiny/works.js';
import { NO_FACTS, tinyCampus, tinySite, tinyType } from '../support/tiny/tiny-campus.js';

const mixed = tinyType('mixed', 'woody', {
  shares: {
    'annual-bed': 0.1,
    'perennial-bed': 0.2,
    woody: 0.25,
    'rain-garden': 0.15,
    meadow: 0.05,
    path: 0.25,
  },
});
const campus = tinyCampus();
const [beds, fruit] = campus.buildTypes;

function measure(what: BenefitMeasure, facts: Partial<SiteFacts> = {}): number {
  const site = tinySite('A', { facts: { ...NO_FACTS, ...facts } });
  const [criterion] = campus.benefit.criteria;
  return measured(campus, { site, type: mixed }, { ...criterion!, measure: what, whenUnknown: 7 });
}

describe('What a criterion measures', () => {
  test('are square feet of what grows there', () => {
    expect(measure('food-area')).toBe(500 + 1250);
    expect(measure('habitat-area')).toBe(1000 + 250 + 750);
    expect(measure('rain-garden-area')).toBe(750);
    expect(measure('teaching')).toBe(500);
    expect(measure('converted-area')).toBe(5000);
  });

  test('are people who walk past, or what the criterion says while nobody has counted', () => {
    expect(measure('walkers-per-day')).toBe(1000);
    expect(measure('walkers-per-day', { walkersPerDay: UNKNOWN })).toBe(7);
  });

  test('is ground that is steep to mow from above 10 %', () => {
    const steep = (percent: number) =>
      measure('slope-mowing-removed', { slopePercent: known(percent) });
    expect([2, 10, 10.05].map(steep)).toEqual([0, 0, 5000]);
    expect(measure('slope-mowing-removed', { slopePercent: UNKNOWN })).toBe(7);
  });

  test('are hours of care less than the type with most of it, at 20 years', () => {
    // Per 1,000 sf: 15 h for beds, 15 h and 5 h of harvest for fruit.
    expect(careAvoided(campus, beds!, 5000)).toBeCloseTo(25, 2);
    expect(careAvoided(campus, fruit!, 5000)).toBe(0);
    expect(careAvoidedReference(campus)).toBeCloseTo(200, 2);
    expect(careAvoidedReference(tinyCampus({ buildTypes: [] }))).toBe(0);
  });
});

test('points of a year are weight x measure / reference, summed', () => {
  // 60 for all of 5,000 sf, 40 for 1,750 of 2,500 sf of food.
  expect(pointsPerYear(campus, tinySite('A'), mixed)).toBeCloseTo(60 + 40 * 0.7, 9);
  expect(pointsPerYear(campus, tinySite('A', { areaSqFt: 2500 }), beds!)).toBeCloseTo(30, 9);
});

describe('Points of a lifetime', () => {
  const sum = (first: number, last: number) => {
    let points = 0;
    for (let year = first; year <= last; year++) points += 10 / 1.03 ** year;
    return Math.round(points * 1000);
  };

  test('count from the year after planting to the end of the tail, discounted', () => {
    expect(lifetimePoints(campus, 10, { planted: 3, ends: Infinity })).toBe(sum(1, 7));
    expect(lifetimePoints(campus, 10, { planted: 7, ends: Infinity })).toBe(sum(2, 7));
    expect(lifetimePoints(campus, 10, { planted: -9, ends: Infinity })).toBe(sum(-2, 7));
  });

  test('leave out the year in which the site is taken', () => {
    expect(lifetimePoints(campus, 10, { planted: 3, ends: 16 })).toBe(sum(1, 3));
    expect(lifetimePoints(campus, 10, { planted: 3, ends: 19 })).toBe(sum(1, 3));
    expect(lifetimePoints(campus, 10, { planted: 3, ends: 4 })).toBe(0);
  });
});

describe('Points of a placement', () => {
  const placed: Placement = { site: 'A', buildType: 'beds', year: fiscalYear(2028) };
  const pointsOf = (placement: Placement, of = campus) =>
    placementPoints(of, of.candidates[0]!, campusCharges(of).parts(placement));

  test('are those of its halves, each from its own year', () => {
    const [yearly, half] = [60, 30];
    const life = (planted: number) => ({ planted, ends: Infinity });
    expect(pointsOf(placed)).toBe(lifetimePoints(campus, yearly, life(3)));
    expect(pointsOf({ ...placed, secondHalf: fiscalYear(2030) })).toBe(
      lifetimePoints(campus, half, life(3)) + lifetimePoints(campus, half, life(11)),
    );
  });

  test('lose nothing to works where the campus states no points for stranded cost', () => {
    const tunnel = works('tunnel', 2032, { certaintyPercent: 50 });
    const taken = tinyCampus({ construction: [tunnel] });
    expect(pointsOf(placed, taken)).toBe(lifetimePoints(campus, 60, { planted: 3, ends: 16 }));
    const benefit = { ...campus.benefit, pointsPer1000Stranded: 1 };
    const counted = tinyCampus({ construction: [tunnel], benefit });
    // $40,000, of which 3 of 7 years are unused, half sure: 8.571 points, discounted from FY32.
    expect(pointsOf(placed, taken) - pointsOf(placed, counted)).toBe(
      Math.round((8_571.43 / 1000 / 1.03 ** 4) * 1000),
    );
  });
});
