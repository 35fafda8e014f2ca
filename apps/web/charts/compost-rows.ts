import type { CompostRow, PlanOverview } from '#explain/overview/plan-overview.js';
import { groupBy } from '../format/group-by.js';
import { WHOLE_YEAR } from './care-rows.js';

/** Names of the seasons that have compost on record, in the order in which they come. */
export function compostSeasons({ compost }: PlanOverview): readonly string[] {
  return [...new Set(compost.map(({ season }) => season))];
}

/** Compost of a season or a year, of all grades together. */
export type CompostPeriod = Omit<CompostRow, 'grades'>;

/** The rows of one season name, or of whole years for `WHOLE_YEAR`, in order of time. */
export function compostRows({ compost }: PlanOverview, choice: string): readonly CompostPeriod[] {
  if (choice !== WHOLE_YEAR) return compost.filter(({ season }) => season === choice);
  return [...groupBy(compost, ({ year }) => year)].map(([year, rows]) => addedUp(year, rows));
}

function addedUp(year: string, rows: readonly CompostRow[]): CompostPeriod {
  const sum = (of: (row: CompostRow) => number): number =>
    rows.reduce((total, row) => total + of(row), 0);
  return {
    label: year,
    season: WHOLE_YEAR,
    year,
    made: sum((row) => row.made),
    bought: sum((row) => row.bought),
    builds: sum((row) => row.builds),
    topDress: sum((row) => row.topDress),
    givenAway: sum((row) => row.givenAway),
    stock: rows.at(-1)?.stock ?? 0,
  };
}
