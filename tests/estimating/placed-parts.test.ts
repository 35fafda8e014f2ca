/** Pieces of placed sites. The dollars and hours expected are worked out by hand from the tiny campus. */
import { describe, expect, test } from 'vitest';
import type { LaterChange } from '#domain/later-change.js';
import { candidate } from '#domain/campus.js';
import type { Placement } from '#domain/plan.js';
import { placementPoints, pointsPerYear } from '#estimating/benefit-points/benefit-points.js';
import { moneyNeeds } from '#estimating/plan-needs/money-needs.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { strandedCost } from '#estimating/site-charges/stranded.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { tinyCampus, tinySite } from '../support/tiny/tiny-campus.js';

const toLawn: LaterChange = {
  id: 'to-lawn',
  name: 'Back to lawn',
  from: 'any',
  ages: [5],
  costPerSqFt: cents(1_00),
  hoursPer1000SqFt: 6,
  provenance: { basis: 'judgement', source: 'invented for a test' },
};
const campus = tinyCampus({
  candidates: [tinySite('A', { areaSqFt: 5001 })],
  laterChanges: [toLawn],
});
const whole: Placement = { site: 'A', buildType: 'beds', year: fiscalYear(2028) };
const partsOf = (placement: Placement, of = campus) => campusCharges(of).parts(placement);
const needsOf = (placements: Placement[]) =>
  moneyNeeds(campus, { placements, hires: [], workDays: [], purchases: [] });

describe('Halves', () => {
  const halves = { ...whole, secondHalf: fiscalYear(2030) };

  test('are whole square feet that add up, each planted in its own spring', () => {
    expect(partsOf(halves).map((p) => [p.charges.areaSqFt, p.life.planted])).toEqual([
      [2500, 3],
      [2501, 11],
    ]);
  });

  test('are paid a bill each, in dollars of its year', () => {
    // 2,500 sf x $8; 2,501 sf x $8 two years on at 4 %
    expect(needsOf([halves]).build.map((c) => [c.yearIndex, c.amount])).toEqual([
      [0, 20_000_00],
      [2, Math.round(2501 * 8_00 * 1.04 ** 2)],
    ]);
  });
});

describe('A return to lawn at age 5', () => {
  const returned = { ...whole, change: { id: 'to-lawn', age: 5 } };

  test('ends care in the fifth spring after planting, and asks for its work there', () => {
    const [beds, lawn] = partsOf(returned);
    // planted at season 3, four seasons a year
    expect(beds?.life).toMatchObject({ planted: 3, ends: 23 });
    expect(lawn?.charges.plantHours).toBe(30_01);
    expect(lawn?.charges.profile.care('care-other', 1, 0)).toBe(0);
  });

  test('is paid by care money in its year, at construction prices', () => {
    // spring FY33 is year index 5; supplies have ended
    const care = needsOf([returned]).care.filter((c) => c.yearIndex >= 5);
    const supplies = needsOf([whole]).care.filter((c) => c.yearIndex === 5);
    expect(care.map((c) => c.yearIndex)).toEqual([5]);
    expect(care[0]?.amount).toBeGreaterThan(Math.round(5001_00 * 1.04 ** 5) - 1);
    expect(care[0]?.amount).toBeLessThan(
      Math.round(5001_00 * 1.04 ** 5) + (supplies[0]?.amount ?? 0),
    );
  });
});

describe('Unsure works', () => {
  const works = {
    id: 'w',
    name: 'Tunnel',
    kind: 'footprint',
    sites: ['A'],
    from: fiscalYear(2031),
    to: fiscalYear(2032),
    certaintyPercent: 50,
    source: 'a test',
  };
  const taken = tinyCampus({
    candidates: [tinySite('A')],
    construction: [works],
    benefit: { ...campus.benefit, pointsPer1000Stranded: 2 },
  });

  test('strand capital x unused share of the payback years x certainty', () => {
    // $40,000; stood FY28 to FY31, 3 of 7 years; 50 %: 40,000 x 4/7 x 0.5
    expect(strandedCost(taken, partsOf(whole, taken))).toBe(Math.round(40_000_00 * (4 / 7) * 0.5));
    const later = { ...whole, year: fiscalYear(2033) };
    expect(strandedCost(taken, partsOf(later, taken))).toBe(0);
  });

  test('end benefit when they begin, and take points off for what they strand', () => {
    const site = candidate(taken, 'A');
    const yearly = pointsPerYear(taken, site, taken.buildTypes[0]!);
    // points in FY29 and FY30, discounted; two for each $1,000 of $11,428.57, discounted from FY31
    const earned = yearly / 1.03 + yearly / 1.03 ** 2;
    const lost = (2 * 11_428.57) / 1000 / 1.03 ** 3;
    expect(placementPoints(taken, site, partsOf(whole, taken)) / 1000).toBeCloseTo(
      earned - lost,
      2,
    );
  });
});
