import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildUpCost } from '#estimating/cost/build-up.js';
import { careTail, tailTotals } from '#estimating/cost/care-tail.js';
import { classBand } from '#estimating/cost/class-band.js';
import { constantOf, nominalOf, realRate } from '#estimating/cost/dollars.js';
import { escalated, escalationAlong, escalationFactor } from '#estimating/cost/escalation.js';
import { mowingAvoided, mowingBesideCare } from '#estimating/cost/mowing.js';
import {
  growingAnnuity,
  growingPerpetuity,
  spv,
  uca,
  upv,
  upvStar,
  usf,
} from '#estimating/cost/present-value.js';
import { replacementReserve } from '#estimating/cost/reserve.js';
import { given } from '#estimating/explained.js';
import { costChecks } from './outside/cost.checks.js';
import { runOutsideChecks } from './outside/outside-check.js';

runOutsideChecks(costChecks.filter(({ formula }) => formula === 'cost'));

describe('build-up', () => {
  const dollars = (name: string, value: number | null) =>
    given(name, { value, unit: '$' }, 'quote');
  const share = (name: string, value: number) => given(name, { value, unit: 'share' }, 'default');
  const parts = {
    direct: [dollars('materials', 20_000), dollars('plants', 10_000)],
    softShare: share('soft', 0.1),
    testingAndLocating: dollars('testing and locating', 3_000),
    contingencyShare: share('contingency', 0.2),
    escalation: given('escalation', { value: 1.04, unit: 'factor' }, 'campus record'),
  };

  test('soft cost, testing, contingency and growth come one after another', () => {
    const cost = buildUpCost(parts);
    expect(cost.value).toBeCloseTo((30_000 * 1.1 + 3_000) * 1.2 * 1.04, 6);
    expect(cost.unit).toBe('$');
    expect(cost.name).toBe('likely cost');
    expect(cost.formula).toBe('cost in the price year x escalation');
    expect(cost.inputs.map(({ name }) => name)).toEqual(['cost in the price year', 'escalation']);
  });

  test('an unknown part leaves the whole unknown', () => {
    expect(buildUpCost({ ...parts, direct: [dollars('materials', null)] }).value).toBeNull();
    const unknownShare = given('contingency', { value: null, unit: 'share' }, 'nobody');
    expect(buildUpCost({ ...parts, contingencyShare: unknownShare }).value).toBeNull();
  });
});

describe('estimate class', () => {
  test('class 5 runs from 30 % below to 50 % above', () => {
    const band = classBand(68_000, { below: -0.3, above: 0.5 });
    expect(band.low).toBeCloseTo(47_600, 6);
    expect([band.likely, band.high]).toEqual([68_000, 102_000]);
  });
});

describe('escalation and dollars', () => {
  test('grows by the year and by part years', () => {
    expect(escalationFactor(0.04, 2)).toBeCloseTo(1.0816, 12);
    expect(escalationFactor(0.04, 0)).toBe(1);
    expect(escalationFactor(0.21, 0.5)).toBeCloseTo(1.1, 12);
    expect(escalated(100, 0.04, 2)).toBeCloseTo(108.16, 9);
    expect(escalationAlong([0.04, 0.02])).toBeCloseTo(1.0608, 12);
    expect(escalationAlong([])).toBe(1);
  });

  test('constant and nominal dollars are inverse', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1e6 }),
        fc.integer({ min: 0, max: 40 }),
        (amount, years) => {
          expect(constantOf(nominalOf(amount, 0.03, years), 0.03, years)).toBeCloseTo(amount, 6);
        },
      ),
    );
    expect(nominalOf(100, 0.03, 1)).toBeCloseTo(103, 9);
    expect(constantOf(103, 0.03, 1)).toBeCloseTo(100, 9);
  });

  test('the real rate takes inflation out', () => {
    expect(realRate(0.071, 0.02)).toBeCloseTo(0.05, 12);
    expect(realRate(0.02, 0.02)).toBe(0);
  });

  test('discounting nominal dollars at the nominal rate is discounting constant dollars at the real one', () => {
    const nominal = nominalOf(500, 0.025, 9) * spv(0.06, 9);
    expect(nominal).toBeCloseTo(500 * spv(realRate(0.06, 0.025), 9), 9);
  });
});

describe('present value', () => {
  test('without a discount years are only counted', () => {
    expect(upv(0, 12)).toBe(12);
    expect(uca(0, 12)).toBe(12);
    expect(spv(0, 12)).toBe(1);
    expect(usf(0, 10)).toBeCloseTo(0.1, 12);
    expect(usf(0.05, 10)).toBeCloseTo(0.0795, 4);
  });

  test('growth as fast as the discount', () => {
    expect(growingAnnuity({ discount: 0.03, growth: 0.03, years: 10 })).toBeCloseTo(10 / 1.03, 12);
    const near = growingAnnuity({ discount: 0.03, growth: 0.03 - 1e-7, years: 10 });
    expect(near).toBeCloseTo(10 / 1.03, 4);
    expect(upvStar({ discount: 0.05, growth: 0.02, years: 1 })).toBeCloseTo(1.02 / 1.05, 12);
  });

  test('a perpetuity must be discounted faster than it grows', () => {
    expect(growingPerpetuity(0.05, 0.01)).toBeCloseTo(25, 9);
    expect(() => growingPerpetuity(0.03, 0.03)).toThrow(/no value/);
    expect(() => growingPerpetuity(0.02, 0.03)).toThrow(/no value/);
  });
});

describe('replacement reserve', () => {
  test('saves cost over life', () => {
    const parts = [
      { name: 'drip', cost: 1_800, lifeYears: 9 },
      { name: 'path', cost: 9_000, lifeYears: 10 },
    ];
    expect(replacementReserve(parts)).toBe(1_100);
    expect(replacementReserve([])).toBe(0);
    expect(replacementReserve([{ name: 'mulch', cost: 40, lifeYears: 0.5 }])).toBe(80);
    expect(() => replacementReserve([{ name: 'hose', cost: 1, lifeYears: 0 }])).toThrow(/hose/);
  });
});

describe('the tail of care', () => {
  const tail = {
    hoursAtAge: [400, 300],
    dollarsPerHour: 40,
    suppliesPerYear: 500,
    yearsUntilFirst: 2,
    growth: 0.05,
  };

  test('is shown in constant and nominal dollars, apart', () => {
    const years = careTail(tail);
    expect(years.map((year) => [year.age, year.constantDollars])).toEqual([
      [1, 16_500],
      [2, 12_500],
    ]);
    expect(years[0]?.nominalDollars).toBeCloseTo(16_500 * 1.1025, 6);
    expect(years[1]?.nominalDollars).toBeCloseTo(12_500 * 1.157625, 6);
    const totals = tailTotals(years);
    expect(totals.constantDollars).toBe(29_000);
    expect(totals.nominalDollars).toBeCloseTo(16_500 * 1.1025 + 12_500 * 1.157625, 6);
  });
});

describe('mowing', () => {
  const mowing = {
    turfSqFt: 10_000,
    cutsPerYear: 20,
    hoursPer1000SqFtCut: 0.05,
    gallonsPerHour: 0.8,
    kgCarbonPerGallon: 8.89,
  };

  test('hours, then fuel, then carbon dioxide', () => {
    const avoided = mowingAvoided(mowing);
    expect(avoided.hours).toBeCloseTo(10, 9);
    expect(avoided.gallons).toBeCloseTo(8, 9);
    expect(avoided.kgCarbon).toBeCloseTo(71.12, 9);
  });

  test('stands beside the care it does not pay for', () => {
    const beside = mowingBesideCare(mowing, 210);
    expect(beside.careHoursAdded).toBe(210);
    expect(beside.netHoursAdded).toBeCloseTo(200, 9);
    expect(beside.hours).toBeCloseTo(10, 9);
  });
});
