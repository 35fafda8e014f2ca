import type {
  CompostRow,
  MoneyRow,
  PlanOverview,
  YearRow,
} from '#explain/overview/plan-overview.js';
import { groupBy } from '../format/group-by.js';
import { careRows, seasonNames, wantedHours } from './care-rows.js';

/** The resources of the thin bands, in the order in which they are drawn. */
export const BANDS = ['money', 'summerHours', 'compost', 'sitesUsed'] as const;
export type Band = (typeof BANDS)[number];

/** One year of the strip: its row, and the share (0 to 1) of each resource that is used by then. */
export interface StripYear {
  readonly row: YearRow;
  /** `null`: the overview does not say. */
  readonly used: Readonly<Record<Band, number | null>>;
}

/** Which limit of the overview belongs to which band. */
export const LIMIT_OF_BAND: Readonly<Record<Band, string>> = {
  money: 'money',
  summerHours: 'summer hours',
  compost: 'compost',
  sitesUsed: 'sites',
};

export function stripYears(overview: PlanOverview): readonly StripYear[] {
  const summerHours = summerHoursByYear(overview);
  const money = new Map(overview.money.map((row) => [row.year, moneyUsed(row)]));
  const compost = groupBy(overview.compost, ({ year }) => year);
  return overview.years.map((row) => ({
    row,
    used: {
      money: money.get(row.year) ?? null,
      summerHours: summerHours.get(row.year) ?? null,
      compost: compostUsed(compost.get(row.year) ?? []),
      sitesUsed: sitesUsed(row, overview.totals.candidates),
    },
  }));
}

/** First year in which a band falls short, as the overview's limits say; `null` if never. */
export function limitYear(overview: PlanOverview, band: Band): string | null {
  return overview.limits.find(({ resource }) => resource === LIMIT_OF_BAND[band])?.year ?? null;
}

/** The earliest of all limits within the years of the plan; `null` if none falls short. */
export function firstLimitYear(overview: PlanOverview): string | null {
  const limited = new Set(overview.limits.map(({ year }) => year));
  return overview.years.find(({ year }) => limited.has(year))?.year ?? null;
}

/** Spent / (spent + left at year end, lapsed or not). */
function moneyUsed(row: MoneyRow): number | null {
  const spent = row.build + row.care + row.positions + row.compost + row.standing;
  return share(spent, spent + Math.max(0, row.closing) + row.lapsed);
}

/** Used / (used + given away + left - bought): what had to be bought was not there. */
function compostUsed(rows: readonly CompostRow[]): number | null {
  const sum = (of: (row: CompostRow) => number): number =>
    rows.reduce((total, row) => total + of(row), 0);
  const used = sum((row) => row.builds + row.topDress);
  const left = rows.at(-1)?.stock ?? 0;
  return share(used, used + sum((row) => row.givenAway - row.bought) + left);
}

/** Hours wanted / hours of those already there, in the summer or the season that leads the list. */
function summerHoursByYear(overview: PlanOverview): ReadonlyMap<string, number | null> {
  const season = seasonNames(overview)[0];
  if (season === undefined) return new Map();
  return new Map(
    careRows(overview, season).map((row) => [row.year, share(wantedHours(row), row.supplyNow)]),
  );
}

/** Candidates that can no longer be prepared / all candidates; all, where the promise wants more. */
function sitesUsed({ sitesWanted, sitesLeft }: YearRow, candidates: number): number | null {
  return sitesWanted > sitesLeft ? 1 : share(candidates - sitesLeft, candidates);
}

/** Part of a whole, at most 1. Something wanted of nothing is all of it; nothing of nothing is unknown. */
function share(part: number, whole: number): number | null {
  if (whole <= 0) return part > 0 ? 1 : null;
  return Math.min(1, Math.max(0, part / whole));
}
