/** The ledger of a plan in which capital fronts half of a site and a grant pays it back; sums by hand. */
import { describe, expect, test } from 'vitest';
import { paidFrom } from '#explain/documents/paid-from.js';
import { planOverview } from '#explain/overview/compute-overview.js';
import { groundOf } from '#explain/overview/ground.js';
import { grantedPlan } from '../support/tiny/granted.js';

const { campus, plan } = grantedPlan(2, 2030);
const overview = planOverview(campus, plan, { ending: 'proven', tiers: [], conflict: [] });

describe('money that is fronted and paid back, as a reader sees it', () => {
  test('is away until the grant pays, in the ledgers of both', () => {
    const rows = (id: string) =>
      overview.funds
        .filter(({ fund }) => fund === id)
        .map(({ year, opening, received, paidBack, spent, lapsed, closing }) =>
          [year, opening, received, paidBack, spent, lapsed, closing].join(' '),
        );
    expect(rows('capital')).toEqual([
      'FY28 0 50000 0 40000 0 10000',
      'FY29 10000 0 0 0 0 10000',
      'FY30 10000 0 20000 24000 6000 0',
    ]);
    expect(rows('grant')).toEqual([
      'FY28 0 24000 0 0 0 24000',
      'FY29 24000 0 0 0 4000 20000',
      'FY30 20000 0 -20000 0 0 0',
    ]);
  });

  test('is told in words', () => {
    expect(overview.paybacks.map(({ sentence }) => sentence)).toEqual([
      '“Capital” fronts $20,000 for A Site A in FY28; “Rain grant” pays it back in FY30.',
    ]);
    expect(paidFrom(groundOf(campus, plan), ({ site }) => site === 'A')).toEqual([
      { fund: 'Capital', dollars: 20_000 },
      { fund: 'Capital, paid back by Rain grant in FY30', dollars: 20_000 },
    ]);
  });

  test('without the pledged grant, the year in which its money is missing is named', () => {
    const money = overview.limits.find(({ resource }) => resource === 'money');
    expect(money).toMatchObject({ year: 'FY30', shortBy: 14_000 });
    expect(money?.sentence).toContain('Without “Rain grant”, only pledged');
  });
});
