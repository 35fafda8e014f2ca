import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { payoutFindings, principalNeeded, yearlyPayout } from '#estimating/cost/endowment.js';
import { fundLedger } from '#estimating/cost/fund-ledger.js';
import { giftParts, giftRefusals, giftTotal } from '#estimating/cost/gift.js';
import {
  matchingPayment,
  matchShare,
  mostMatched,
  reimbursement,
} from '#estimating/cost/matching.js';
import { cents, sumCents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';

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

  test('a high payout and a fund under water are named', () => {
    const fund = { rate: 0.07, prudentRate: 0.07, marketValue: 250_000, giftsReceived: 250_000 };
    expect(payoutFindings(fund)).toEqual([]);
    const [high, low] = payoutFindings({ ...fund, rate: 0.071, marketValue: 249_999 });
    expect(high).toMatchObject({ field: 'rate', value: 0.071, severity: 'warn' });
    expect(high?.problem).toContain('above 0.07');
    expect(low).toMatchObject({ field: 'marketValue', value: 249_999, severity: 'warn' });
    expect(low?.problem).toContain('suspended');
    expect(low?.remedy).toContain('endowment office');
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

  test('pay the part of a bill that leaves a dollar of other money for each of theirs', () => {
    // Two dollars for each other one is two thirds of the bill; whole cents, rounded down.
    expect([matchShare({ matchRatio: 2 }), matchShare({ matchRatio: 1 })]).toEqual([2 / 3, 1 / 2]);
    expect(mostMatched({ matchRatio: 2 }, 100_00)).toBe(66_66);
    expect(mostMatched({ matchRatio: 0.5 }, 300)).toBe(100);
    expect([matchShare({}), mostMatched({}, 100_00)]).toEqual([1, 100_00]);
  });

  test('pay back after their lag', () => {
    expect(reimbursement(cents(5_000), fiscalYear(2028), 2)).toEqual({ year: 2030, amount: 5_000 });
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
    expect(fundLedger([year(1, 0), year(0, 0)], 1).map((y) => y.closing)).toEqual([1, 0]);
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
