import { fiscalYear, fiscalYearLabel, yearsLater, type FiscalYear } from '#units/fiscal-year.js';

/** Years after the horizon in which the care of all that was built must still be served. */
export const TAIL_YEARS = 5;

/** Month of the year, 1 (January) to 12 (December). */
export type Month = number;

/** A named set of months. Seasons partition the year. */
export interface SeasonSpec {
  /** Lower-case identifier, for example `summer`. */
  readonly id: string;
  /** Months in calendar order of the season, for example 12, 1, 2. At least one. */
  readonly months: readonly Month[];
}

/** The time that a campus plans in. */
export interface Calendar {
  /** Month in which a fiscal year opens; FY28 opens in it in 2027, or in 2028 where it is January. */
  readonly fiscalYearStartMonth: Month;
  readonly firstYear: FiscalYear;
  /** Years in which sites may be built, 1 to 50. */
  readonly horizonYears: number;
  /** The day from which lead times count. ISO date. */
  readonly planningDate: string;
  /** The year whose prices the file states. */
  readonly priceYear: FiscalYear;
  /** In the order in which they open within a fiscal year; the first may straddle its opening. */
  readonly seasons: readonly SeasonSpec[];
  /** Season in which a site is sheet mulched. */
  readonly prepareSeason: string;
  /** Season in which it is planted, the first such season after it was prepared. */
  readonly plantSeason: string;
  /** Days in which classes are in session; kitchens and students are there. Left out: not recorded. */
  readonly terms: readonly Term[];
}

export interface Term {
  readonly name: string;
  readonly starts: string;
  readonly ends: string;
}

/** One season of one fiscal year. `index` runs from 0 at the first season of the first year. */
export interface SeasonInstance {
  readonly index: number;
  readonly yearIndex: number;
  readonly year: FiscalYear;
  readonly season: SeasonSpec;
  /** Place of the season within its fiscal year, from 0. */
  readonly order: number;
}

/** Horizon plus tail, in years. */
export function plannedYears(calendar: Calendar): number {
  return calendar.horizonYears + TAIL_YEARS;
}

/** The fiscal year at an index from the first year; may lie before it or after the horizon. */
export function yearAt(calendar: Calendar, index: number): FiscalYear {
  return yearsLater(calendar.firstYear, index);
}

export function yearIndexOf(calendar: Calendar, year: FiscalYear): number {
  return year - calendar.firstYear;
}

export function lastBuildYear(calendar: Calendar): FiscalYear {
  return yearAt(calendar, calendar.horizonYears - 1);
}

/** Place of a season within the fiscal year. Throws for a season that the calendar does not have. */
export function seasonOrder(calendar: Calendar, seasonId: string): number {
  const order = calendar.seasons.findIndex((s) => s.id === seasonId);
  if (order < 0) throw new RangeError(`no season called ${seasonId} in the calendar`);
  return order;
}

/** Running index of a season of a fiscal year: `yearIndex * seasons + order`. */
export function seasonIndex(calendar: Calendar, yearIndex: number, order: number): number {
  return yearIndex * calendar.seasons.length + order;
}

export function seasonInstance(calendar: Calendar, index: number): SeasonInstance {
  const perYear = calendar.seasons.length;
  const yearIndex = Math.floor(index / perYear);
  const order = index - yearIndex * perYear;
  const season = calendar.seasons[order];
  if (!season) throw new RangeError(`no season at running index ${index}`);
  return { index, yearIndex, year: yearAt(calendar, yearIndex), season, order };
}

const seasonLists = new WeakMap<Calendar, readonly SeasonInstance[]>();

/** Every season from the first year through the tail, in order. */
export function plannedSeasons(calendar: Calendar): readonly SeasonInstance[] {
  const known = seasonLists.get(calendar);
  if (known) return known;
  const count = plannedYears(calendar) * calendar.seasons.length;
  const list = Array.from({ length: count }, (_, index) => seasonInstance(calendar, index));
  seasonLists.set(calendar, list);
  return list;
}

/**
 * Seasons between preparing a site and planting it, 1 or more: the first planting season after the
 * preparing season on the running index. It stays in the fiscal year on a July-June calendar and
 * falls into the next one on a calendar year.
 */
export function seasonsFromPrepareToPlant(calendar: Calendar): number {
  const gap =
    seasonOrder(calendar, calendar.plantSeason) - seasonOrder(calendar, calendar.prepareSeason);
  return gap > 0 ? gap : gap + calendar.seasons.length;
}

/** Running index of the season in which a site prepared in `yearIndex` is prepared. */
export function prepareIndex(calendar: Calendar, yearIndex: number): number {
  return seasonIndex(calendar, yearIndex, seasonOrder(calendar, calendar.prepareSeason));
}

/** Running index of the season in which a site prepared in `yearIndex` is planted. */
export function plantIndex(calendar: Calendar, yearIndex: number): number {
  return prepareIndex(calendar, yearIndex) + seasonsFromPrepareToPlant(calendar);
}

/**
 * Age of a site planted at running index `planted` in the season at `index`: 1 from the planting
 * season until the season before the next such season, and so on. 0 or less before it is planted.
 */
export function ageAt(calendar: Calendar, planted: number, index: number): number {
  return Math.floor((index - planted) / calendar.seasons.length) + 1;
}

/** Calendar year and month in which month `month` of a season falls. */
function calendarYearOf(calendar: Calendar, year: FiscalYear, month: Month): number {
  return calendar.fiscalYearStartMonth > 1 && month >= calendar.fiscalYearStartMonth
    ? year - 1
    : year;
}

/** One month of a season instance: when it falls, and in which fiscal year its dollars are spent. */
export interface SeasonMonth {
  readonly month: Month;
  readonly calendarYear: number;
  readonly moneyYearIndex: number;
}

/**
 * The months of a season instance. A season that straddles the opening of the fiscal year spends
 * the dollars of its first months in the fiscal year before.
 */
export function seasonMonths(calendar: Calendar, instance: SeasonInstance): SeasonMonth[] {
  const { fiscalYearStartMonth: start } = calendar;
  const months = instance.season.months;
  const opensAt = instance.order === 0 ? months.indexOf(start) : -1;
  return months.map((month, place) => {
    const before = opensAt > 0 && place < opensAt;
    const year = before ? yearsLater(instance.year, -1) : instance.year;
    return {
      month,
      calendarYear: calendarYearOf(calendar, year, month),
      moneyYearIndex: instance.yearIndex - (before ? 1 : 0),
    };
  });
}

/** ISO date of the first day of a season instance. */
export function seasonStart(calendar: Calendar, instance: SeasonInstance): string {
  const first = seasonMonths(calendar, instance)[0];
  if (!first) throw new RangeError(`season ${instance.season.id} has no months`);
  return `${first.calendarYear}-${String(first.month).padStart(2, '0')}-01`;
}

/** `summer 2039 (opens FY40)`: the calendar year in which it starts, and its fiscal year. */
export function seasonLabel(calendar: Calendar, instance: SeasonInstance): string {
  const year = seasonStart(calendar, instance).slice(0, 4);
  const straddles = seasonMonths(calendar, instance).some(
    (m) => m.moneyYearIndex < instance.yearIndex,
  );
  const fiscal = fiscalYearLabel(instance.year);
  return `${instance.season.id} ${year} (${straddles ? 'opens ' : ''}${fiscal})`;
}

/** `spring 2028`: when a site prepared in `year` is planted, as a visitor would say it. */
export function plantingLabel(calendar: Calendar, year: FiscalYear): string {
  const instance = seasonInstance(calendar, plantIndex(calendar, yearIndexOf(calendar, year)));
  return `${instance.season.id} ${seasonStart(calendar, instance).slice(0, 4)}`;
}

/** Fiscal year in which a date falls. `date` is an ISO date. */
export function fiscalYearOf(calendar: Calendar, date: string): FiscalYear {
  const [year = NaN, month = NaN] = date.split('-').map(Number);
  const start = calendar.fiscalYearStartMonth;
  return fiscalYear(start > 1 && month >= start ? year + 1 : year);
}
