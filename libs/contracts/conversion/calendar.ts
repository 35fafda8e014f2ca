import type { Calendar } from '#domain/calendar.js';
import type { CampusFile } from '../campus-file.schema.js';
import { toFiscalYear } from './values.js';

export function toCalendar(calendar: CampusFile['calendar']): Calendar {
  return {
    ...calendar,
    firstYear: toFiscalYear(calendar.firstYear),
    priceYear: toFiscalYear(calendar.priceYear),
  };
}
