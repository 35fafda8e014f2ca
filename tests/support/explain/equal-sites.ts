import type { CareCoefficients, Component } from '#domain/component.js';
import type { Campus } from '#domain/campus.js';
import { centiHours } from '#units/centihours.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { promise } from '../tiny/promises.js';
import {
  byComponent,
  tinyCampus,
  tinyFund,
  tinyPool,
  tinySite,
  tinyType,
} from '../tiny/tiny-campus.js';

const AREA = 8500;
export const SHARES = { summer: 0.45, fall: 0.22, winter: 0.08, spring: 0.25 };

/** Square feet of a 9,600 sf site, and m1, m∞ and k of each component. */
export const MIX: Partial<
  Record<Component, readonly [sqFt: number, m1: number, settled: number, k: number]>
> = {
  'annual-bed': [960, 150, 120, 0.7],
  'perennial-bed': [1840, 75, 22, 0.7],
  woody: [2400, 55, 18, 0.6],
  'rain-garden': [800, 60, 20, 0.7],
  meadow: [800, 30, 5, 0.8],
  path: [2800, 8, 8, 0],
};

const scaled = (hours: number, sqFt: number) => (hours * sqFt * (AREA / 9600)) / 1000;

/** Hours a year of one site at an age. */
export function siteHours(age: number): number {
  return Object.values(MIX).reduce((sum, [sqFt, m1, settled, k]) => {
    const hours = settled + (m1 - settled) * Math.exp(-k * (age - 1));
    return sum + scaled(hours, sqFt);
  }, 0);
}

/** Hours a year of n sites at the ages 1 to n, as the closed form of the series. */
export function hoursOfSites(n: number): number {
  return Object.values(MIX).reduce((sum, [sqFt, m1, settled, k]) => {
    const early = k === 0 ? n : (1 - Math.exp(-k * n)) / (1 - Math.exp(-k));
    return sum + scaled(settled * n + (m1 - settled) * early, sqFt);
  }, 0);
}

const careOf = (component: Component): CareCoefficients => {
  const [, m1, settled, k] = MIX[component] ?? [0, 0, 0, 0];
  return {
    ...tinyCampus().care[component],
    firstYearHours: m1,
    matureHours: settled,
    decayPerYear: k,
    seasonShares: SHARES,
    harvestHours: 0,
    suppliesDollars: 0,
    topDressInches: 0,
  };
};

/** A campus of equal sites, one for each year, with so many hours in each season and enough of all else. */
export function equalSites(years: number, hours: Readonly<Record<string, number>>): Campus {
  const base = tinyCampus();
  const shares = byComponent((c) => (MIX[c]?.[0] ?? 0) / 9600);
  const mix = tinyType('mix', 'perennial-bed', {
    shares,
    prepareHoursPer1000SqFt: 0,
    plantHoursPer1000SqFt: 0,
    compostInches: byComponent(() => 0),
  });
  const supply = Object.entries(hours).map(
    ([season, h]) => [season, centiHours(Math.round(h * 100))] as const,
  );
  const pool = tinyPool('crew', 100_000);
  return tinyCampus({
    calendar: { ...base.calendar, horizonYears: years },
    candidates: Array.from({ length: years }, (_, i) =>
      tinySite(`S${String(i + 1).padStart(2, '0')}`, { areaSqFt: AREA, buildTypes: ['mix'] }),
    ),
    buildTypes: [mix],
    care: byComponent(careOf),
    pools: [{ ...pool, hours: { ...pool.hours, ...Object.fromEntries(supply) } }],
    funds: [tinyFund('capital', 10_000_000, { carry: 30 })],
    commitments: [
      promise('yearly', 'intended', {
        kind: 'sites-each-year',
        count: 1,
        from: fiscalYear(2028),
        to: fiscalYear(2028 + years - 1),
        countsFromSqFt: 1000,
      }),
    ],
  });
}
