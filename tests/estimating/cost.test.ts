import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildUpCost } from '#estimating/cost/build-up.js';
import { careTail, tailTotals } from '#estimating/cost/care-tail.js';
import { classBand } from '#estimating/cost/class-band.js';
import { constantOf, nominalOf, realRate } from '#estimating/cost/dollars.js';
import { principalNeeded, yearlyPayout } from '#estimating/cost/endowment.js';
import { escalated, escalationAlong, escalationFactor } from '#estimating/cost/escalation.js';
import { fundLedger } from '#estimating/cost/fund-ledger.js';
import { giftParts, giftRefusals, giftTotal } from '#estimating/cost/gift.js';
import { matchingPayment, reimbursement } from '#estimating/cost/matching.js';
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
import { cents, sumCents } from '#units/cents.js';
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
    expect(classBand(68_000, { below: -0.3, above: 0.5 })).toEqual({
      low: expect.closeTo(47_600, 6),
      likely: 68_000,
      high: 102_000,
    });
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
    expect(() => replacementReserve([{ name: 'hose', cost: 1, lifeYears: 0 }])).toThrow(/hose/);
  });
});

describe('endowment', () => {
  const values = [100, 200, 300, 400];

  test('pays out of the mean of the last quarters', () => {
    expect(
      yearlyPayout({ quarterValues: values, rate: 0.04, averaged: 2, waiting: 0 }),
    ).toBeCloseTo(14, 12);
    expect(
      yearlyPayout({ quarterValues: values, rate: 0.04, averaged: 12, waiting: 0 }),
    ).toBeCloseTo(10, 12);
  });

  test('waits while it is new', () => {
    expect(yearlyPayout({ quarterValues: values, rate: 0.04, averaged: 12, waiting: 4 })).toBe(0);
    expect(
      yearlyPayout({ quarterValues: values, rate: 0.04, averaged: 12, waiting: 3 }),
    ).toBeCloseTo(10, 12);
    expect(yearlyPayout({ quarterValues: [], rate: 0.04, averaged: 12, waiting: 0 })).toBe(0);
  });

  test('a fund that pays nothing endows nothing', () => {
    expect(() => principalNeeded(100, 0)).toThrow(/above 0/);
  });
});

describe('gifts', () => {
  test('fee, care share and build share lose no cent', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1e9 }),
        fc.nat(20),
        fc.nat(100),
        (amount, fee, care) => {
          const parts = giftParts(cents(amount), { feeShare: fee / 100, careShare: care / 100 });
          expect(giftTotal(parts)).toBe(amount);
          expect(Math.min(parts.fee, parts.care, parts.build)).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });

  test('$120,000 with a 4 % fee and a tenth for care', () => {
    const parts = giftParts(cents(120_000_00), { feeShare: 0.04, careShare: 0.1 });
    expect(parts).toEqual({ fee: 4_800_00, care: 11_520_00, build: 103_680_00 });
  });

  const terms = {
    sites: ['TVU-19'],
    buildTypes: ['fruit'],
    lines: ['build'],
    firstYear: 2028,
    lastYear: 2029,
  };
  const use = { site: 'TVU-19', buildType: 'fruit', line: 'build', year: 2028 };

  test('a use within the terms is not refused', () => {
    expect(giftRefusals(terms, use)).toEqual([]);
    expect(giftRefusals(terms, { ...use, year: 2029 })).toEqual([]);
    expect(giftRefusals({ firstYear: 2028, lastYear: 2029 }, { ...use, site: 'any' })).toEqual([]);
  });

  test('each breach of the terms is named', () => {
    expect(
      giftRefusals(terms, { site: 'TVU-03', buildType: 'meadow', line: 'care', year: 2030 }),
    ).toEqual([
      'not for site TVU-03',
      'not for meadow',
      'not for care',
      'expired with fiscal year 2029',
    ]);
    expect(giftRefusals(terms, { ...use, year: 2027 })).toEqual(['not before fiscal year 2028']);
  });
});

describe('matching and reimbursable grants', () => {
  test('match other money, up to the cost and to what is left', () => {
    const grant = { ratio: 1, remaining: cents(24_000_00) };
    const pays = (cost: number, other: number): number =>
      matchingPayment(grant, { eligibleCost: cents(cost), otherMoney: cents(other) });
    expect(pays(40_000_00, 20_000_00)).toBe(20_000_00);
    expect(pays(30_000_00, 20_000_00)).toBe(10_000_00);
    expect(pays(90_000_00, 45_000_00)).toBe(24_000_00);
    expect(pays(10_000_00, 12_000_00)).toBe(0);
    expect(
      matchingPayment(
        { ...grant, ratio: 0.5 },
        { eligibleCost: cents(100), otherMoney: cents(40) },
      ),
    ).toBe(20);
  });

  test('pay back after their lag', () => {
    expect(reimbursement(cents(5_000), 2028, 2)).toEqual({ year: 2030, amount: 5_000 });
  });
});

describe('fund ledger', () => {
  const year = (received: number, wanted: number) => ({
    received: cents(received),
    wanted: cents(wanted),
  });

  test('dollars of one year carry as far as the rule lets them', () => {
    const years = [year(100, 40), year(100, 10), year(0, 120)];
    expect(fundLedger(years, 0).map((y) => [y.lapsed, y.short])).toEqual([
      [60, 0],
      [90, 0],
      [0, 120],
    ]);
    expect(fundLedger(years, 1).map((y) => [y.lapsed, y.short])).toEqual([
      [0, 0],
      [50, 0],
      [0, 20],
    ]);
    expect(fundLedger(years, 2).map((y) => [y.lapsed, y.short])).toEqual([
      [0, 0],
      [0, 0],
      [0, 0],
    ]);
    expect(fundLedger(years, Infinity).map((y) => y.closing)).toEqual([60, 150, 30]);
  });

  test('each year balances to the cent, and nothing is spent that is not there', () => {
    const many = fc.array(fc.record({ received: fc.nat(5_000), wanted: fc.nat(5_000) }), {
      maxLength: 15,
    });
    fc.assert(
      fc.property(many, fc.constantFrom(0, 1, 2, Infinity), (years, carry) => {
        const ledger = fundLedger(
          years.map((y) => year(y.received, y.wanted)),
          carry,
        );
        ledger.forEach((y, i) => {
          expect(y.opening + y.received).toBe(y.spent + y.lapsed + y.closing);
          expect(y.spent + y.short).toBe(years[i]!.wanted);
          expect(y.opening).toBe(i === 0 ? 0 : ledger[i - 1]!.closing);
          expect(Math.min(y.spent, y.short, y.lapsed, y.closing)).toBeGreaterThanOrEqual(0);
          expect(y.received).toBe(years[i]!.received);
        });
        const received = sumCents(ledger.map((y) => y.received));
        const gone = sumCents(ledger.flatMap((y) => [y.spent, y.lapsed]));
        expect(received).toBe(gone + (ledger.at(-1)?.closing ?? 0));
      }),
    );
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
    expect(years).toEqual([
      { age: 1, constantDollars: 16_500, nominalDollars: expect.closeTo(16_500 * 1.1025, 6) },
      { age: 2, constantDollars: 12_500, nominalDollars: expect.closeTo(12_500 * 1.157625, 6) },
    ]);
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
