/** What crews and clerks are told, against values from outside the code. */
import { describe, expect, test } from 'vitest';
import { siteDossier } from '#explain/documents/dossier/compute-dossier.js';
import { deliveryWindows } from '#explain/documents/work-year/deliveries.js';
import { workYear } from '#explain/documents/work-year/compute-work-year.js';
import { staffingRequest } from '#explain/documents/staffing/compute-staffing.js';
import { termShares } from '#explain/documents/staffing/month-shares.js';
import { demoSource, sourceOf } from '../../support/plan-source.js';
import { planOf, smallCampus } from '../../support/small-campus.js';

const source = demoSource('strained');

describe('the takeoff of a dossier', () => {
  // Cubic yards and loads of the brief’s site table, by hand: area x depth / 324 x 1.05, 16 cu yd boxes.
  test.each([
    ['TVU-03', 'edible-mixed', 126, 94, 14],
    ['TVU-19', 'fruit-and-berry', 115, 87, 14],
    ['TVU-07', 'rain-garden-perennial', 80, 60, 10],
  ])('%s as %s', (site, type, compost, chips, loads) => {
    const { campus } = source;
    const { takeoff } = siteDossier(
      sourceOf(campus, planOf(campus, [[site, type, 2029]])).ground(),
      site,
    );
    expect(takeoff.compostCuYd).toBeCloseTo(compost, -0.31);
    expect(takeoff.chipsCuYd).toBeCloseTo(chips, -0.31);
    expect(takeoff.compostLoads + takeoff.chipLoads).toBe(loads);
  });
});

test('months of a season add up to the season, needs and people alike', () => {
  const { months, seasons } = staffingRequest(source.ground(), source.overview.seasons);
  expect(months).toHaveLength(12);
  seasons.forEach((season, place) => {
    const of = months.slice(place * 3, place * 3 + 3);
    const wanted = of.reduce((sum, m) => sum + m.careFood + m.careOther + m.build + m.lead, 0);
    expect(wanted).toBeCloseTo(season.wanted, 6);
    expect(of.reduce((sum, { people }) => sum + people, 0)).toBeCloseTo(season.people, 6);
  });
});

test('students share a spring by its class days: March 31, April 30, May 6', () => {
  const terms = [{ name: 'Spring', starts: '2028-01-18', ends: '2028-05-06' }];
  const { calendar } = smallCampus();
  const shares = termShares({ ...calendar, terms }, { id: 'spring', months: [3, 4, 5] });
  expect(shares).toEqual([31 / 67, 30 / 67, 6 / 67]);
});

test('without a term on record a season is shared evenly', () => {
  const { calendar } = smallCampus();
  const shares = termShares({ ...calendar, terms: [] }, { id: 'fall', months: [9, 10, 11] });
  expect(shares).toEqual([1 / 3, 1 / 3, 1 / 3]);
});

test('deliveries fall on Mondays to Fridays of their season, compost before chips', () => {
  const work = workYear(source.ground())!;
  expect(work.deliveries.length).toBeGreaterThan(0);
  for (const { from, to } of work.deliveries) {
    expect(new Date(from).getUTCDay()).toBe(1);
    expect(new Date(to).getUTCDay()).toBe(5);
  }
  const many = Array.from({ length: 20 }, (_, place) => ({
    ...work.sites[0]!,
    site: `S-${place}`,
  }));
  const windows = deliveryWindows(many, { opens: '2027-09-01', closes: '2027-12-01' });
  expect(windows).toHaveLength(40);
  for (const { from, to } of windows) {
    expect(from >= '2027-09-01' && to < '2027-12-01').toBe(true);
  }
  for (const { site } of many) {
    const [compost, chips] = windows.filter((window) => window.site === site);
    expect(compost!.from <= chips!.from).toBe(true);
  }
});
