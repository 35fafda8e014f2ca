import { describe, expect, test } from 'vitest';
import {
  careByFormula,
  overviewOf,
  SECOND_GARDENER,
  thinSummer,
  USUAL,
} from '../support/overview-cases.js';
import { smallCampus } from '../support/small-campus.js';

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
      careByFormula({ type: 'edible', thousands: 4.8, age: 4 }) +
      careByFormula({ type: 'edible', thousands: 8, age: 1 });
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
    expect(none!.busySeasonHours).toBeCloseTo(
      careByFormula({ type: 'edible', thousands: 4.8, age: 10 }),
      1,
    );
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
