/**
 * Overviews of a small campus. Expected numbers are worked out here from the file by the formulas of
 * the trade, by hand or in other ways than the code: costs from $/sq ft and growth, care from first
 * year, mature level and decay, short hours from Hall's condition, ledgers from conservation.
 */
import { describe, expect, test } from 'vitest';
import { plannedSeasons } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { TASK_CLASSES } from '#domain/labor.js';
import type { Plan } from '#domain/plan.js';
import type { SolveReport } from '#domain/tier.js';
import { laborNeeds } from '#estimating/plan-needs/labor-needs.js';
import { laborSources } from '#estimating/season-supply/sources.js';
import { planOverview } from '#explain/overview/compute-overview.js';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { checkPlan } from '#rules/check-plan.js';
import { fiscalYear } from '#units/fiscal-year.js';
import {
  planOf,
  smallCampus,
  smallFile,
  type Placed,
  type SmallFile,
} from '../support/small-campus.js';

const REPORT: SolveReport = { ending: 'proven', tiers: [], conflict: [] };
const USUAL: readonly Placed[] = [
  ['S-1', 'edible', 2028],
  ['S-3', 'pollinator', 2029],
  ['S-2', 'pollinator', 2030],
];
const SECOND_GARDENER = [{ position: 'second-gardener', year: fiscalYear(2032), count: 1 }];

interface Case {
  readonly campus: Campus;
  readonly plan: Plan;
  readonly overview: PlanOverview;
}

function overviewOf(
  placed: readonly Placed[] = USUAL,
  of: { campus?: Campus; hires?: typeof SECOND_GARDENER } = {},
): Case {
  const campus = of.campus ?? smallCampus();
  const plan = planOf(campus, placed, of.hires);
  return { campus, plan, overview: planOverview(campus, plan, REPORT) };
}

/** With an operating allotment that can pay a second gardener. */
function wellPaid(file: SmallFile): void {
  file.funds[1]!['yearlyInflows'] = [{ from: 'FY2028', amountDollars: 180_000, growthPercent: 2 }];
}

/** A summer in which the gardener has few hours, so that care outgrows them. */
const thinSummer = (hours: number) =>
  smallCampus((file) => {
    wellPaid(file);
    file.pools[0]!.hours['summer'] = hours;
  });

describe('the usual plan', () => {
  const { campus, plan, overview } = overviewOf(USUAL, {
    campus: smallCampus(wellPaid),
    hires: SECOND_GARDENER,
  });

  test('keeps every rule, so that its numbers mean something', () => {
    expect(checkPlan(campus, plan)).toEqual([]);
  });

  test('the cost band is 8,000 sq ft x $8 grown by 4 % for one year, -30 % and +50 %', () => {
    const { cost } = overview.next.sites[0]!;
    expect(cost.likely).toBeCloseTo(66_560, 2);
    expect(cost.low).toBeCloseTo(46_592, 2);
    expect(cost.high).toBeCloseTo(99_840, 2);
    expect(cost.dollarsOf).toBe('FY28');
  });

  test('care in the second summer follows first year, mature level and decay', () => {
    const [row] = overview.years[0]!.sites;
    expect(row!.busySeasonHours).toBeCloseTo(careByFormula('edible', 8, 2, 'summer'), 2);
  });

  test('care by age adds up to what is served and unserved in every season', () => {
    for (const season of overview.seasons) {
      const { year1, year2, year3, mature } = season.careByAge;
      const care = ['care-food', 'care-other', 'harvest'];
      const counted = [...plan.labor, ...plan.unserved]
        .filter((entry) => entry.season === season.index && care.includes(entry.taskClass))
        .reduce((sum, entry) => sum + entry.hours / 100, 0);
      // Three classes are each rounded up to a hundredth once.
      expect(counted - (year1 + year2 + year3 + mature)).toBeGreaterThanOrEqual(-1e-9);
      expect(counted - (year1 + year2 + year3 + mature)).toBeLessThan(0.03);
    }
  });

  test('the year after planting, a site is in year 1 in summer and in year 2 the summer after', () => {
    const summer = (year: string) =>
      overview.seasons.find((s) => s.year === year && s.season === 'summer')!.careByAge;
    expect(summer('FY29').year1).toBeCloseTo(careByFormula('edible', 8, 1, 'summer'), 2);
    expect(summer('FY30').year2).toBeCloseTo(careByFormula('edible', 8, 2, 'summer'), 2);
    expect(summer('FY31').year3).toBeCloseTo(careByFormula('edible', 8, 3, 'summer'), 2);
  });

  test('says when a site is prepared and when it is planted', () => {
    expect(overview.headline.nextSite).toBe(
      'Next year, build S-1 Library Steps as an edible mixed, prepared fall 2027 (FY28) and planted spring 2028.',
    );
  });

  test('a gardener of fall 2031 must be asked for ten months before', () => {
    expect(overview.hires).toEqual([
      expect.objectContaining({
        position: 'Second gardener',
        count: 1,
        startsIn: 'fall 2031 (FY32)',
        askBy: 'November 2030',
        term: 'recurring',
      }),
    ]);
    // $61,000 grown by 3 % for the five years from FY27 to FY32.
    expect(overview.hires[0]!.annualDollars).toBeCloseTo(61_000 * 1.03 ** 5, 2);
  });

  test('works that are sure keep Dock Green from being prepared until they are over', () => {
    const blocked = overview.years.filter((y) => y.blocked.includes('S-4 Dock Green'));
    expect(blocked.map(({ year }) => year)).toEqual(['FY28', 'FY29', 'FY30', 'FY31', 'FY32']);
  });

  test('counts the candidates left by windows, works, order and rivals', () => {
    // FY28: S-1, S-3. FY29: S-2 may follow S-1, S-3. FY30: S-2. FY31 on: S-4 is ruled out by S-3.
    expect(overview.years.map(({ sitesLeft }) => sitesLeft)).toEqual([2, 2, 1, 0, 0, 0, 0, 0]);
  });

  test('a promise that is kept in its years ends with them, and one by name is dated', () => {
    const [bank, steady, balance] = overview.promises;
    expect(steady).toMatchObject({ status: 'kept', keptUntil: 'FY30', missedYears: [] });
    expect(bank).toMatchObject({
      status: 'kept',
      keptUntil: null,
      sentence: 'S-2 Mill Bank is prepared fall 2029 (FY30) and planted spring 2030.',
    });
    expect(balance!.status).toBe('kept');
    expect(overview.years.map(({ promiseKept }) => promiseKept).slice(0, 4)).toEqual([
      true,
      true,
      true,
      null,
    ]);
  });

  test('asks for the soil test once, though gate and fact both miss it', () => {
    const rows = overview.unknowns.filter(({ site }) => site === 'S-4');
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({
      what: 'No soil test yet.',
      clearedBy: 'A soil test, read by environmental health and safety',
      consequence: 'Not open to edible mixed before FY30, and then only after a pass.',
    });
  });

  test('says that a site was fixed by hand, and what it opens', () => {
    const sentences = overview.next.sites[0]!.reasons.map(({ sentence }) => sentence);
    expect(sentences[0]).toBe('Fixed by hand: The committee has chosen it.');
    expect(sentences).toContain(
      'Opens the way for S-2 Mill Bank. The water line reaches Mill Bank through Library Steps.',
    );
  });

  test('compares the site with the one other that could be prepared, by facts', () => {
    expect(overview.next.comparedWith).toBe(1);
    const all = [...overview.next.sites[0]!.reasons, ...overview.next.sites[0]!.against];
    const cost = all.find(({ unit }) => unit === 'dollars');
    // S-3 would cost 6,300 sq ft x $9.50 x 1.04 = $62,244, less than $66,560.
    expect(cost!.sentence).toBe('Building is likely to cost $67,000: highest of 2.');
    expect(overview.next.sites[0]!.against).toContainEqual(cost);
  });
});

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
    const alone = careByFormula('edible', 4.8, 3, 'summer');
    const both =
      careByFormula('edible', 4.8, 4, 'summer') + careByFormula('edible', 8, 1, 'summer');
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

describe('gifts and broken promises', () => {
  test('a site of the first year names the gift that it uses and when that would lapse', () => {
    const campus = smallCampus((file) => {
      file.precedence = [];
      file.handPlacements = [];
      delete file.candidateSites[1]!.earliest;
      file.funds[2]!['inflows'] = [{ year: 'FY2028', amountDollars: 40_000 }];
      file.funds[2]!['expires'] = 'FY2028';
    });
    const { overview } = overviewOf([['S-2', 'edible', 2028]], { campus });
    const [promise, gift] = overview.next.sites[0]!.reasons;
    expect(promise!.sentence).toBe('Keeps the binding promise “Mill Bank by FY32”, due by FY32.');
    expect(gift).toMatchObject({
      sentence:
        'Uses $34,000 of “Gift for Mill Bank” before it lapses on June 30, 2028. Only 1 candidate may use it.',
      value: 34_200,
      unit: 'dollars',
    });
  });

  test('a year without a site breaks the yearly promise from there on', () => {
    const { overview } = overviewOf([
      ['S-1', 'edible', 2028],
      ['S-2', 'pollinator', 2030],
    ]);
    const steady = overview.promises.find(({ id }) => id === 'steady')!;
    expect(steady).toMatchObject({
      status: 'partly kept',
      keptUntil: 'FY28',
      missedYears: ['FY29'],
      sentence: 'Kept in 2 of 3 years; missed first in FY29.',
    });
    expect(overview.headline.promise).toBe(
      '“A site every year” is kept until FY28, and missed in 1 year of the plan.',
    );
    expect(overview.years[1]).toMatchObject({ promiseKept: false, sitesWanted: 1 });
  });

  test('no site next year is said, with no reasons and no cautions', () => {
    const { overview } = overviewOf([]);
    expect(overview.headline.nextSite).toBe('No site is to be prepared in FY28.');
    expect(overview.next.sites).toEqual([]);
    expect(overview.cautions).toEqual([]);
  });
});

describe('alternatives', () => {
  test('stopping before a hire keeps the sites that those already there can care for', () => {
    // Kitchen Court and Library Steps take most in summer 2028; Boiler Lawn on top is too much.
    const enough =
      careByFormula('edible', 4.8, 4, 'summer') + careByFormula('edible', 8, 1, 'summer');
    const campus = thinSummer(Math.ceil(enough) + 1);
    const { overview } = overviewOf(USUAL, { campus, hires: SECOND_GARDENER });
    expect(overview.alternatives.map(({ kind }) => kind)).toEqual([
      'this-plan',
      'stop-before-hiring',
      'build-no-more',
    ]);
    const [all, some, none] = overview.alternatives;
    expect([all!.sitesBuilt, some!.sitesBuilt, none!.sitesBuilt]).toEqual([3, 1, 0]);
    expect(some!.title).toBe('Stop after FY28');
    expect(some).toMatchObject({ areaBuiltSqFt: 8000, capitalDollars: 66_560, positionDollars: 0 });
    expect(all!.positionDollars).toBeGreaterThan(0);
    expect(none!.givenUp.join(' ')).toContain('Mill Bank by FY32 (binding): not kept');
    // Kitchen Court alone, ten summers after its planting in spring 2025.
    expect(none!.busySeasonHours).toBeCloseTo(careByFormula('edible', 4.8, 10, 'summer'), 1);
  });

  test('with nobody to hire, skipping the next year is the way to do less', () => {
    const { overview } = overviewOf();
    expect(overview.alternatives.map(({ kind, sitesBuilt }) => [kind, sitesBuilt])).toEqual([
      ['this-plan', 3],
      ['build-no-more', 0],
    ]);
    const free = smallCampus((file) => {
      file.precedence = [];
    });
    const { overview: skipping } = overviewOf(USUAL, { campus: free });
    expect(skipping.alternatives.map(({ kind, sitesBuilt }) => [kind, sitesBuilt])).toEqual([
      ['this-plan', 3],
      ['skip-next-year', 2],
      ['build-no-more', 0],
    ]);
  });
});

function use(row: PlanOverview['seasons'][number]): number {
  const { year1, year2, year3, mature } = row.careByAge;
  return (year1 + year2 + year3 + mature + row.buildHours + row.superviseHours) / row.supplyNow;
}

interface CareOfFile {
  readonly firstYearHoursPer1000SqFt: number;
  readonly matureHoursPer1000SqFt: number;
  readonly decayPerYear: number;
  readonly seasonShares: Record<string, number>;
  readonly harvestHoursPer1000SqFt: number;
  readonly bearing: readonly number[];
  readonly harvestSeasonShares: Record<string, number>;
}

/** m(a) = mature + (first - mature) e^(-k (a - 1)), by season share; harvest by bearing. */
function careByFormula(type: string, thousands: number, age: number, season: string): number {
  const file = smallFile();
  const shares = file.buildTypes.find(({ id }) => id === type)!.componentShares;
  return Object.entries(shares).reduce((sum, [component, share]) => {
    const care = file.care[component] as unknown as CareOfFile;
    const { firstYearHoursPer1000SqFt: first, matureHoursPer1000SqFt: mature } = care;
    const yearly = mature + (first - mature) * Math.exp(-care.decayPerYear * (age - 1));
    const crop = care.bearing[Math.min(age, care.bearing.length) - 1] ?? 0;
    const picked = care.harvestHoursPer1000SqFt * crop * (care.harvestSeasonShares[season] ?? 0);
    return sum + thousands * share * (yearly * (care.seasonShares[season] ?? 0) + picked);
  }, 0);
}
