import { describe, expect, test } from 'vitest';
import { plannedSeasons } from '#domain/calendar.js';
import { TASK_CLASSES } from '#domain/labor.js';
import { laborNeeds } from '#estimating/plan-needs/labor-needs.js';
import { laborSources } from '#estimating/season-supply/sources.js';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import {
  careByFormula,
  overviewOf,
  SECOND_GARDENER,
  thinSummer,
  USUAL,
} from '../support/overview-cases.js';
import { smallCampus, type Placed } from '../support/small-campus.js';

describe('the first limit', () => {
  test('where nobody is short, says so and gives the tightest point', () => {
    const { overview } = overviewOf();
    const summer = overview.limits.find(({ resource }) => resource === 'summer hours')!;
    expect(summer).toMatchObject({ year: null, label: null, shortBy: null });
    const rows = overview.seasons.filter(({ season }) => season === 'summer');
    const tightest = rows.reduce((a, b) => (use(b) > use(a) ? b : a));
    expect(summer.sentence).toContain(`Tightest: ${tightest.label}`);
  });

  test('hours short without proposed positions are those of the worst set of work (Hall)', () => {
    const { campus, plan, overview } = overviewOf(USUAL, { campus: thinSummer(120) });
    const bare = { ...plan.decisions, hires: [] };
    const needs = laborNeeds(campus, bare);
    for (const season of plannedSeasons(campus.calendar)) {
      const sources = laborSources(campus, bare, season);
      let worst = 0;
      for (let set = 1; set < 1 << TASK_CLASSES.length; set++) {
        const classes = TASK_CLASSES.filter((_, bit) => set & (1 << bit));
        const wanted = classes.reduce((sum, c) => sum + needs[season.index]![c], 0);
        const had = sources
          .filter(({ tasks }) => tasks.some((task) => classes.includes(task)))
          .reduce((sum, { hours }) => sum + hours, 0);
        worst = Math.max(worst, wanted - had);
      }
      expect(overview.seasons[season.index]!.shortNow).toBeCloseTo(worst / 100, 9);
    }
  });

  test('is the first summer whose care passes 120 hours, and hires do not hide it', () => {
    const campus = thinSummer(120);
    const { overview } = overviewOf(USUAL, { campus, hires: SECOND_GARDENER });
    // Kitchen Court, planted in 2025, takes summers of age 3 on; Library Steps joins in summer 2028.
    const alone = careByFormula({ type: 'edible', thousands: 4.8, age: 3 });
    const both =
      careByFormula({ type: 'edible', thousands: 4.8, age: 4 }) +
      careByFormula({ type: 'edible', thousands: 8, age: 1 });
    expect(alone).toBeLessThan(120);
    const [first] = overview.limits;
    expect(first).toMatchObject({
      resource: 'summer hours',
      year: 'FY29',
      label: 'summer 2028 (opens FY29)',
      unit: 'hours',
    });
    expect(first!.shortBy).toBeCloseTo(both - 120, 1);
    expect(overview.headline.firstLimit).toMatch(
      /^Summer hours run short first: \d+ hours in summer 2028 \(opens FY29\), without positions/,
    );
  });

  test('sites from that year on rest on a position that is only proposed', () => {
    const { overview } = overviewOf(USUAL, { campus: thinSummer(120), hires: SECOND_GARDENER });
    const marks = overview.years.flatMap(({ sites }) => sites.map((s) => s.needsProposedPosition));
    expect(marks).toEqual([true, true, true]);
    const { overview: roomy } = overviewOf();
    expect(roomy.years.flatMap(({ sites }) => sites).every((s) => !s.needsProposedPosition)).toBe(
      true,
    );
  });

  test('compost runs short in the season whose purchase covers it', () => {
    const campus = smallCampus((file) => {
      (file['compost'] as Record<string, unknown>)['openingStockCubicYards'] = 0;
      (file['compost'] as Record<string, unknown>)['madeCubicYards'] = { spring: 10 };
    });
    const { overview } = overviewOf(USUAL, { campus });
    const limit = overview.limits.find(({ resource }) => resource === 'compost')!;
    // 8,000 sq ft x 0.5 bed x 4 in / 324 sq ft-in per cubic yard, 5 % waste; nothing is made by then.
    expect(limit).toMatchObject({ year: 'FY28', label: 'fall 2027 (FY28)' });
    expect(limit.shortBy).toBeCloseTo(((8000 * 0.5 * 4) / 324) * 1.05, 2);
    const bought = overview.compost.find(({ label }) => label === 'fall 2027 (FY28)')!.bought;
    expect(bought).toBe(Math.ceil(limit.shortBy!));
  });

  test('money is short in the year that only a pledge can pay', () => {
    const campus = smallCampus((file) => {
      file.funds[2]!['status'] = 'pledged';
      file.funds[3]!['floorDollars'] = 50_000;
    });
    const placed: Placed[] = [
      ['S-1', 'edible', 2028],
      ['S-2', 'pollinator', 2029],
    ];
    const { overview } = overviewOf(placed, { campus });
    const cost = 7200 * 9.5 * 1.1 * 1.04 ** 2;
    const capital = 70_000 - 66_560 + 71_400;
    const limit = overview.limits.find(({ resource }) => resource === 'money')!;
    expect(limit.year).toBe('FY29');
    expect(limit.shortBy).toBeCloseTo(cost - capital, 2);
  });

  test('limits come in the order in which they bite', () => {
    const { overview } = overviewOf(USUAL, { campus: thinSummer(120) });
    const years = overview.limits.map(({ year }) => year ?? 'never');
    expect(years).toEqual([...years].sort((a, b) => (a < b ? -1 : 1)));
  });
});

function use(row: PlanOverview['seasons'][number]): number {
  const { year1, year2, year3, mature } = row.careByAge;
  return (year1 + year2 + year3 + mature + row.buildHours + row.superviseHours) / row.supplyNow;
}
