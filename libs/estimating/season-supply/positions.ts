import {
  plannedYears,
  seasonOrder,
  seasonStart,
  type Calendar,
  type SeasonInstance,
} from '#domain/calendar.js';
import type { PositionType } from '#domain/labor.js';
import { positionStart } from '#domain/position-dates.js';
import { centiHours, type CentiHours } from '#units/centihours.js';
import { addMonths } from '#units/months.js';

const NONE = centiHours(0);

/** Hours that one position, started in `startYear` (index), gives in a season. */
export function positionHours(
  calendar: Calendar,
  position: PositionType,
  at: { readonly startYear: number; readonly season: SeasonInstance },
): CentiHours {
  const { startYear, season } = at;
  if (season.yearIndex < startYear) return NONE;
  if (season.yearIndex > startYear) {
    return position.term === 'recurring' ? (position.hours[season.season.id] ?? NONE) : NONE;
  }
  if (season.order < seasonOrder(calendar, position.startSeason)) return NONE;
  return position.firstYearHours[season.season.id] ?? NONE;
}

/** Index of the first year in which a position can start: planning date plus lead time. */
export function firstStartYear(calendar: Calendar, position: PositionType): number {
  const ready = addMonths(calendar.planningDate, position.leadMonths);
  for (let year = 0; year < plannedYears(calendar); year++) {
    if (seasonStart(calendar, positionStart(calendar, position, year)) >= ready) return year;
  }
  return plannedYears(calendar);
}
