/** Money that is fronted for a grant and paid back; sums are round, so that they are done by hand. */
import { describe, expect, test } from 'vitest';
import type { Campus } from '#domain/campus.js';
import type { Fund } from '#domain/money.js';
import type { Plan, SpendEntry } from '#domain/plan.js';
import { checkFunds } from '#rules/funds/check.js';
import { checkReserveFloor } from '#rules/reserve-floor/check.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { grantedPlan } from '../support/tiny/granted.js';

const REPAID = { fund: 'grant', inflow: 0 };
const builds = ({ spending }: Plan) => spending.filter(({ line }) => line === 'build');

describe('what comes back may be spent then, and not before', () => {
  test.each([
    // Capital has 50 - 40 = 10 thousand left until 20 thousand are back; B asks for 24.
    { lag: 0, year: 2028, short: 0 },
    { lag: 0, year: 2029, short: 0 },
    { lag: 1, year: 2029, short: 0 },
    { lag: 1, year: 2028, short: 14_000_00 },
    { lag: 2, year: 2029, short: 14_000_00 },
    { lag: 2, year: 2030, short: 0 },
    // Back in FY2031, when capital has lapsed.
    { lag: 3, year: 2030, short: 14_000_00 },
  ])('a lag of $lag years, the second site in $year', ({ lag, year, short }) => {
    const { campus, plan, short: found } = grantedPlan(lag, year);
    expect(found).toBe(short);
    expect(checkFunds(campus, plan).length === 0).toBe(found === 0);
  });

  test('the plan says who fronts, and who pays it back', () => {
    const { plan } = grantedPlan(2, 2030);
    const capital = { fund: 'capital', inflow: 0, line: 'build' };
    expect(builds(plan)).toEqual([
      { ...capital, site: 'A', year: 2028, amount: 20_000_00 },
      { ...capital, site: 'A', year: 2028, amount: 20_000_00, repaidBy: REPAID },
      { ...capital, site: 'B', year: 2030, amount: 24_000_00 },
    ]);
  });
});

describe('each rule of a payback is caught', () => {
  const { campus, plan } = grantedPlan(2, 2030);
  const told = (change: (entry: SpendEntry) => SpendEntry, of: Campus = campus) =>
    checkFunds(of, { ...plan, spending: plan.spending.map(change) }).map(({ message }) => message);
  const repaid = (change: Partial<SpendEntry>) => (entry: SpendEntry) =>
    entry.repaidBy ? { ...entry, ...change } : entry;
  const withGrant = (change: Partial<Fund>): Campus => ({
    ...campus,
    funds: campus.funds.map((f) => (f.id === 'grant' ? { ...f, ...change } : f)),
  });
  const same = (entry: SpendEntry) => entry;
  const award = campus.funds[1]!.inflows[0]!;

  test('nothing is wrong with the plan as it is', () => {
    expect(told(same)).toEqual([]);
  });

  test.each<[string, string[], RegExp]>([
    ['a grant pays only afterward', told(repaid({ fund: 'grant' })), /no money numbered 0/],
    [
      'an award that is not there',
      told(repaid({ repaidBy: { fund: 'grant', inflow: 1 } })),
      /no award numbered 1/,
    ],
    [
      'a fund that pays nothing back',
      told(repaid({ repaidBy: { fund: 'care', inflow: 0 } })),
      /care has no award/,
    ],
    [
      'a cent above the award',
      told(same, withGrant({ inflows: [{ ...award, amount: cents(19_999_99) }] })),
      /pays back \$20000.00 of the \$19999.99 awarded in FY28/,
    ],
    [
      'a site that it may not pay',
      told(
        same,
        withGrant({ inflows: [{ ...award, restriction: { ...award.restriction, sites: ['B'] } }] }),
      ),
      /may not pay back build of A/,
    ],
    [
      'spending after its years',
      told(
        same,
        withGrant({ inflows: [{ ...award, year: fiscalYear(2026), lastYear: fiscalYear(2027) }] }),
      ),
      /pays back what is spent in FY26 to FY27/,
    ],
    [
      'another fund fronts',
      told(same, withGrant({ reimbursement: { frontedBy: 'care', lagYears: 2 } })),
      /pays nothing back to capital/,
    ],
    [
      'back a year later, a dollar is spent before it is there',
      told(same, withGrant({ reimbursement: { frontedBy: 'capital', lagYears: 3 } })),
      /pays back in FY31 money that may be spent until FY30/,
    ],
    ['above its ratio', told(same, withGrant({ matchRatio: 0.9 })), /above its share/],
    [
      'paid back by nobody',
      told((entry) => ({
        fund: entry.fund,
        inflow: entry.inflow,
        year: entry.year,
        line: entry.line,
        amount: entry.amount,
        ...(entry.site ? { site: entry.site } : {}),
      })),
      /spends \$64000.00 of the \$50000.00/,
    ],
  ])('%s', (_, messages, wanted) => {
    expect(
      messages.some((message) => wanted.test(message)),
      messages.join('; '),
    ).toBe(true);
  });

  test('the money is away until it is back: a floor counts without it', () => {
    const floors = [10_000_00, 10_000_01].map((floor) => {
      const funds = campus.funds.map((f) =>
        f.id === 'capital' ? { ...f, floor: cents(floor) } : f,
      );
      const spending = plan.spending.filter((s) => s.site !== 'B');
      return checkReserveFloor({ ...campus, funds }, { ...plan, spending }).map((b) => b.message);
    });
    expect(floors[0]).toEqual([]);
    // In FY28 and FY29; in FY30 the grant has paid back.
    expect(floors[1]?.map((m) => m.match(/closes (\S+)/)?.[1])).toEqual(['FY28', 'FY29']);
  });
});
