/**
 * Money that is fronted for reimbursable grants, against the definition written down as an integer program
 * and solved by HiGHS: balances of each purse from year to year, no flows and no cuts.
 */
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import type { Fronting } from '#estimating/purses/frontings.js';
import type { Purse } from '#estimating/purses/purses.js';
import type { Solver } from '#mip/solver.js';
import { payFronted } from '#optimizer/allocate/fronted.js';
import { allocateMoney } from '#optimizer/allocate/money.js';
import type { Bill, Payments } from '#optimizer/allocate/payment-network.js';
import { everyLifecycle } from '#optimizer/columns/lifecycles.js';
import { decisionsOf } from '#optimizer/search/state.js';
import { tablesOf } from '#optimizer/search/tables.js';
import { compareTiers } from '#optimizer/tiers/tier-values.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { bestOfAll } from '../support/tiny/best-of-all.js';
import { canBePaid } from '../support/mip/whole-cents.js';
import { grantedCampus } from '../support/tiny/granted.js';
import { ANYTHING, tinyCampus, tinyFund, tinySite } from '../support/tiny/tiny-campus.js';
import { wander } from '../support/tiny/wander.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

const YEARS = 5;
const RUNS = Number(process.env['FRONTED_RUNS'] ?? 60);
const year = fc.integer({ min: 0, max: YEARS - 1 });
const someYears = fc.tuple(fc.nat(1), fc.nat(2)).map(([first, before]) => ({
  first,
  last: YEARS - 1 - before,
}));
const amount = fc.integer({ min: 1, max: 40 });
/** A bit for each purse or grant that may not pay; most may. */
const closedTo = (most: number) => fc.oneof(fc.constant(0), fc.nat(most));

/** Two purses that front, one that does not, up to two grants; every bill is a build that some may pay. */
const programs = fc.record({
  purses: fc.array(fc.record({ amount, years: someYears }), { minLength: 1, maxLength: 3 }),
  match: fc.constantFrom(undefined, 1),
  grants: fc.array(
    fc.record({
      most: amount,
      years: someYears,
      lag: fc.integer({ min: 1, max: 3 }),
      ratio: fc.constantFrom(undefined, 1, 0.5),
    }),
    { minLength: 1, maxLength: 2 },
  ),
  bills: fc.array(
    fc.record({
      amount: fc.integer({ min: 1, max: 20 }),
      year,
      payers: closedTo(6),
      fronted: closedTo(3),
    }),
    {
      minLength: 1,
      maxLength: 6,
    },
  ),
  unit: fc.constantFrom(1, 100),
});
/** Bills that only the purses which front may pay, in years in which they are open. */
const tightPrograms = programs.map((program) => ({
  ...program,
  purses: program.purses.slice(0, 2).map(({ amount: most }) => ({
    amount: most,
    years: { first: 0, last: YEARS - 1 },
  })),
  bills: program.bills.map((bill) => ({ ...bill, payers: 0, fronted: 0 })),
}));
type Program = typeof programs extends fc.Arbitrary<infer T> ? T : never;

function paymentsOf({ purses: drawn, match, grants, bills, unit }: Program): Payments {
  const purses: Purse[] = drawn.map(({ amount: most, years }, i) => ({
    fund: tinyFund(i < 2 ? 'front' : 'other', 0, i === 2 && match ? { matchRatio: match } : {}),
    inflow: i,
    amount: most * unit,
    ...years,
    restriction: ANYTHING,
  }));
  const frontings = grants.flatMap(({ most, years, lag, ratio }, g): Fronting[] =>
    purses.slice(0, 2).flatMap((purse, p) => {
      const first = Math.max(purse.first, years.first);
      const last = Math.min(purse.last - lag, years.last);
      const grant = tinyFund(`grant ${g}`, 0, ratio === undefined ? {} : { matchRatio: ratio });
      const fronting = { purse: p, grant, inflow: 0, most: most * unit, first, last, lag };
      return first <= last ? [fronting] : [];
    }),
  );
  const grantOf = new Map(frontings.map((f) => [f.grant.id, f.grant]));
  return {
    purses,
    frontings: frontings.map((f) => ({ ...f, grant: grantOf.get(f.grant.id) ?? f.grant })),
    order: purses.map((_, i) => i),
    bills: bills.map((bill): Bill => {
      const payers = purses.flatMap((_, i) => ((bill.payers >> i) & 1 ? [] : [i]));
      const may = (g: string) => (bill.fronted >> Number(g.slice(-1))) % 2 === 0;
      return {
        yearIndex: bill.year,
        amount: bill.amount * unit,
        payers: new Set(payers),
        frontings: frontings.flatMap((f, i) =>
          payers.includes(f.purse) && may(f.grant.id) ? [i] : [],
        ),
      };
    }),
  };
}

/** Payments with every lag so much longer; what then comes back too late is not fronted. */
function slower(payments: Payments, by: number): Payments {
  return {
    ...payments,
    frontings: payments.frontings.map((f) => ({
      ...f,
      lag: f.lag + by,
      last: Math.min(f.last, (payments.purses[f.purse]?.last ?? 0) - f.lag - by),
    })),
  };
}

describe('money that is fronted', () => {
  test('pays all bills where whole cents can, and no others', () => {
    let needed = 0;
    fc.assert(
      fc.property(programs, (program) => {
        const payments = paymentsOf(program);
        const paid = payFronted(payments).isPaid();
        expect(paid).toBe(canBePaid(solver, payments));
        if (paid && !payFronted({ ...payments, frontings: [] }).isPaid()) needed += 1;
      }),
      { numRuns: RUNS },
    );
    fc.assert(
      fc.property(tightPrograms, (program) => {
        const payments = paymentsOf(program);
        expect(payFronted(payments).isPaid()).toBe(canBePaid(solver, payments));
        if (!payFronted({ ...payments, frontings: [] }).isPaid()) needed += 1;
      }),
      { numRuns: RUNS },
    );
    expect(needed).toBeGreaterThan(0);
  });

  test('a longer lag never pays what a shorter one does not', () => {
    fc.assert(
      fc.property(programs, fc.integer({ min: 1, max: 2 }), (program, by) => {
        const payments = paymentsOf(program);
        const later = payFronted(slower(payments, by)).isPaid();
        if (later) expect(payFronted(payments).isPaid()).toBe(true);
      }),
    );
  });

  test('no cent is lost: bills are paid in full, awards and purses never exceeded', () => {
    fc.assert(
      fc.property(programs, (program) => {
        const payments = paymentsOf(program);
        const network = payFronted(payments);
        fc.pre(network.isPaid());
        const paid = network.payments();
        const sum = (of: (p: (typeof paid)[number]) => boolean) =>
          paid.filter(of).reduce((total, p) => total + p.amount, 0);
        payments.bills.forEach((bill, b) => expect(sum((p) => p.bill === b)).toBe(bill.amount));
        payments.frontings.forEach((fronting, f) => {
          const same = (p: (typeof paid)[number]) =>
            p.fronting !== undefined &&
            payments.frontings[p.fronting]?.grant === payments.frontings[f]?.grant;
          expect(sum(same)).toBeLessThanOrEqual(fronting.most);
        });
        payments.purses.forEach((purse, p) => {
          const out = sum((one) => one.purse === p && one.fronting === undefined);
          expect(out).toBeLessThanOrEqual(purse.amount);
        });
      }),
    );
  });
});

describe('plans with a reimbursable grant', () => {
  test('a lag of 0 is the matching grant; a longer one is never better', () => {
    const best = [0, 1, 2, 3].map((lag) => bestOfAll(grantedCampus(lag)));
    const matching = grantedCampus(0);
    const funds = matching.funds.map(({ reimbursement, ...fund }) => fund);
    expect(best[0]).toEqual(bestOfAll({ ...matching, funds }));
    best.slice(1).forEach((values, i) => {
      const before = best[i] ?? [];
      expect(compareTiers(matching, before, values ?? [])).toBeLessThanOrEqual(0);
    });
    expect(best[3]).not.toEqual(best[0]);
    const without = funds.filter(({ id }) => id !== 'grant');
    expect(best[3]).toEqual(bestOfAll({ ...matching, funds: without }));
  });

  test('after any moves the search knows what the accounts say', () => {
    const grant = tinyFund('grant', 0, {
      matchRatio: 0.7,
      reimbursement: { frontedBy: 'capital', lagYears: 1 },
      inflows: [2028, 2029].map((year) => ({
        year: fiscalYear(year),
        amount: cents(11_111_11),
        lastYear: fiscalYear(year + 1),
        restriction: ANYTHING,
      })),
    });
    const campus = tinyCampus({
      candidates: [
        tinySite('A', { areaSqFt: 2400, phasing: { mostYearsApart: 2 } }),
        tinySite('B', { zone: 'south', areaSqFt: 3001 }),
        tinySite('C', { areaSqFt: 1999 }),
      ],
      funds: [
        tinyFund('capital', 13_000, { carry: 2 }),
        grant,
        tinyFund('care', 900, { carry: 9 }),
      ],
    });
    const charges = campusCharges(campus);
    const ground = { campus, charges, lifecycles: everyLifecycle(campus, charges) };
    const tables = tablesOf(ground);
    const moves = fc.array(fc.nat(ground.lifecycles.length - 1), { minLength: 1, maxLength: 12 });
    const seen = new Set<boolean>();
    fc.assert(
      fc.property(moves, (picked) => {
        const state = wander(tables, picked);
        const { shortages } = allocateMoney(campus, decisionsOf(state), charges);
        const paid = state.money.paid(state.costs);
        expect(paid).toBe(shortages.length === 0);
        seen.add(paid);
      }),
      { numRuns: 60 },
    );
    expect(seen.size).toBe(2);
  });
});
