import type { Alternative } from '#explain/overview/plan-overview.js';

export const fixtureAlternatives: readonly Alternative[] = [
  {
    kind: 'this-plan',
    title: 'This plan',
    summary: 'One site a year with one gardener more from spring 2036.',
    sitesBuilt: 30,
    areaBuiltSqFt: 246_200,
    capitalDollars: 4_424_300,
    positionDollars: 2_112_000,
    busySeasonHours: 2_548,
    busySeason: 'summer',
    givenUp: ['One site each year (missed in 3 years)'],
  },
  {
    kind: 'build-no-more',
    title: 'Build no more sites',
    summary: 'Care for what is there and promise nothing new.',
    sitesBuilt: 0,
    areaBuiltSqFt: 0,
    capitalDollars: 0,
    positionDollars: 0,
    busySeasonHours: 204,
    busySeason: 'summer',
    givenUp: ['One site each year', 'Reunion gift site planted by June 2029'],
  },
];
