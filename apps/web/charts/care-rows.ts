import type { PlanOverview, SeasonRow } from '#explain/overview/plan-overview.js';
import { groupBy } from '../format/group-by.js';

/** The hours of one bar: of a season, or of all seasons of a year added up. */
export interface CareRow {
  readonly label: string;
  readonly year: string;
  readonly year1: number;
  readonly year2: number;
  readonly year3: number;
  readonly mature: number;
  /** Building and supervising: it draws on the same people. */
  readonly building: number;
  readonly supplyNow: number;
  readonly supplyProposed: number;
  /** Hours that would go undone without the positions not yet granted. */
  readonly shortNow: number;
  readonly unserved: number;
  readonly afterHorizon: boolean;
}

/** The choice that adds up the seasons of a year. */
export const WHOLE_YEAR = 'year';

/** Names of the seasons in the order in which they come, but summer first where there is one. */
export function seasonNames(overview: PlanOverview): readonly string[] {
  const names = [...new Set(overview.seasons.map(({ season }) => season))];
  const summer = names.filter((name) => name.toLowerCase() === 'summer');
  return [...summer, ...names.filter((name) => !summer.includes(name))];
}

/** The rows of one season name, or of whole years for `WHOLE_YEAR`, in order of time. */
export function careRows(overview: PlanOverview, choice: string): readonly CareRow[] {
  if (choice !== WHOLE_YEAR) {
    return overview.seasons.filter(({ season }) => season === choice).map(careRow);
  }
  return completeYears(overview.seasons).map(addedUp);
}

/** Hours wanted: care of every age, building and supervising. */
export function wantedHours(row: CareRow): number {
  return row.year1 + row.year2 + row.year3 + row.mature + row.building;
}

/** Plans count in hundredths of an hour; a sum of them may be off by less than half of one. */
const NOTHING = 0.005;

/** The first row within the plan that wants more hours than are there now. */
export function firstShort(rows: readonly CareRow[]): CareRow | undefined {
  return rows.find((row) => !row.afterHorizon && wantedHours(row) - row.supplyNow > NOTHING);
}

/** When a season (or the whole year) first falls short. */
export interface FirstShort {
  readonly label: string;
  readonly year: string;
}

/** As the plan's own limits have it where they speak of the season; else from its hours. */
export function shortIn(overview: PlanOverview, choice: string): FirstShort | null {
  const limit = overview.limits.find(({ resource }) => resource === `${choice} hours`);
  if (limit === undefined) return firstShort(careRows(overview, choice)) ?? null;
  return limit.year === null ? null : { label: limit.label ?? limit.year, year: limit.year };
}

function careRow(season: SeasonRow): CareRow {
  return {
    label: season.label,
    year: season.year,
    ...season.careByAge,
    building: season.buildHours + season.superviseHours,
    supplyNow: season.supplyNow,
    supplyProposed: season.supplyProposed,
    shortNow: season.shortNow,
    unserved: season.unserved,
    afterHorizon: season.afterHorizon,
  };
}

/** Seasons by year; a last year with fewer seasons than the others would look like a drop. */
function completeYears(seasons: readonly SeasonRow[]): readonly (readonly SeasonRow[])[] {
  const years = [...groupBy(seasons, ({ year }) => year).values()];
  const full = Math.max(0, ...years.map((rows) => rows.length));
  return years.filter((rows) => rows.length === full);
}

function addedUp(seasons: readonly SeasonRow[]): CareRow {
  const rows = seasons.map(careRow);
  const sum = (of: (row: CareRow) => number): number =>
    rows.reduce((total, row) => total + of(row), 0);
  const year = seasons[0]?.year ?? '';
  return {
    label: year,
    year,
    year1: sum((row) => row.year1),
    year2: sum((row) => row.year2),
    year3: sum((row) => row.year3),
    mature: sum((row) => row.mature),
    building: sum((row) => row.building),
    supplyNow: sum((row) => row.supplyNow),
    supplyProposed: sum((row) => row.supplyProposed),
    shortNow: sum((row) => row.shortNow),
    unserved: sum((row) => row.unserved),
    afterHorizon: seasons.some(({ afterHorizon }) => afterHorizon),
  };
}
