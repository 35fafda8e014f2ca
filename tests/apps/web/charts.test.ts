import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  careRows,
  seasonNames,
  shortIn,
  wantedHours,
  WHOLE_YEAR,
} from '#apps/web/charts/care-rows.js';
import { compostRows, compostSeasons } from '#apps/web/charts/compost-rows.js';
import { fitColumns } from '#apps/web/charts/columns.js';
import { allFunds, ledgersOf } from '#apps/web/charts/fund-rows.js';
import { stackScale, type StackSpec } from '#apps/web/charts/stack/stack-drawing.js';
import { BANDS, firstLimitYear, stripYears } from '#apps/web/charts/strip-years.js';
import { labelEvery, roundTicks } from '#apps/web/charts/ticks.js';
import { overviewFixture, usualWish } from '../../support/page/overview-fixture.js';

const overview = overviewFixture();

test('ticks start at zero, are even, and reach the highest value with less than one to spare', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 1e7, noNaN: true }), (highest) => {
      const ticks = roundTicks(highest, 5);
      const step = ticks[1]!;
      expect(ticks[0]).toBe(0);
      expect(ticks.at(-1)!).toBeGreaterThanOrEqual(highest * (1 - 1e-12));
      expect(ticks.at(-1)! - step).toBeLessThan(highest);
      expect(ticks.length).toBeLessThanOrEqual(7);
    }),
  );
});

test('columns fill the room, or keep their least width and scroll', () => {
  const limits = { least: 20, most: 64 };
  expect(fitColumns(35, 1_050, limits)).toMatchObject({ width: 30, total: 1_050 });
  expect(fitColumns(50, 300, limits)).toMatchObject({ width: 20, total: 1_000 });
  expect(fitColumns(0, 300, limits).total).toBeGreaterThan(0);
  expect(labelEvery(20, 42)).toBe(5);
  expect(labelEvery(60, 42)).toBe(1);
});

test('summer comes first in the picker, wherever the fiscal year begins', () => {
  expect(seasonNames(overview)).toEqual(['summer', 'fall', 'winter', 'spring']);
  const rotated = { ...overview, seasons: overview.seasons.slice(2) };
  expect(seasonNames(rotated)).toEqual(['summer', 'winter', 'spring', 'fall']);
});

test('no hour is lost when seasons are added up to years', () => {
  const total = (choice: string): number =>
    careRows(overview, choice).reduce((sum, row) => sum + wantedHours(row), 0);
  const bySeason = seasonNames(overview).reduce((sum, name) => sum + total(name), 0);
  expect(total(WHOLE_YEAR)).toBeCloseTo(bySeason, 6);
});

test('a year with a season missing is left out of the yearly totals', () => {
  const cut = { ...overview, seasons: overview.seasons.slice(0, -1) };
  expect(careRows(cut, WHOLE_YEAR)).toHaveLength(careRows(overview, WHOLE_YEAR).length - 1);
});

test('what the plan says of its limits wins; without it the hours decide', () => {
  const limit = overview.limits[0]!;
  expect(shortIn(overview, 'summer')).toEqual({ label: limit.label, year: limit.year });
  const worked = shortIn({ ...overview, limits: [] }, 'summer');
  expect(worked?.label).toBe(limit.label);
  expect(firstLimitYear(overview)).toBe(limit.year);
});

test('shares of the bands lie between none and all, and unknown stays unknown', () => {
  for (const { used } of stripYears(overview)) {
    for (const band of BANDS) {
      expect(used[band]).toBeGreaterThanOrEqual(0);
      expect(used[band]).toBeLessThanOrEqual(1);
    }
  }
  const [first] = stripYears({ ...overview, money: [], compost: [], seasons: [] });
  expect(first?.used).toMatchObject({ money: null, compost: null, summerHours: null });
});

test('what is bought counts as compost that was not there', () => {
  const row = { ...overview.compost[0]!, year: 'FY28', made: 10, topDress: 0, givenAway: 0 };
  const usedIn = (compost: { bought: number; builds: number; stock: number }) =>
    stripYears({ ...overview, compost: [{ ...row, ...compost }] })[0]?.used.compost;
  expect(usedIn({ bought: 0, builds: 10, stock: 30 })).toBeCloseTo(0.25, 9);
  expect(usedIn({ bought: 5, builds: 15, stock: 0 })).toBe(1);
});

test('a plan with no site at all still has its years', () => {
  const empty = overviewFixture({ ...usualWish, sitesIn: () => 0 });
  expect(stripYears(empty)).toHaveLength(35);
  expect(stripYears(empty)[0]?.used.sitesUsed).toBeCloseTo(3 / 32, 9);
});

test('all funds together are the funds added up, year by year', () => {
  const parts = ['opening', 'received', 'paidBack', 'spent', 'lapsed', 'closing', 'floor'] as const;
  const all = allFunds(overview);
  const each = ledgersOf(overview.funds).flatMap(({ rows }) => rows);
  for (const part of parts) {
    const total = (rows: readonly (typeof each)[number][]): number =>
      rows.reduce((sum, row) => sum + row[part], 0);
    expect(total(all), part).toBeCloseTo(total(each), 6);
  }
  expect(all.map(({ year }) => year)).toEqual(overview.years.map(({ year }) => year));
});

test('a year of compost is its seasons added up, with the stock of the last of them', () => {
  const years = compostRows(overview, WHOLE_YEAR);
  const seasons = compostSeasons(overview).flatMap((name) => compostRows(overview, name));
  for (const part of ['made', 'bought', 'builds', 'topDress', 'givenAway'] as const) {
    const total = (rows: readonly (typeof seasons)[number][]): number =>
      rows.reduce((sum, row) => sum + row[part], 0);
    expect(total(years), part).toBeCloseTo(total(seasons), 6);
  }
  const ofYear = overview.compost.filter(({ year }) => year === years[3]?.year);
  expect(years[3]?.stock).toBe(ofYear.at(-1)?.stock);
});

test('what hangs below the axis is drawn to the same scale and stays on the page', () => {
  interface Row {
    readonly label: string;
    readonly year: string;
    readonly up: number;
    readonly down: number;
  }
  const spec: StackSpec<Row> = {
    layers: [{ name: 'up', className: '', of: ({ up }) => up }],
    below: { name: 'down', className: '', of: ({ down }) => down },
    lines: [],
  };
  const amount = fc.double({ min: 0, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(amount, amount, (up, down) => {
      const { y, ticks } = stackScale(spec, [{ label: 'a', year: 'a', up, down }]);
      expect(ticks.length).toBeLessThanOrEqual(13);
      expect(y(0) - y(1)).toBeCloseTo(y(-2) - y(-1), 6);
      expect(y(up)).toBeGreaterThanOrEqual(26 - 1e-6);
      expect(y(-down)).toBeLessThanOrEqual(274 + 1e-6);
    }),
  );
});
