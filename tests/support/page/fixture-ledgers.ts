import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { fixtureYear, type FixtureWish } from './overview-fixture.js';

type Ledgers = Pick<PlanOverview, 'funds' | 'money' | 'compost' | 'lapses' | 'paybacks'>;

export function fixtureLedgers(wish: FixtureWish): Ledgers {
  const indexes = Array.from({ length: wish.years }, (_, index) => index);
  return {
    lapses: [
      {
        fund: 'pollinators',
        name: 'Pollinator gift',
        year: fixtureYear(1),
        dollars: 3_200,
        sentence: 'Of the pollinator gift, $3,200 lapses at the end of FY29: no site can use it.',
      },
    ],
    paybacks: [],
    money: indexes.map((index) => ({
      year: fixtureYear(index),
      build: wish.sitesIn(index) * 61_337 * 1.04 ** index,
      care: 4_210 + index * 1_180,
      positions: index >= 8 ? 61_000 : 0,
      compost: index >= 10 ? 850 : 0,
      standing: 168_000,
      received: 243_000 * 1.02 ** index,
      lapsed: index === 1 ? 3_200 : 0,
      closing: Math.max(0, 92_000 - index * 5_400),
    })),
    funds: ['Capital allotment', 'Reunion gift'].flatMap((name, place) =>
      indexes.slice(0, place === 0 ? wish.years : 2).map((index) => ({
        fund: place === 0 ? 'capital' : 'reunion-gift',
        name,
        year: fixtureYear(index),
        opening: index === 0 ? 0 : 13_663,
        received: 75_000,
        paidBack: 0,
        spent: 61_337,
        lapsed: 0,
        closing: 13_663,
        floor: place === 0 ? 10_000 : 0,
      })),
    ),
    compost: indexes.flatMap((index) =>
      ['fall', 'spring'].map((season) => ({
        season,
        label: `${season} ${2027 + index + (season === 'spring' ? 1 : 0)} (${fixtureYear(index)})`,
        year: fixtureYear(index),
        made: 98,
        bought: index >= 10 && season === 'fall' ? 17 : 0,
        builds: season === 'fall' ? wish.sitesIn(index) * 92 : 0,
        topDress: season === 'spring' ? 6 * index : 0,
        givenAway: 0,
        stock: Math.max(0, 120 - index * 12),
        grades: null,
      })),
    ),
  };
}
