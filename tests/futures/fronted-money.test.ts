import { describe, expect, it } from 'vitest';
import { asPlanned } from '#futures/futures.js';
import { budgetOf, Wallet, type Bill } from '#futures/stress/wallet.js';
import { grantedPlan } from '../support/tiny/granted.js';

const { campus, plan } = grantedPlan(2, 2030);
const A: Bill = { line: 'build', site: 'A', buildType: 'beds', yearIndex: 0, amount: 40_000_00 };
const B: Bill = { line: 'build', site: 'B', buildType: 'beds', yearIndex: 2, amount: 24_000_00 };
const walletOf = (...arrives: string[]) => new Wallet(budgetOf(campus, plan), new Set(arrives));

describe('money that is fronted for a grant, in futures', () => {
  it('is the plan itself where nothing is left to chance', () => {
    const met = asPlanned(campus, plan);
    expect(met.skipped).toEqual([]);
    expect(met.unpaid).toBe(0);
    // The grant awards $24,000 and pays back 20,000.
    expect(met.lapsed['grant']).toBe(4_000);
  });

  it('comes back in its year where the grant comes, and never where it does not', () => {
    const paid = walletOf('capital', 'grant');
    expect(paid.pay(A)).toBe(0);
    expect(paid.unspent('capital')).toBe(10_000_00);
    expect(paid.payWhole({ ...B, yearIndex: 1 })).toBe(false);
    expect(paid.payWhole(B)).toBe(true);
    expect(paid.unspent('capital')).toBe(6_000_00);
    const alone = walletOf('capital');
    expect(alone.pay(A)).toBe(0);
    expect(alone.payWhole(B)).toBe(false);
    expect(alone.pay(B)).toBe(14_000_00);
  });

  it('is taken back with a bill that cannot be paid whole', () => {
    const wallet = walletOf('capital', 'grant');
    expect(wallet.payWhole({ ...A, amount: 60_000_00 })).toBe(false);
    expect(wallet.unspent('capital')).toBe(50_000_00);
    expect(wallet.unspent('grant')).toBe(24_000_00);
    expect(wallet.pay({ ...B, amount: 60_000_00 })).toBe(10_000_00);
  });

  it('never fronts above the share of a bill that comes out smaller', () => {
    const wallet = walletOf('capital', 'grant');
    expect(wallet.pay({ ...A, amount: 30_000_00 })).toBe(0);
    expect(wallet.unspent('grant')).toBe(9_000_00);
  });
});
