import { describe, expect, test } from 'vitest';
import { overviewOf, USUAL } from '../support/overview-cases.js';
import { smallCampus } from '../support/small-campus.js';

describe('ledgers', () => {
  const { campus, plan, overview } = overviewOf();
  const centsOf = (dollars: number) => Math.round(dollars * 100);

  test('each fund balances to the cent in every year and carries its balance on', () => {
    const closing = new Map<string, number>();
    expect(overview.funds.length).toBeGreaterThan(10);
    for (const row of overview.funds) {
      expect(
        centsOf(row.opening) + centsOf(row.received) - centsOf(row.spent) - centsOf(row.lapsed),
      ).toBe(centsOf(row.closing));
      expect(centsOf(row.opening)).toBe(closing.get(row.fund) ?? 0);
      closing.set(row.fund, centsOf(row.closing));
    }
  });

  test('all that came is spent, lapsed or left', () => {
    const last = 2035;
    const came = campus.funds
      .flatMap(({ inflows }) => inflows)
      .filter(({ year }) => year <= last)
      .reduce((sum, { amount }) => sum + amount, 0);
    const total = (part: 'spent' | 'lapsed') =>
      overview.funds.reduce((sum, row) => sum + centsOf(row[part]), 0);
    const left = overview.funds
      .filter(({ year }) => year === 'FY35')
      .reduce((sum, row) => sum + centsOf(row.closing), 0);
    expect(total('spent') + total('lapsed') + left).toBe(came);
  });

  test('money by line adds up to what the plan spends in the year', () => {
    overview.money.forEach((row, index) => {
      const spent = plan.spending
        .filter(({ year }) => year === 2028 + index)
        .reduce((sum, { amount }) => sum + amount, 0);
      const lines = row.build + row.care + row.positions + row.compost + row.standing;
      expect(centsOf(lines)).toBe(spent);
    });
  });

  test('the year in which S-1 is built costs its build and a year of the gardener', () => {
    expect(overview.money[0]).toMatchObject({ build: 66_560, positions: 0, compost: 0 });
    expect(overview.money[0]!.standing).toBeCloseTo(61_000 * 1.03, 2);
  });

  test('compost balances in every season', () => {
    let stock = 60;
    for (const row of overview.compost) {
      const next = stock + row.made + row.bought - row.builds - row.topDress - row.givenAway;
      expect(row.stock).toBeCloseTo(next, 9);
      stock = row.stock;
    }
  });

  test('a gift that is not used lapses at its end, less its fee and care share', () => {
    const { overview: without } = overviewOf([['S-1', 'edible', 2028]]);
    // $40,000 less 5 % is $38,000, less 10 % for care is $34,200.
    expect(without.lapses).toEqual([
      expect.objectContaining({ fund: 'bank-gift', year: 'FY32', dollars: 34_200 }),
    ]);
  });
});

describe('compost of two grades', () => {
  const two = smallCampus((file) => {
    Object.assign(file['compost'] as object, {
      otherGrade: {
        madeCubicYards: { fall: 9 },
        openingStockCubicYards: 25,
        dollarsPerCubicYard: 20,
        mostBoughtCubicYardsPerSeason: 100,
      },
    });
  });
  const { overview: graded, campus: of } = overviewOf(USUAL, { campus: two });

  test('balances by grade, and both together are what the season tells', () => {
    const opening = { certified: of.compost.openingStock / 100, other: 25 };
    for (const grade of ['certified', 'other'] as const) {
      let stock = opening[grade];
      for (const { grades } of graded.compost) {
        const row = grades![grade];
        expect(stock + row.made + row.bought).toBeCloseTo(row.used + row.givenAway + row.stock, 6);
        expect(Math.min(row.used, row.givenAway, row.stock)).toBeGreaterThanOrEqual(0);
        stock = row.stock;
      }
    }
    for (const { grades, ...all } of graded.compost) {
      const sum = (part: 'made' | 'bought' | 'used' | 'givenAway' | 'stock') =>
        grades!.certified[part] + grades!.other[part];
      expect(sum('used')).toBeCloseTo(all.builds + all.topDress, 6);
      for (const part of ['made', 'bought', 'givenAway', 'stock'] as const)
        expect(sum(part)).toBeCloseTo(all[part], 6);
    }
    // The second site is built in FY29 without food, and takes the other grade first.
    expect(
      graded.compost.reduce((used, { grades }) => used + grades!.other.used, 0),
    ).toBeGreaterThan(20);
  });

  test('is told in one table where there is one grade', () => {
    expect(overviewOf().overview.compost.every(({ grades }) => grades === null)).toBe(true);
  });
});
