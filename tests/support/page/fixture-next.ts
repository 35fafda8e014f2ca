import type { NextYear, UnknownRow } from '#explain/overview/plan-overview.js';
import { fixtureYear, type FixtureWish } from './overview-fixture.js';

export const fixtureUnknowns: readonly UnknownRow[] = [
  {
    site: 'TVU-26',
    name: 'Fieldhouse Slope',
    what: 'Soil lead is not known.',
    clearedBy: 'Soil laboratory, then EHS',
    consequence: 'Edible build types are blocked.',
  },
  {
    site: 'TVU-30',
    name: 'Bindery Pocket',
    what: 'Load limit over the cellar is not known.',
    clearedBy: 'Structural engineer',
    consequence: 'No truck may tip there.',
  },
];

export function fixtureNext(wish: FixtureWish): NextYear {
  const names =
    wish.names === 'long'
      ? ['Terrace north of the former Chemical Engineering Library loading dock, upper half']
      : ['East Hall Court', 'Harbor Bend'];
  const count = Math.min(wish.sitesIn(0), names.length);
  return {
    year: fixtureYear(0),
    planting: 'spring 2028',
    comparedWith: 12,
    sites: names.slice(0, count).map((name, index) => ({
      site: index === 0 ? 'TVU-19' : 'TVU-07',
      name,
      zone: 'East Housing',
      buildType: 'fruit and berry',
      areaSqFt: 8_900,
      cost: { low: 49_840, likely: 71_200, high: 106_800, dollarsOf: 'FY28' },
      reasons: [
        {
          sentence: 'Uses the reunion gift of $38,000, which expires on 30 June 2029.',
          value: 38_000,
          unit: 'dollars',
          figures: [],
          source: 'campus file, fund reunion-gift',
        },
        {
          sentence: 'Adds about 158 hours in its second summer, 14 fewer than TVU-03.',
          value: 158,
          unit: 'hours',
          figures: [],
          source: 'care coefficients, judgement',
        },
      ],
      against: [
        {
          sentence: '2,200 fewer people walk past on a day than at TVU-03.',
          value: 2_200,
          unit: 'walkers per day',
          figures: [],
          source: 'count of 12 October 2026',
        },
      ],
      openGates: [
        {
          site: 'TVU-19',
          name,
          what: 'The locate ticket is pending.',
          clearedBy: 'Utility locating service and campus locator',
          consequence: 'No digging before the marks are on the ground.',
        },
      ],
    })),
  };
}
