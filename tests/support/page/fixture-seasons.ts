import type { SeasonRow } from '#explain/overview/plan-overview.js';
import { fixtureYear, type FixtureWish } from './overview-fixture.js';

const SEASONS = ['summer', 'fall', 'winter', 'spring'] as const;
const SHARE = { summer: 0.45, fall: 0.23, winter: 0.07, spring: 0.25 };
const SUPPLY = { summer: 1_357, fall: 1_825, winter: 380, spring: 1_523 };
const TAIL_YEARS = 5;
const HIRED_FROM = 8;
const GARDENER = { summer: 468, fall: 421, winter: 234, spring: 437 };

export function fixtureSeasons(wish: FixtureWish): readonly SeasonRow[] {
  const years = wish.years + TAIL_YEARS;
  return Array.from({ length: years * 4 }, (_, index) => seasonRow(wish, index));
}

function seasonRow(wish: FixtureWish, index: number): SeasonRow {
  const year = Math.floor(index / 4);
  const season = SEASONS[index % 4] ?? 'summer';
  const builtAt = (age: number): number => {
    const when = year - age;
    return when >= 0 && when < wish.years ? wish.sitesIn(when) : 0;
  };
  const older = Array.from({ length: Math.max(0, year - 3) }, (_, age) => builtAt(age + 4));
  const share = SHARE[season];
  const careByAge = {
    year1: builtAt(1) * 430.5 * share,
    year2: builtAt(2) * 330.4 * share,
    year3: builtAt(3) * 270.3 * share,
    mature: (400 + older.reduce((sum, count) => sum + count * 170.2, 0)) * share,
  };
  const supplyNow = SUPPLY[season];
  const supplyProposed = supplyNow + (year >= HIRED_FROM ? GARDENER[season] : 0);
  const buildHours = season === 'fall' || season === 'spring' ? builtAt(0) * 310 : 0;
  const superviseHours = season === 'fall' ? 88 : 24;
  const wanted = Object.values(careByAge).reduce((sum, hours) => sum + hours, 0);
  const left = supplyProposed - buildHours - superviseHours;
  return {
    index,
    year: fixtureYear(year),
    season,
    label: seasonLabel(season, year),
    careByAge,
    buildHours,
    superviseHours,
    supplyNow,
    supplyProposed,
    shortNow: Math.max(0, wanted + buildHours + superviseHours - supplyNow),
    unserved: Math.max(0, wanted - left),
    afterHorizon: year >= wish.years,
  };
}

function seasonLabel(season: string, year: number): string {
  const calendarYear = 2027 + year + (season === 'winter' || season === 'spring' ? 1 : 0);
  return `${season} ${calendarYear} (${season === 'summer' ? 'opens ' : ''}${fixtureYear(year)})`;
}
