/**
 * Overviews of a small campus. Expected numbers are worked out from the file by the formulas of the
 * trade, by hand or in other ways than the code: costs from $/sq ft and growth, care from first
 * year, mature level and decay, short hours from Hall's condition, ledgers from conservation.
 */
import { describe, expect, test } from 'vitest';
import { checkPlan } from '#rules/check-plan.js';
import {
  careByFormula,
  overviewOf,
  SECOND_GARDENER,
  USUAL,
  wellPaid,
} from '../support/overview-cases.js';
import { smallCampus } from '../support/small-campus.js';

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
    expect(row!.busySeasonHours).toBeCloseTo(
      careByFormula({ type: 'edible', thousands: 8, age: 2 }),
      2,
    );
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
    expect(summer('FY29').year1).toBeCloseTo(
      careByFormula({ type: 'edible', thousands: 8, age: 1 }),
      2,
    );
    expect(summer('FY30').year2).toBeCloseTo(
      careByFormula({ type: 'edible', thousands: 8, age: 2 }),
      2,
    );
    expect(summer('FY31').year3).toBeCloseTo(
      careByFormula({ type: 'edible', thousands: 8, age: 3 }),
      2,
    );
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
