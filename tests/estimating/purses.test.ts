/** Money that may be spent: floors, years and restrictions, with invented round numbers. */
import { describe, expect, test } from 'vitest';
import type { Fund, Restriction } from '#domain/money.js';
import { mayPay, pursesOf } from '#estimating/purses/purses.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { ANYTHING, tinyCampus, tinyFund } from '../support/tiny/tiny-campus.js';

const pursesIn = (fund: Fund) => pursesOf(tinyCampus({ funds: [fund] }));
const flow = (year: number, dollars: number, lastYear = year) => ({
  year: fiscalYear(year),
  amount: cents(dollars * 100),
  lastYear: fiscalYear(lastYear),
  restriction: ANYTHING,
});

describe('Purses of a fund', () => {
  test('hold each inflow for the years in which it may be spent', () => {
    const purses = pursesIn(tinyFund('ops', 1000));
    expect(purses).toHaveLength(8);
    expect(purses[2]).toMatchObject({ inflow: 2, amount: 1000_00, first: 2, last: 3 });
    // The last one would carry beyond the tail.
    expect(purses[7]).toMatchObject({ first: 7, last: 7 });
  });

  test('keep the floor back from the earliest inflows', () => {
    const purses = pursesIn(tinyFund('ops', 1000, { floor: cents(1_500_00) }));
    expect(purses.map((p) => [p.inflow, p.amount])).toEqual([
      [1, 500_00],
      ...[2, 3, 4, 5, 6, 7].map((inflow) => [inflow, 1000_00]),
    ]);
  });

  test('start with the plan where the money is older, and end before it where it is too old', () => {
    const inflows = [flow(2024, 10, 2029), flow(2020, 20, 2027), flow(2036, 30), flow(2028, 40)];
    const purses = pursesIn(tinyFund('gift', 0, { inflows }));
    expect(purses.map((p) => [p.inflow, p.first, p.last])).toEqual([
      [0, 0, 1],
      [3, 0, 0],
    ]);
  });

  test('are not there for money that is not counted', () => {
    expect(pursesIn(tinyFund('hope', 1000, { counted: false }))).toEqual([]);
  });

  test('of a matching grant pay for builds alone', () => {
    const [match] = pursesIn(tinyFund('match', 1000, { matchRatio: 1 }));
    expect(match?.restriction).toEqual({ ...ANYTHING, lines: ['build'] });
    expect(pursesIn(tinyFund('plain', 1000))[0]?.restriction).toEqual(ANYTHING);
  });
});

describe('A restriction', () => {
  const narrow: Restriction = { lines: ['build', 'care'], sites: ['A'], buildTypes: ['beds'] };
  const cost = { line: 'build', site: 'A', buildType: 'beds' } as const;

  test('lets pay what it names', () => {
    expect(mayPay(narrow, cost)).toBe(true);
    expect(mayPay(narrow, { ...cost, line: 'care' })).toBe(true);
  });

  test('bars another line, site or type', () => {
    expect(mayPay(narrow, { ...cost, line: 'compost' })).toBe(false);
    expect(mayPay(narrow, { ...cost, site: 'B' })).toBe(false);
    expect(mayPay(narrow, { ...cost, buildType: 'fruit' })).toBe(false);
  });

  test('by site or type bars costs that have none', () => {
    expect(mayPay(narrow, { line: 'build', buildType: 'beds' })).toBe(false);
    expect(mayPay(narrow, { line: 'build', site: 'A' })).toBe(false);
    expect(mayPay(ANYTHING, { line: 'standing' })).toBe(true);
  });
});
