import {
  plannedYears,
  seasonIndex,
  seasonInstance,
  seasonOrder,
  seasonStart,
  type Calendar,
  type SeasonInstance,
} from '#domain/calendar.js';
import type { PositionType } from '#domain/labor.js';
import { centiHours, type CentiHours } from '#units/centihours.js';

const NONE = centiHours(0);

/** The season in which a position that starts in a fiscal year begins work. */
export function positionStart(
  calendar: Calendar,
  position: PositionType,
  yearIndex: number,
): SeasonInstance {
  const order = seasonOrder(calendar, position.startSeason);
  return seasonInstance(calendar, seasonIndex(calendar, yearIndex, order));
}

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

/** The ISO date `months` months later; days past the end of a month fall on its last day. */
export function addMonths(date: string, months: number): string {
  const [year = NaN, month = NaN, day = NaN] = date.split('-').map(Number);
  const total = year * 12 + (month - 1) + months;
  const toYear = Math.floor(total / 12);
  const toMonth = total - toYear * 12;
  const lastDay = new Date(Date.UTC(toYear, toMonth + 1, 0)).getUTCDate();
  const pad = (n: number) => String(n).padStart(2, '0');
  return `${toYear}-${pad(toMonth + 1)}-${pad(Math.min(day, lastDay))}`;
}
