/**
 * Equal sites, one a year, beside the closed form of their care: a component asks for
 * m(a) = m∞ + (m1 - m∞) e^(-k(a-1)) hours per 1,000 sf at age a, so n sites at the ages 1 to n ask for
 * m∞ n + the sum of (m1 - m∞) (1 - e^(-kn)) / (1 - e^(-k)). An outside calculation with the same
 * coefficients gives 1,535, 2,621 hours for 5 and 10 sites of 8,500 sf, and has a flat capacity of 3,340
 * hours a year fall short with 14 sites; the code under test has no part in it.
 */
import { describe, expect, test } from 'vitest';
import { annualHours } from '#explain/questions/limits/annual-hours.js';
import { groundOf } from '#explain/overview/ground.js';
import { seasonRows, wantedHours } from '#explain/overview/labor/season-rows.js';
import { planOf } from '../../support/small-campus.js';
import { equalSites, hoursOfSites, SHARES, siteHours } from '../../support/explain/equal-sites.js';

const YEARS = 15;
const CAPACITY = 3340;
const FIRST = 28;

/** The sum as a series, m∞ n + Σ (m1 - m∞)(1 - e^(-kn)) / (1 - e^(-k)), is that of the ages one by one. */
test.each([
  [5, 1535],
  [10, 2621],
])('%i equal sites ask for %i hours a year', (sites, hours) => {
  expect(Math.round(hoursOfSites(sites))).toBe(hours);
  const ages = Array.from({ length: sites }, (_, i) => siteHours(i + 1));
  expect(ages.reduce((sum, h) => sum + h, 0)).toBeCloseTo(hoursOfSites(sites), 6);
});

test('a flat capacity of the whole year is short with 14 sites', () => {
  const counts = Array.from({ length: YEARS }, (_, i) => i + 1);
  expect(counts.find((n) => hoursOfSites(n) > CAPACITY)).toBe(14);
});

describe('one site a year for fifteen years', () => {
  const hours = Object.fromEntries(
    Object.entries(SHARES).map(([season, share]) => [season, CAPACITY * share]),
  );
  const campus = equalSites(YEARS, hours);
  const placed = campus.candidates.map((s, i) => [s.id, 'mix', 2000 + FIRST + i] as const);
  const rows = seasonRows(groundOf(campus, planOf(campus, placed)));

  /**
   * Hours of a fiscal year, July to June, in which one more site is planted in spring: those planted
   * before count in all seasons, and the new one in spring alone.
   */
  const due = (year: number) => {
    const before = year;
    const springs = Math.min(before + 1, YEARS);
    const rest = hoursOfSites(before) * (1 - SHARES.spring);
    return rest + hoursOfSites(springs) * SHARES.spring;
  };

  test.each(Array.from({ length: YEARS }, (_, i) => i))(
    'year %i asks for the hours of the closed form',
    (year) => {
      const own = rows.filter((row) => row.year === `FY${FIRST + year}`);
      const wanted = own.reduce((sum, row) => sum + wantedHours(row), 0);
      // Hours are kept in whole hundredths or finer, season by season.
      expect(Math.abs(wanted - due(year))).toBeLessThanOrEqual(0.02);
    },
  );

  test('the first year short of hours added up is the one with fourteen sites in summer', () => {
    const years = Array.from({ length: YEARS }, (_, i) => i);
    const short = years.find((year) => due(year) > CAPACITY) ?? NaN;
    const annual = annualHours(rows);
    expect(short).toBe(14);
    expect(annual.year).toBe(`FY${FIRST + short}`);
    expect(annual.shortBy).toBeCloseTo(due(short) - CAPACITY, 0);
  });
});
