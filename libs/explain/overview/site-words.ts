import {
  plantingLabel,
  prepareIndex,
  seasonInstance,
  seasonStart,
  yearIndexOf,
  type Calendar,
} from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { preparedYears, type Placement } from '#domain/plan.js';
import { addMonths } from '#units/months.js';
import { fiscalYearLabel, yearsLater, type FiscalYear } from '#units/fiscal-year.js';

/** `TVU-19 East Hall Court`. */
export function siteName(campus: Campus, id: string): string {
  const site = [...campus.candidates, ...campus.existing].find((s) => s.id === id);
  return site ? `${id} ${site.name}` : id;
}

const HALVES = ['first half', 'second half'];

/** `East Hall Court`, or `East Hall Court, first half` where half of it is prepared in the year. */
export function nameOfPart(name: string, placement: Placement, year: FiscalYear): string {
  if (placement.secondHalf === undefined) return name;
  return `${name}, ${HALVES[preparedYears(placement).indexOf(year)] ?? ''}`;
}

/** `prepared fall 2027 (FY28) and planted spring 2028`. */
export function preparedAndPlanted(calendar: Calendar, year: FiscalYear): string {
  return `prepared ${preparing(calendar, year)} and planted ${plantingLabel(calendar, year)}`;
}

/** `fall 2027 (FY28)`: when a site of a year is sheet mulched. */
export function preparing(calendar: Calendar, year: FiscalYear): string {
  const season = seasonInstance(calendar, prepareIndex(calendar, yearIndexOf(calendar, year)));
  const calendarYear = seasonStart(calendar, season).slice(0, 4);
  return `${season.season.id} ${calendarYear} (${fiscalYearLabel(year)})`;
}

/** Last day of a fiscal year: `2029-06-30`. */
export function lastDayOf({ fiscalYearStartMonth }: Calendar, year: FiscalYear): string {
  if (fiscalYearStartMonth === 1) return `${year}-12-31`;
  // Months on from a 31st, the day is the last of its month.
  return addMonths(`${yearsLater(year, -1)}-12-31`, fiscalYearStartMonth - 1);
}
