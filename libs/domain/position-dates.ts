import { addMonths } from '#units/months.js';
import {
  seasonIndex,
  seasonInstance,
  seasonOrder,
  seasonStart,
  type Calendar,
  type SeasonInstance,
} from './calendar.js';
import type { PositionType } from './labor.js';

/** The season in which a position that starts in a fiscal year begins work. */
export function positionStart(
  calendar: Calendar,
  position: Pick<PositionType, 'startSeason'>,
  yearIndex: number,
): SeasonInstance {
  const order = seasonOrder(calendar, position.startSeason);
  return seasonInstance(calendar, seasonIndex(calendar, yearIndex, order));
}

/** ISO date by which a position that starts in a fiscal year must be asked for: its lead time before. */
export function askDate(
  calendar: Calendar,
  position: Pick<PositionType, 'startSeason' | 'leadMonths'>,
  yearIndex: number,
): string {
  const start = seasonStart(calendar, positionStart(calendar, position, yearIndex));
  return addMonths(start, -position.leadMonths);
}
