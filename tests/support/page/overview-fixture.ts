import type { PlanOverview, YearSite } from '#explain/overview/plan-overview.js';
import { fixtureAlternatives } from './fixture-alternatives.js';
import { fixtureLedgers } from './fixture-ledgers.js';
import { fixtureLimits } from './fixture-limits.js';
import { fixtureNext, fixtureUnknowns } from './fixture-next.js';
import { fixtureSeasons } from './fixture-seasons.js';

/**
 * An overview for tests of the page only. It is set in the invented Tamarack Vale University, but no
 * solver made it: the numbers are there to be seen and compared, and mean nothing.
 */
export interface FixtureWish {
  /** Years of the plan, 1 to 50. */
  readonly years: number;
  /** Sites built in the year of an index from 0. */
  readonly sitesIn: (index: number) => number;
  /** Whether names are as long as names get. */
  readonly names: 'usual' | 'long';
}

export const usualWish: FixtureWish = {
  years: 35,
  sitesIn: (index) => (index === 1 ? 2 : index % 9 === 7 || index > 31 ? 0 : 1),
  names: 'usual',
};

const FIRST_YEAR = 28;
const placeNames = ['East Hall Court', 'Harbor Bend', 'Kiln Hall South Lawn', 'Alder Steps'];
const zones = ['East Housing', 'Harbor Walk', 'Kiln Hall Quad', 'Science Row'];
const buildTypes = ['fruit and berry', 'perennial and rain', 'edible mixed', 'perennial'];

export const fixtureYear = (index: number): string =>
  `FY${String((FIRST_YEAR + index) % 100).padStart(2, '0')}`;

export function overviewFixture(wish: FixtureWish = usualWish): PlanOverview {
  const years = Array.from({ length: wish.years }, (_, index) => yearRow(wish, index));
  const built = years.flatMap(({ sites }) => sites);
  const seasons = fixtureSeasons(wish);
  const limits = fixtureLimits(wish, seasons);
  const summerLimit = limits.find(({ resource }) => resource === 'summer hours');
  const firstYear = fixtureYear(0);
  return {
    campus: {
      id: 'tvu-strained',
      name: 'Tamarack Vale University',
      program: 'Landscape conversion program (strained)',
      dataDate: '2027-07-01',
    },
    firstYear,
    lastYear: fixtureYear(wish.years - 1),
    solve: {
      ending: 'time-limit',
      tiers: fixtureTiers,
      sentence: 'No plan can be more than 2.4% better in benefit; the aims before it are proven.',
    },
    headline: {
      nextSite:
        years[0]?.sites.length === 0
          ? `No site is planned for ${firstYear}.`
          : `In ${firstYear}, prepare TVU-19 East Hall Court as fruit and berry, planted spring 2028.`,
      firstLimit: !summerLimit?.label
        ? 'Nothing falls short within the plan.'
        : `Summer hours fall short first, in ${summerLimit.label}.`,
      promise: 'One site a year is kept until FY34 and missed in FY35.',
    },
    next: fixtureNext(wish),
    years,
    seasons,
    ...fixtureLedgers(wish),
    alternatives: fixtureAlternatives,
    hires: [
      {
        position: 'Gardener, full time',
        count: 1,
        startsIn: 'spring 2036',
        year: 'FY36',
        askBy: 'November 2034',
        annualDollars: 61_000,
        term: 'recurring',
      },
    ],
    limits,
    promises: fixturePromises,
    unknowns: fixtureUnknowns,
    cautions: [
      'Have public and campus utilities located and marked before any digging or aeration; a drawn boundary is no locate.',
      'Soil results here are a screening, not a clearance. EHS decides what may be eaten.',
      'Keep compost and chips off tree trunks; ask the arborist before work in a root protection area.',
    ],
    sources: [
      {
        number: 'Areas',
        how: 'Inside the boundary, on the ellipsoid.',
        source: 'campus file, WGS 84',
      },
    ],
    totals: {
      sitesBuilt: built.length,
      candidates: Math.max(32, built.length),
      areaBuiltSqFt: built.reduce((sum, { areaSqFt }) => sum + areaSqFt, 0),
      capitalNominalDollars: built.reduce((sum, { cost }) => sum + cost.likely, 0),
    },
  };
}

function yearRow(wish: FixtureWish, index: number): PlanOverview['years'][number] {
  const count = wish.sitesIn(index);
  return {
    year: fixtureYear(index),
    planting: `spring ${2028 + index}`,
    sites: Array.from({ length: count }, (_, place) => yearSite(wish, index, place)),
    blocked: index === 3 || index === 4 ? ['TVU-14 Tunnel Green', 'TVU-15 Lab Yard'] : [],
    promiseKept: index === 0 ? null : count > 0,
    sitesWanted: Math.max(1, count),
    sitesLeft: Math.max(count, 29 - index),
    hires: index === 8 ? ['1 gardener, full time'] : [],
  };
}

function yearSite(wish: FixtureWish, year: number, copy: number): YearSite {
  const index = year + copy * 11;
  const place = index % placeNames.length;
  const area = 5_100 + ((index * 2_300) % 9_000);
  const likely = Math.round(area * 8 * 1.04 ** year);
  const long = 'Terrace north of the former Chemical Engineering Library loading dock';
  return {
    site: `TVU-${String(((index + 18) % 60) + 1).padStart(2, '0')}`,
    name: wish.names === 'long' ? long : (placeNames[place] ?? ''),
    zone: wish.names === 'long' ? 'Old Nursery and Fieldhouse Approach' : (zones[place] ?? ''),
    buildType: buildTypes[place] ?? '',
    areaSqFt: index % 13 === 5 ? 900 : area,
    cost: { low: likely * 0.7, likely, high: likely * 1.5, dollarsOf: fixtureYear(year) },
    busySeasonHours: 158,
    needsProposedPosition: year >= 13,
    countsTowardsPromise: index % 13 !== 5,
  };
}

const fixtureTiers: PlanOverview['solve']['tiers'] = [
  {
    name: 'unserved-peak',
    unit: 'hours',
    sense: 'min',
    value: 0,
    bound: 0,
    gap: 0,
    tolerance: 0.01,
    proven: true,
  },
  {
    name: 'benefit',
    unit: 'points',
    sense: 'max',
    value: 2868.4,
    bound: 2937.2,
    gap: 0.02399,
    tolerance: 0.01,
    proven: false,
  },
  {
    name: 'recurring-cost',
    unit: 'dollars',
    sense: 'min',
    value: 231_480,
    bound: null,
    gap: null,
    tolerance: 1,
    proven: false,
  },
];

const fixturePromises: PlanOverview['promises'] = [
  {
    id: 'one-a-year',
    name: 'One site each year',
    strength: 'intended',
    status: 'partly kept',
    keptUntil: 'FY34',
    missedYears: ['FY35', 'FY44', 'FY53'],
    sentence: 'Three years pass with no site.',
  },
  {
    id: 'reunion-gift',
    name: 'Reunion gift site planted by June 2029',
    strength: 'binding',
    status: 'kept',
    keptUntil: null,
    missedYears: [],
    sentence: 'TVU-19 East Hall Court is planted in spring 2028.',
  },
];
