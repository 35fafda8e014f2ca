import { plannedYears, seasonInstance, yearAt } from '#domain/calendar.js';
import { laterChange, type Campus } from '#domain/campus.js';
import type { Placement } from '#domain/plan.js';
import { changeSeason } from '#estimating/site-charges/placed-parts.js';
import type { FiscalYear } from '#units/fiscal-year.js';

/** Fiscal year in which the last ground of a placement is prepared. */
export function finishedIn({ year, secondHalf }: Placement): FiscalYear {
  return secondHalf ?? year;
}

/** Fiscal year in which a placement is returned to lawn; Infinity where it never is. */
export function returnedIn(campus: Campus, placement: Placement): number {
  const { change } = placement;
  if (!change || laterChange(campus, change.id).buildType !== undefined) return Infinity;
  return seasonInstance(campus.calendar, changeSeason(campus, placement) ?? 0).year;
}

/** Whether a placement still stands at the end of a year; left out: at the end of the plan. */
export function standsThrough(campus: Campus, placement: Placement, year?: FiscalYear): boolean {
  const last = year ?? yearAt(campus.calendar, plannedYears(campus.calendar) - 1);
  return returnedIn(campus, placement) > last;
}

/** Square feet of a site that a placement has prepared by the end of a year. */
export function preparedBy(placement: Placement, areaSqFt: number, year: FiscalYear): number {
  const whole = Math.round(areaSqFt);
  if (finishedIn(placement) <= year) return whole;
  return placement.year <= year ? Math.floor(whole / 2) : 0;
}

/**
 * The year in which a placement counts as a site of a least area: the first in which so much of it is
 * prepared; `undefined` where that never is.
 */
export function countsIn(
  placement: Placement,
  areaSqFt: number,
  leastSqFt: number,
): FiscalYear | undefined {
  return [placement.year, finishedIn(placement)].find(
    (year) => preparedBy(placement, areaSqFt, year) >= leastSqFt,
  );
}

/** Build types that a site is over the years: as built, and as it is simplified to. */
export function typesOf(campus: Campus, { buildType, change }: Placement): string[] {
  const later = change ? laterChange(campus, change.id).buildType : undefined;
  return later === undefined ? [buildType] : [buildType, later];
}
