import type { LimitRow, SeasonRow } from '#explain/overview/plan-overview.js';
import { fixtureYear, type FixtureWish } from './overview-fixture.js';

/** The summers are worked out from the seasons, so that figure and words agree; the rest is invented. */
export function fixtureLimits(
  wish: FixtureWish,
  seasons: readonly SeasonRow[],
): readonly LimitRow[] {
  const short = seasons.find(
    (row) => row.season === 'summer' && !row.afterHorizon && shortBy(row) > 0,
  );
  const within = (index: number): string | null => (index < wish.years ? fixtureYear(index) : null);
  return [
    {
      resource: 'summer hours',
      year: short?.year ?? null,
      label: short?.label ?? null,
      shortBy: short === undefined ? null : shortBy(short),
      unit: 'hours',
      figures: [],
      sentence: 'Without the gardener not yet granted, the care of one site goes undone.',
    },
    {
      resource: 'money',
      year: within(17),
      label: within(17),
      shortBy: wish.years > 17 ? 12_340 : null,
      unit: 'dollars',
      figures: [],
      sentence: 'Building at the usual size costs more than the allotment of the year.',
    },
    {
      resource: 'compost',
      year: within(14),
      label: within(14) === null ? null : `fall 2041 (${fixtureYear(14)})`,
      shortBy: wish.years > 14 ? 17 : null,
      unit: 'cubic yards',
      figures: [],
      sentence: 'Older sites take what new ones need; compost is bought from then on.',
    },
    {
      resource: 'sites',
      year: null,
      label: null,
      shortBy: null,
      unit: 'sites',
      figures: [],
      sentence: 'Some candidates are left at the end of the plan.',
    },
  ];
}

function shortBy(row: SeasonRow): number {
  const care = Object.values(row.careByAge).reduce((sum, hours) => sum + hours, 0);
  return care + row.buildHours + row.superviseHours - row.supplyNow;
}
