/** Money that may be spent: floors, years and restrictions, with invented round numbers. */
import { describe, expect, test } from 'vitest';
import type { Fund, Restriction } from '#domain/money.js';
import { frontingsOf, mayFront } from '#estimating/purses/frontings.js';
import { paybackOf } from '#estimating/purses/paybacks.js';
import { mayPay, paysBackLater, pursesOf } from '#estimating/purses/purses.js';
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

describe('A grant that pays back later', () => {
  const grant = (change: Partial<Fund> = {}) =>
    tinyFund('grant', 0, {
      reimbursement: { frontedBy: 'ops', lagYears: 2 },
      inflows: [flow(2029, 500, 2031)],
      ...change,
    });
  const ops = (change: Partial<Fund> = {}) =>
    tinyFund('ops', 0, { inflows: [flow(2028, 1000, 2033), flow(2030, 1000, 2032)], ...change });
  const frontingsIn = (...funds: Fund[]) => {
    const campus = tinyCampus({ funds });
    return frontingsOf(campus, pursesOf(campus));
  };

  test('has no purse of its own, and one that pays at once has', () => {
    expect(pursesIn(grant())).toEqual([]);
    const atOnce = { reimbursement: { frontedBy: 'ops', lagYears: 0 } };
    expect(pursesIn(grant(atOnce))).toHaveLength(1);
    expect(pursesIn(grant(atOnce))[0]?.restriction.lines).toEqual(['build']);
    const inAYear = { reimbursement: { frontedBy: 'ops', lagYears: 1 } };
    expect([grant(inAYear), grant(atOnce), ops()].map(paysBackLater)).toEqual([true, false, false]);
  });

  test('is fronted by the purses of its fund while the award runs and the money comes back in time', () => {
    expect(frontingsIn(tinyFund('other', 900), ops(), grant())).toMatchObject([
      // From FY29, when the award opens, to FY31, when it ends.
      { purse: 8, inflow: 0, most: 500_00, first: 1, last: 3, lag: 2 },
      // From FY30, when the purse opens, to FY30, since what is spent in FY31 comes back in FY33.
      { purse: 9, inflow: 0, most: 500_00, first: 2, last: 2, lag: 2 },
    ]);
  });

  test('is not fronted where it would come back too late, brings nothing or is not counted', () => {
    const late = ops({ inflows: [flow(2028, 1000, 2030)] });
    expect(frontingsIn(late, grant())).toEqual([]);
    expect(frontingsIn(ops({ inflows: [flow(2028, 1000, 2031)] }), grant())).toHaveLength(1);
    expect(frontingsIn(ops(), grant({ inflows: [flow(2029, 0, 2031)] }))).toEqual([]);
    expect(frontingsIn(ops(), grant({ counted: false }))).toEqual([]);
    expect(frontingsIn(ops(), tinyFund('plain', 500))).toEqual([]);
  });

  test('fronts what both the grant and the purse may pay, which is builds alone', () => {
    const only = (sites: string[]) => ({ ...ANYTHING, sites });
    const campus = tinyCampus({
      funds: [
        ops({ inflows: [{ ...flow(2028, 1000, 2033), restriction: only(['A', 'B']) }] }),
        grant({ inflows: [{ ...flow(2029, 500, 2031), restriction: only(['B', 'C']) }] }),
      ],
    });
    const purses = pursesOf(campus);
    const [fronting] = frontingsOf(campus, purses);
    const may = (site: string, line: 'build' | 'care' = 'build') =>
      mayFront(fronting!, purses, { line, site, buildType: 'beds' });
    expect(['A', 'B', 'C'].map((site) => may(site))).toEqual([false, true, false]);
    expect(may('B', 'care')).toBe(false);
    expect(mayFront(fronting!, [], { line: 'build', site: 'B' })).toBe(false);
    expect(mayFront({ ...fronting!, inflow: 5 }, purses, { line: 'build', site: 'B' })).toBe(false);
  });

  test('pays back what an entry names it for, after its lag', () => {
    const entry = {
      fund: 'ops',
      inflow: 0,
      year: fiscalYear(2029),
      line: 'build' as const,
      amount: cents(300_00),
    };
    const back = (fund: string, funds: Fund[]) =>
      paybackOf({ funds }, { ...entry, repaidBy: { fund, inflow: 0 } });
    expect(back('grant', [ops(), grant()])).toEqual({ year: 2031, amount: 300_00 });
    expect(back('grant', [grant({ counted: false })])).toBeUndefined();
    expect(back('ops', [ops(), grant()])).toBeUndefined();
    expect(back('grant', [ops()])).toBeUndefined();
    expect(paybackOf({ funds: [grant()] }, entry)).toBeUndefined();
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
