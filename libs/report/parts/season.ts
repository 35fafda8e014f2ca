import type { PlanOverview, SeasonRow } from '#explain/overview/plan-overview.js';

/** Seasons of the kind that asks for most care, within the years of the plan. */
export function busySeasonRows({ seasons }: PlanOverview): readonly SeasonRow[] {
  const within = seasons.filter(({ afterHorizon }) => !afterHorizon);
  const names = [...new Set(within.map(({ season }) => season))];
  const care = (name: string) =>
    within.filter(({ season }) => season === name).reduce((sum, row) => sum + careOf(row), 0);
  const busiest = names.reduce((a, b) => (care(b) > care(a) ? b : a), names[0] ?? '');
  return within.filter(({ season }) => season === busiest);
}

/** Hours of care and harvest, all ages. */
export function careOf({ careByAge: { year1, year2, year3, mature } }: SeasonRow): number {
  return year1 + year2 + year3 + mature;
}

/** All hours that a season asks for. */
export function wanted(row: SeasonRow): number {
  return careOf(row) + row.buildHours + row.superviseHours;
}
